import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { heatJoint } from '../heatJoint.ts'
import type { HeatChange, HeatJointInput, HeatJointResult } from '../heatJointTypes.ts'
import { iron, ironJoint } from '../ironJoint.sample.ts'
import { heatJointAdviceDefaults } from './adviceLevers.ts'
import { heatJointAdvice } from './heatJointAdvice.ts'

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true })

const irons = fc.record(
  {
    kind: fc.constant('iron' as const),
    setC: within(230, 450),
    maximumW: within(8, 100),
    tipResistanceKPerW: within(0, 6),
    contactResistanceKPerW: within(0.5, 40),
  },
  { requiredKeys: ['kind', 'setC', 'tipResistanceKPerW', 'contactResistanceKPerW'] },
)
const streams = fc.oneof(
  fc.record({
    kind: fc.constant('hot-air' as const),
    airC: within(150, 480),
    airSpeedMPerS: within(1, 20),
    sweptMm: within(1, 15),
    sweptDiameterMm: within(1, 4),
  }),
  fc.record({ kind: fc.constant('hot-air' as const), airC: within(150, 480), filmWPerM2K: within(40, 400) }),
)
const side = fc
  .record({ areaMm2: within(0.2, 4), wallMm: within(0.3, 1), stubMm: within(2, 12), insulation: fc.constantFrom('PVC', 'XLPE', 'PTFE') })
  .map(({ wallMm, ...wire }) => ({ ...wire, insulationOutsideMm: 2 * Math.sqrt(wire.areaMm2 / Math.PI) + 2 * wallMm }))
const joints: fc.Arbitrary<HeatJointInput> = fc
  .record(
    {
      ambientC: within(-10, 60),
      tool: fc.oneof(irons, streams),
      conductors: fc.array(side, { minLength: 1, maxLength: 2 }),
      alloy: fc.constantFrom('Sn63Pb37' as const, 'SAC305' as const, 'Sn42Bi58' as const),
      toolOffS: within(0.5, 12),
      // After the tool is gone.
      watchS: within(0, 40),
      sampleTimesS: fc.constant([0.4]),
    },
    { requiredKeys: ['ambientC', 'tool', 'conductors', 'alloy', 'toolOffS'] },
  )
  .map(({ watchS, conductors, ...rest }) => {
    const diameterMm = conductors.reduce((sum, one) => sum + 2 * Math.sqrt(one.areaMm2 / Math.PI), 0)
    const watched = watchS === undefined ? {} : { observeS: rest.toolOffS + watchS }
    return { ...rest, ...watched, conductors, joint: { lapMm: 4 * diameterMm, diameterMm, solderMm3: 2 * diameterMm ** 2 } } as HeatJointInput
  })

/** The input with the advised value `to` in the field that the change names; observed longer if the change says so. */
function entered(input: HeatJointInput, { lever, to }: HeatChange): HeatJointInput {
  if (lever === 'alloy') return { ...input, alloy: to as 'SAC305' }
  if (lever === 'clip') {
    const clip = to === 'none' ? null : { distanceMm: to as number, resistanceKPerW: heatJointAdviceDefaults.clipResistanceKPerW, temperatureC: input.ambientC }
    return { ...input, conductors: input.conductors.map((one) => ({ ...one, clip })) }
  }
  const value = to as number
  if (lever === 'stubMm') return { ...input, conductors: input.conductors.map((one) => ({ ...one, stubMm: Math.max(one.stubMm, value) })) }
  if (lever === 'toolOffS') {
    const { observeS, toolOffS } = input
    return { ...input, toolOffS: value, ...(observeS === undefined ? {} : { observeS: Math.max(value, observeS + Math.max(0, value - toolOffS)) }) }
  }
  return { ...input, tool: { ...input.tool, [lever]: value } as HeatJointInput['tool'] }
}

const flows = ({ wettedAtS }: HeatJointResult): boolean => wettedAtS !== null
const spares = ({ insulationExposureS }: HeatJointResult, allowedS: number): boolean => Math.max(...insulationExposureS) <= allowedS

describe('the advice, entered, comes out as advised', () => {
  test('random tools and wires: the result that the change promises, and its goal reached', { timeout: 60_000 }, () => {
    const seen = { toFlow: 0, toSpareInsulation: 0, both: 0 }
    fc.assert(
      fc.property(joints, fc.constantFrom(0, 0.5), (input, allowedExposureS) => {
        const advice = heatJointAdvice({ ...input, allowedExposureS })
        const before = heatJoint(input)
        if (flows(before)) expect(advice.toFlow).toEqual([])
        if (spares(before, allowedExposureS)) expect(advice.toSpareInsulation).toEqual([])
        for (const goal of ['toFlow', 'toSpareInsulation', 'both'] as const) {
          for (const change of advice[goal]) {
            const after = heatJoint(entered(input, change))
            const text = `${goal}: ${change.lever} ${change.from} -> ${change.to}`
            expect(after, text).toEqual(change.result)
            if (goal !== 'toSpareInsulation') expect(flows(after), text).toBe(true)
            if (goal !== 'toFlow') expect(spares(after, allowedExposureS), text).toBe(true)
            seen[goal]++
          }
        }
      }),
      { seed: 20_240_607, numRuns: 40 },
    )
    for (const count of Object.values(seen)) expect(count).toBeGreaterThan(10)
  })

  test('air whose film by speed follows it: the least air that flows, entered, asks for no hotter air', () => {
    const wire = { areaMm2: 0.75, stubMm: 4, insulation: 'XLPE', insulationOutsideMm: 2 } as const
    const tool = { kind: 'hot-air', airC: 280, airSpeedMPerS: 10, sweptMm: 8, sweptDiameterMm: 2 } as const
    const input: HeatJointInput = { ...ironJoint(wire, wire), alloy: 'Sn63Pb37', tool, toolOffS: 15 }
    const to = heatJointAdvice(input).toFlow.find(({ lever }) => lever === 'airC')?.to as number
    expect(to).toBeGreaterThan(280)
    expect(heatJointAdvice({ ...input, tool: { ...tool, airC: to } }).toFlow).toEqual([])
    expect(flows(heatJoint({ ...input, tool: { ...tool, airC: to * 0.99 } }))).toBe(false)
  })

  test('limits beyond what a heated joint takes are searched only as far as it does', () => {
    const wire = { areaMm2: 2.5, stubMm: 4, insulation: 'PVC', insulationOutsideMm: 3.4 } as const
    const joint = ironJoint(wire, wire)
    const limits = { airC: { low: -273, high: 3000 }, tipResistanceKPerW: { low: 0, high: 10 } }
    const stream = heatJointAdvice({ ...joint, tool: { kind: 'hot-air', airC: 250, airSpeedMPerS: 10 }, toolOffS: 20, limits })
    expect(stream.toFlow.map(({ lever }) => lever)).toContain('airC')
    expect(() => heatJointAdvice({ ...joint, tool: { ...iron, contactResistanceKPerW: 14, tipHeatCapacityJPerK: 3 }, limits })).not.toThrow()
    // A tip with almost no resistance: its ratio to the other end overflows.
    expect(() => heatJointAdvice({ ...joint, tool: { ...iron, tipResistanceKPerW: 5e-324 } })).not.toThrow()
  })
})
