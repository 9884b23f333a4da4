import { DomainError, requireChoice } from '../errors/index.ts'
import { filmReferenceC, stillFilmWPerM2K } from './films.ts'
import { heatJointDefaults } from './heatJointDefaults.ts'
import type { HeatJointInput } from './heatJointTypes.ts'
import { requireJointTemperature, requireWithin } from './heatLimits.ts'
import type { HeatModel, Wire } from './heatModel.ts'
import { alloyValues } from './readAlloy.ts'
import { pressureOf, readSource, readSweep } from './readTool.ts'
import { readTube } from './readTube.ts'
import { readConductor } from './readWire.ts'
import type { SolderSleeveTube } from './solderSleeveTube.ts'

const mostConductors = 4

/** True if all numbers are equal. */
function alike(a: unknown, b: unknown): boolean {
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b
  return Object.keys(a).every((key) => alike((a as Readonly<Record<string, unknown>>)[key], (b as Readonly<Record<string, unknown>>)[key]))
}

/** True if equal but for the number of tails. */
function sameWire(a: Wire, b: Wire): boolean {
  return alike({ ...a, tails: b.tails }, b)
}

/** Factors on the uncertain parts of an input. */
export interface Reading {
  /** Factor on an iron's contact resistance; default 1. */
  readonly contactFactor?: number
  /** Factor on a stream's film coefficients; default 1. */
  readonly streamFactor?: number
  /** Factor on still-air films that the input does not give; default 1. */
  readonly filmFactor?: number
  /** A tube with a ring of solder over the joint. */
  readonly tube?: SolderSleeveTube
}

/** Default emissivity of the joint: an end of its band if the joint's film is varied, nominal if the film is given or not varied. */
function assumedEmissivity({ joint }: HeatJointInput, filmFactor: number): number {
  const { low, value, high } = heatJointDefaults.jointEmissivity
  if (joint.filmWPerM2K !== undefined || filmFactor === 1) return value
  return filmFactor < 1 ? low : high
}

/** Checks every number of the input and converts to SI units. */
export function readHeatJoint(i: HeatJointInput, { contactFactor = 1, streamFactor = 1, filmFactor = 1, tube }: Reading = {}): HeatModel {
  const ambientC = requireJointTemperature('ambientC', i.ambientC)
  const defaults = heatJointDefaults
  requireChoice('tool.kind', i.tool?.kind, ['iron', 'hot-air'])
  const { joint, conductors } = i
  const lapM = requireWithin('joint.lapMm', joint?.lapMm, 'lapMm') / 1000
  const diameterM = requireWithin('joint.diameterMm', joint.diameterMm, 'diameterMm') / 1000
  const surfaceM2 = requireWithin('joint.surfaceMm2', joint.surfaceMm2 ?? Math.PI * joint.diameterMm * joint.lapMm, 'surfaceMm2') / 1e6
  const solderM3 = requireWithin('joint.solderMm3', joint.solderMm3, 'solderMm3') / 1e9
  const emissivity = requireWithin('joint.emissivity', joint.emissivity ?? assumedEmissivity(i, filmFactor), 'share')
  if (!Array.isArray(conductors) || conductors.length < 1 || conductors.length > mostConductors) {
    throw new DomainError(
      'conductors',
      conductors?.length,
      `1 to ${mostConductors} conductors`,
      undefined,
      conductors === undefined ? 'missing' : 'out-of-range',
    )
  }
  const alloy = alloyValues(i.alloy, ambientC)
  const superheatK = requireWithin('wettingSuperheatK', i.wettingSuperheatK ?? defaults.wettingSuperheatK.value, 'superheatK')
  const surfaceC = filmReferenceC(ambientC, alloy.liquidusC + superheatK)
  const pressurePa = pressureOf(i.tool)
  const sweep = readSweep(i.tool, ambientC, surfaceC, streamFactor)
  const still = (diameterOfM: number, emissivityOf: number): number =>
    filmFactor * stillFilmWPerM2K({ surfaceC, ambientC, diameterM: diameterOfM, emissivity: emissivityOf, pressurePa })
  const filmWPerM2K = requireWithin('joint.filmWPerM2K', joint.filmWPerM2K ?? still(diameterM, 0), 'filmWPerM2K')
  const read = tube === undefined ? null : readTube(i, tube, { pressurePa, streamFactor, filmFactor })
  const wires: Wire[] = []
  const wireOf: number[] = []
  let lapStoreJPerMK = 0
  conductors.forEach((side, c) => {
    if (typeof side !== 'object' || side === null) throw new DomainError(`conductors.${c}`, side, 'a conductor', undefined, 'wrong-choice')
    const conductor = readConductor(side, `conductors.${c}`, { ambientC, sweep, still, tube: read })
    const { wire } = conductor
    lapStoreJPerMK += conductor.lapStoreJPerMK
    const found = wires.findIndex((other) => sameWire(other, wire))
    if (found < 0) wires.push(wire)
    else wires[found] = { ...wire, tails: wire.tails + (wires[found]?.tails ?? 0) }
    wireOf.push(found < 0 ? wires.length - 1 : found)
  })
  const source = read?.source ?? readSource(i, diameterM, contactFactor, streamFactor)
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
    wettedRiseK: alloy.liquidusC - ambientC + superheatK,
    wires,
    wireOf,
    toolOffS,
    observeS,
    sampleTimesS,
    accuracy: requireWithin('accuracy', i.accuracy ?? defaults.accuracy.value, 'accuracy'),
  }
}
