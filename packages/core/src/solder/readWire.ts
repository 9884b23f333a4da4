import { DomainError, requireBetween, requireNotNegative, requirePositive, requireTemperature } from '../errors/index.ts'
import { insulation, knownNominal, metal } from '../materials/index.ts'
import type { Wire } from './finZones.ts'
import { heatJointDefaults } from './heatJointDefaults.ts'
import type { HeatSide } from './heatJointTypes.ts'

/** The stream that sweeps the wires, as the tool gives it. */
export interface Sweep {
  readonly toM: number
  readonly filmWPerM2K: number
  readonly riseK: number
}

/** One conductor: its tail and the copper that lies in the lap. */
export interface ReadConductor {
  readonly wire: Wire
  readonly lapStoreJPerMK: number
}

/** A clip nearer than this to the joint is no clip on the wire: it stands on the joint. */
const nearestClipMm = 0.01

function missing(parameter: string): never {
  throw new DomainError(parameter, undefined, 'a value, or the name of an insulation that has one', undefined, 'missing')
}

/** Film and wall in series, per metre; without film nothing leaves. */
function wallLossWPerMK(outsideM: number, filmWPerM2K: number, wallMKPerW: number): number {
  const film = Math.PI * outsideM * filmWPerM2K
  return film / (1 + film * wallMKPerW)
}

/** Share of the difference that stands across the film. */
function filmShare(outsideM: number, filmWPerM2K: number, wallMKPerW: number): number {
  return 1 / (1 + Math.PI * outsideM * filmWPerM2K * wallMKPerW)
}

/** Reads one conductor in SI units; path leads its parameters' names. stubBare: the stub lies in the open. */
export function readConductor(side: HeatSide, path: string, ambientC: number, sweep: Sweep | null, stubInOpen: boolean): ReadConductor {
  const defaults = heatJointDefaults
  const copper = metal(side.material ?? defaults.material.value)
  const wall = side.insulation === undefined ? null : insulation(side.insulation)
  const areaM2 = requirePositive(`${path}.areaMm2`, side.areaMm2) / 1e6
  const density = requirePositive(`${path}.densityKgPerM3`, side.densityKgPerM3 ?? knownNominal(copper, 'densityKgPerM3', copper.densityKgPerM3))
  const heat = requirePositive(
    `${path}.specificHeatJPerKgK`,
    side.specificHeatJPerKgK ?? knownNominal(copper, 'specificHeatJPerKgK', copper.specificHeatJPerKgK),
  )
  const k = requirePositive(`${path}.conductivityWPerMK`, side.conductivityWPerMK ?? knownNominal(copper, 'conductivityWPerMK', copper.conductivityWPerMK))
  const d = requirePositive(`${path}.diameterMm`, side.diameterMm ?? Math.sqrt((4 * side.areaMm2) / Math.PI)) / 1000
  const D = requireBetween(`${path}.insulationOutsideMm`, side.insulationOutsideMm, d * 1000, Number.MAX_VALUE) / 1000
  const stubM = requireNotNegative(`${path}.stubMm`, side.stubMm) / 1000
  const tails = side.tails ?? defaults.tails.value
  if (tails !== 1 && tails !== 2) throw new DomainError(`${path}.tails`, tails, '1 or 2', undefined, 'wrong-choice')
  const stubFilm = requireNotNegative(`${path}.stubFilmWPerM2K`, side.stubFilmWPerM2K ?? defaults.stubFilmWPerM2K.value)
  const film = requireNotNegative(`${path}.insulationFilmWPerM2K`, side.insulationFilmWPerM2K ?? defaults.insulationFilmWPerM2K.value)
  const share = requireBetween(`${path}.insulationShare`, side.insulationShare ?? defaults.insulationShare.value, 0, 1)
  const own = (
    name: 'conductivityWPerMK' | 'densityKgPerM3' | 'specificHeatJPerKgK' | 'shortExposureC',
    given: number | undefined,
    parameter: string,
  ): number => {
    if (given !== undefined) return given
    if (wall === null) missing(parameter)
    return name === 'shortExposureC' ? (wall.shortExposureC?.low ?? knownNominal(wall, name, null)) : knownNominal(wall, name, wall[name])
  }
  const wallK = requirePositive(
    `${path}.insulationConductivityWPerMK`,
    own('conductivityWPerMK', side.insulationConductivityWPerMK, `${path}.insulationConductivityWPerMK`),
  )
  const wallDensity = requirePositive(
    `${path}.insulationDensityKgPerM3`,
    own('densityKgPerM3', side.insulationDensityKgPerM3, `${path}.insulationDensityKgPerM3`),
  )
  const wallHeat = requirePositive(
    `${path}.insulationSpecificHeatJPerKgK`,
    own('specificHeatJPerKgK', side.insulationSpecificHeatJPerKgK, `${path}.insulationSpecificHeatJPerKgK`),
  )
  const limitC = requireTemperature(`${path}.insulationLimitC`, own('shortExposureC', side.insulationLimitC, `${path}.insulationLimitC`))
  const wallMKPerW = Math.log(D / d) / (2 * Math.PI * wallK)
  const bareStore = areaM2 * density * heat
  const clip = side.clip ?? null
  return {
    lapStoreJPerMK: bareStore,
    wire: {
      tails,
      conductanceWM: k * areaM2,
      stubM,
      bareStoreJPerMK: bareStore,
      insulatedStoreJPerMK: bareStore + (share * wallDensity * wallHeat * Math.PI * (D * D - d * d)) / 4,
      bareLossWPerMK: stubInOpen ? Math.PI * d * stubFilm : 0,
      insulatedLossWPerMK: wallLossWPerMK(D, film, wallMKPerW),
      swept:
        sweep === null
          ? null
          : {
              toM: sweep.toM,
              bareLossWPerMK: stubInOpen ? Math.PI * d * sweep.filmWPerM2K : 0,
              insulatedLossWPerMK: wallLossWPerMK(D, sweep.filmWPerM2K, wallMKPerW),
              riseK: sweep.riseK,
            },
      clip:
        clip === null
          ? null
          : {
              atM: requireBetween(`${path}.clip.distanceMm`, clip.distanceMm, nearestClipMm, Number.MAX_VALUE) / 1000,
              resistanceKPerW: requireNotNegative(`${path}.clip.resistanceKPerW`, clip.resistanceKPerW),
              riseK: requireTemperature(`${path}.clip.temperatureC`, clip.temperatureC) - ambientC,
            },
      limitRiseK: limitC - ambientC,
      outerShare: filmShare(D, film, wallMKPerW),
      sweptOuterShare: sweep === null ? 1 : filmShare(D, sweep.filmWPerM2K, wallMKPerW),
    },
  }
}
