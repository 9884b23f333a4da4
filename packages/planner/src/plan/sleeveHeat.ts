import { heatSolderSleeve, knownNominal, type Sleeve, type SolderName, sleeveMaterial, type Tool } from '@strandwise/core'
import { heatInput } from '../facts/heatInputs.ts'
import type { JobFacts } from '../facts/jobFacts.ts'
import { suppliedWallMm } from '../facts/suppliedWall.ts'
import { degrees } from './print.ts'

type SleeveResult = ReturnType<typeof heatSolderSleeve>
type SleeveInput = Parameters<typeof heatSolderSleeve>[0]

export interface SleeveHeat {
  readonly inputs: SleeveInput
  readonly best: SleeveResult
  readonly nominal: SleeveResult
  readonly worst: SleeveResult
  readonly advice: readonly string[]
}

/** How far the stream's film coefficient may lie off, either way: from memory. */
const streamFactor = 1.5

/** A solder sleeve under hot air: tube, ring and wire, with a weaker and a stronger stream beside the nominal. */
export function sleeveHeat(
  facts: JobFacts,
  sleeve: { readonly ringAlloy: SolderName; readonly tube: Sleeve },
  tool: Tool,
  holdS: number,
  sampleTimesS: readonly number[] = [],
): SleeveHeat {
  if (tool.kind !== 'hot-air') throw new TypeError('a solder sleeve is heated by hot air')
  const material = sleeveMaterial(sleeve.tube.material)
  const base = heatInput('solder-sleeve', facts, tool, holdS)
  const run = (factor: number, airC = tool.airC): SleeveInput => ({
    ...base,
    sampleTimesS,
    tool: { ...tool, airC, ...streamOf(tool, factor) },
    tube: {
      insideMm: sleeve.tube.suppliedInsideMm,
      wallMm: suppliedWallMm(sleeve.tube),
      lengthMm: Math.max(3 * base.joint.lapMm, 20),
      recoveryC: knownNominal(material, 'fullRecoveryC', material.fullRecoveryC),
    },
  })
  const inputs = run(1)
  const nominal = heatSolderSleeve(inputs)
  return {
    inputs,
    best: heatSolderSleeve(run(streamFactor)),
    nominal,
    worst: heatSolderSleeve(run(1 / streamFactor)),
    advice: nominal.wettedAtS === null ? hotterAir(run, tool.airC) : [],
  }
}

/** Forced convection grows with about the square root of speed, so the film's factor is the speed's factor squared. */
function streamOf(tool: Tool & { readonly kind: 'hot-air' }, factor: number) {
  if (tool.filmWPerM2K !== undefined) return { filmWPerM2K: tool.filmWPerM2K * factor }
  return tool.airSpeedMPerS === undefined ? {} : { airSpeedMPerS: tool.airSpeedMPerS * factor ** 2 }
}

/** The least air temperature, to 10 K, that wets the joint in the same time. */
function hotterAir(run: (factor: number, airC: number) => SleeveInput, fromC: number): readonly string[] {
  const stepK = 10
  const mostC = 500
  let low = fromC
  let high = mostC
  if (heatSolderSleeve(run(1, high)).wettedAtS === null)
    return [`Not even ${degrees(mostC)} of air at this speed wets it in that time: another tool, a reflector, or another joint.`]
  while (high - low > stepK) {
    const middle = (low + high) / 2
    if (heatSolderSleeve(run(1, middle)).wettedAtS === null) low = middle
    else high = middle
  }
  const found = heatSolderSleeve(run(1, high))
  const first = found.firstToFail === 'insulation' ? ', but the insulation gives up before that: with this wire a sleeve of that alloy is no joint' : ''
  return [`To make it flow: air of ${degrees(high)} at the joint, or a stronger stream with a reflector${first}.`]
}
