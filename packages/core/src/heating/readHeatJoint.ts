import { DomainError, requireChoice } from '../errors/index.ts'
import { heatJointDefaults } from './heatJointDefaults.ts'
import type { HeatJointInput } from './heatJointTypes.ts'
import { requireJointTemperature, requireWithin } from './heatLimits.ts'
import type { HeatModel } from './heatModel.ts'
import { alloyValues } from './readAlloy.ts'
import { readSource, readSweep } from './readTool.ts'
import { readConductor } from './readWire.ts'
import type { Wire } from './solver/finZones.ts'

const mostConductors = 4

/** Equal in everything but the number of tails. */
function sameWire(a: Wire, b: Wire): boolean {
  const { clip, swept } = a
  return (
    a.conductanceWM === b.conductanceWM &&
    a.stubM === b.stubM &&
    a.bareStoreJPerMK === b.bareStoreJPerMK &&
    a.insulatedStoreJPerMK === b.insulatedStoreJPerMK &&
    a.bareLossWPerMK === b.bareLossWPerMK &&
    a.insulatedLossWPerMK === b.insulatedLossWPerMK &&
    a.limitRiseK === b.limitRiseK &&
    a.outerShare === b.outerShare &&
    a.sweptOuterShare === b.sweptOuterShare &&
    swept?.bareLossWPerMK === b.swept?.bareLossWPerMK &&
    swept?.insulatedLossWPerMK === b.swept?.insulatedLossWPerMK &&
    clip?.atM === b.clip?.atM &&
    clip?.resistanceKPerW === b.clip?.resistanceKPerW &&
    clip?.riseK === b.clip?.riseK
  )
}

/** How an input is read otherwise than as it stands. */
export interface Reading {
  /** Scales an iron's contact resistance; 1 where absent. */
  readonly contactFactor?: number
  /** Scales every film coefficient of a stream; 1 where absent. */
  readonly streamFactor?: number
  /** False where a tube keeps the air from the stubs. */
  readonly stubsInOpen?: boolean
}

/** Checks every number of the input and puts it in SI units. */
export function readHeatJoint(i: HeatJointInput, { contactFactor = 1, streamFactor = 1, stubsInOpen = true }: Reading = {}): HeatModel {
  const ambientC = requireJointTemperature('ambientC', i.ambientC)
  const defaults = heatJointDefaults
  requireChoice('tool.kind', i.tool?.kind, ['iron', 'hot-air'])
  const { joint, conductors } = i
  const lapM = requireWithin('joint.lapMm', joint?.lapMm, 'lapMm') / 1000
  const diameterM = requireWithin('joint.diameterMm', joint.diameterMm, 'diameterMm') / 1000
  const surfaceM2 = requireWithin('joint.surfaceMm2', joint.surfaceMm2 ?? Math.PI * joint.diameterMm * joint.lapMm, 'surfaceMm2') / 1e6
  const solderM3 = requireWithin('joint.solderMm3', joint.solderMm3, 'solderMm3') / 1e9
  const filmWPerM2K = requireWithin('joint.filmWPerM2K', joint.filmWPerM2K ?? defaults.jointFilmWPerM2K.value, 'filmWPerM2K')
  const emissivity = requireWithin('joint.emissivity', joint.emissivity ?? defaults.jointEmissivity.value, 'share')
  if (!Array.isArray(conductors) || conductors.length < 1 || conductors.length > mostConductors) {
    throw new DomainError(
      'conductors',
      conductors?.length,
      `1 to ${mostConductors} conductors`,
      undefined,
      conductors === undefined ? 'missing' : 'out-of-range',
    )
  }
  const sweep = readSweep(i.tool, ambientC, streamFactor)
  const alloy = alloyValues(i.alloy, ambientC)
  const wires: Wire[] = []
  const wireOf: number[] = []
  let lapStoreJPerMK = 0
  conductors.forEach((side, c) => {
    if (typeof side !== 'object' || side === null) throw new DomainError(`conductors.${c}`, side, 'a conductor', undefined, 'wrong-choice')
    const read = readConductor(side, `conductors.${c}`, ambientC, sweep, stubsInOpen)
    lapStoreJPerMK += read.lapStoreJPerMK
    const found = wires.findIndex((wire) => sameWire(wire, read.wire))
    if (found < 0) wires.push(read.wire)
    else wires[found] = { ...read.wire, tails: read.wire.tails + (wires[found]?.tails ?? 0) }
    wireOf.push(found < 0 ? wires.length - 1 : found)
  })
  const source = readSource(i, diameterM, contactFactor, streamFactor)
  const toolOffS = requireWithin('toolOffS', i.toolOffS, 'timeS')
  const observeS = requireWithin('observeS', i.observeS ?? toolOffS + defaults.observeAfterToolOffS.value, 'observeS')
  if (observeS < toolOffS) throw new DomainError('observeS', observeS, `toolOffS, ${toolOffS}, or later`, undefined, 'contradiction')
  const sampleTimesS = i.sampleTimesS ?? []
  sampleTimesS.forEach((at, k) => {
    requireWithin(`sampleTimesS.${k}`, at, 'sampleS')
    if (at > observeS) throw new DomainError(`sampleTimesS.${k}`, at, `observeS, ${observeS}, or earlier`, undefined, 'contradiction')
  })
  const solderKg = solderM3 * alloy.densityKgPerM3
  return {
    ambientC,
    source,
    surfaceM2,
    filmWPerM2K,
    emissivity,
    capacityJPerK: lapM * lapStoreJPerMK + solderKg * alloy.specificHeatJPerKgK,
    melt: { solidusRiseK: alloy.solidusC - ambientC, liquidusRiseK: alloy.liquidusC - ambientC, latentJ: solderKg * alloy.latentHeatJPerKg },
    wettedRiseK: alloy.liquidusC - ambientC + requireWithin('wettingSuperheatK', i.wettingSuperheatK ?? defaults.wettingSuperheatK.value, 'superheatK'),
    wires,
    wireOf,
    toolOffS,
    observeS,
    sampleTimesS,
    accuracy: requireWithin('accuracy', i.accuracy ?? defaults.accuracy.value, 'accuracy'),
  }
}
