import { frozen } from '../../errors/inner.ts'
import type { Provenance } from '../../materials/index.ts'
import { heatJointDefaults } from '../heatJointDefaults.ts'
import type { HeatChange, HeatJointInput } from '../heatJointTypes.ts'
import { heatLimits } from '../heatLimits.ts'

/** Default limits of each lever of heatJointAdvice, in the lever's own unit. */
export const heatJointAdviceDefaults = /* @__PURE__ */ frozen({
  allowedExposureS: 0,
  /** A heat-sink clip between joint and edge. */
  clipResistanceKPerW: 8,
  limits: {
    contactResistanceKPerW: { low: 0.5, high: 60 },
    tipResistanceKPerW: { low: 0.3, high: 10 },
    setC: { low: 200, high: 420 },
    airC: { low: 100, high: 500 },
    airSpeedMPerS: { low: 1, high: 20 },
    maximumW: { low: 10, high: 150 },
    stubMm: { low: 0, high: 25 },
    /** Distance from the joint's edge. */
    clip: { low: 2, high: 25 },
    /** Liquidus of the alloys tried, in C. */
    alloy: { low: 0, high: 320 },
    toolOffS: { low: 0.2, high: 30 },
  },
  provenance: { status: 'from memory', source: 'hand irons, tips and hot-air tools of a workshop, rounded' },
} as const satisfies {
  readonly allowedExposureS: number
  readonly clipResistanceKPerW: number
  readonly limits: Readonly<Record<HeatChange['lever'], { readonly low: number; readonly high: number }>>
  readonly provenance: Provenance
})

/** A lever with a continuous range. */
type SlidingLever = Exclude<HeatChange['lever'], 'clip' | 'alloy'>

type IronLever = 'contactResistanceKPerW' | 'tipResistanceKPerW' | 'setC' | 'maximumW'
type AirLever = 'airC' | 'airSpeedMPerS'
const ironLevers = ['contactResistanceKPerW', 'tipResistanceKPerW', 'setC', 'maximumW'] as const satisfies readonly IronLever[]
const airLevers = ['airC', 'airSpeedMPerS'] as const satisfies readonly AirLever[]

/** The continuous levers of this joint's tool and wires. */
export function leversOf(i: HeatJointInput): readonly SlidingLever[] {
  const tool = i.tool.kind === 'iron' ? ironLevers : i.tool.filmWPerM2K === undefined ? airLevers : (['airC'] as const)
  return [...tool, 'stubMm', 'toolOffS']
}

/** Present position of a lever; null without one: unlimited power, or a tip without resistance. */
export function leverOf(i: HeatJointInput, lever: SlidingLever): number | null {
  if (lever === 'stubMm') return Math.min(...i.conductors.map((side) => side.stubMm))
  if (lever === 'toolOffS') return i.toolOffS
  const value = (i.tool as Partial<Record<IronLever | AirLever, number>>)[lever]
  return value === undefined || (lever === 'tipResistanceKPerW' && value === 0) ? null : value
}

/** Moves the tool's removal. The default observation time follows it; a given end of the run moves only with a later removal. Every sample time stays in the run. */
function liftedAt(i: HeatJointInput, toolOffS: number): HeatJointInput {
  const last = Math.max(0, ...(i.sampleTimesS ?? []))
  const after = heatJointDefaults.observeAfterToolOffS.value
  if (i.observeS === undefined) return { ...i, toolOffS, ...(last > toolOffS + after ? { observeS: last } : {}) }
  return { ...i, toolOffS, observeS: Math.min(Math.max(i.observeS + Math.max(0, toolOffS - i.toolOffS), toolOffS), heatLimits.observeS[1]) }
}

/** The same joint with one lever moved. Shorter stubs are lengthened to the value. */
export function moved(i: HeatJointInput, lever: SlidingLever, value: number): HeatJointInput {
  if (lever === 'stubMm') return { ...i, conductors: i.conductors.map((side) => ({ ...side, stubMm: Math.max(side.stubMm, value) })) }
  if (lever === 'toolOffS') return liftedAt(i, value)
  return { ...i, tool: { ...i.tool, [lever]: value } as HeatJointInput['tool'] }
}
