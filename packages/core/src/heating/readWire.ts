import { DomainError } from '../errors/index.ts'
import { entryAt } from '../errors/inner.ts'
import { type Insulation, insulation, knownNominal, metal } from '../materials/index.ts'
import { heatJointDefaults } from './heatJointDefaults.ts'
import type { HeatSide } from './heatJointTypes.ts'
import { requireJointTemperature, requireWithin } from './heatLimits.ts'
import type { Wire, WireClip } from './heatModel.ts'
import type { ReadTube } from './readTube.ts'

/** The tool's stream along the wires. */
export interface Sweep {
  readonly toM: number
  readonly filmWPerM2K: number
  readonly riseK: number
}

/** One conductor: its tail and its copper in the lap. */
interface ReadConductor {
  readonly wire: Wire
  readonly lapStoreJPerMK: number
}

function missing(parameter: string): never {
  throw new DomainError(parameter, undefined, 'a value, or the name of an insulation that has one', undefined, 'missing')
}

/** Film and wall in series, per metre; 0 without a film. */
function wallLossWPerMK(outsideM: number, filmWPerM2K: number, wallMKPerW: number): number {
  const film = Math.PI * outsideM * filmWPerM2K
  return film / (1 + film * wallMKPerW)
}

/** Thermal resistance of the film as a share of film and wall. */
function filmShare(outsideM: number, filmWPerM2K: number, wallMKPerW: number): number {
  return 1 / (1 + Math.PI * outsideM * filmWPerM2K * wallMKPerW)
}

type WallProperty = 'conductivityWPerMK' | 'densityKgPerM3' | 'specificHeatJPerKgK' | 'shortExposureC'

/** A property of the insulation: as given, else the low end of the table's short exposure limit, or the nominal value. */
function ofWall(wall: Insulation | null, property: WallProperty, given: number | undefined, parameter: string): number {
  if (given !== undefined) return given
  if (wall === null) missing(parameter)
  const value = wall[property]
  return property === 'shortExposureC' && value !== null ? value.low : knownNominal(wall, property, value)
}

interface Wall {
  readonly outsideM: number
  readonly wallMKPerW: number
  readonly storeJPerMK: number
  readonly limitC: number
}

function readWall(side: HeatSide, path: string, diameterM: number): Wall {
  const wall = side.insulation === undefined ? null : insulation(side.insulation)
  const outsideMm = requireWithin(`${path}.insulationOutsideMm`, side.insulationOutsideMm, 'diameterMm')
  // A diameter rounded to ten digits may be slightly below the wire's.
  if (outsideMm < diameterM * 1000 * (1 - 1e-9)) {
    throw new DomainError(`${path}.insulationOutsideMm`, outsideMm, `the bare wire's diameterMm, ${diameterM * 1000}, or more`, undefined, 'contradiction')
  }
  const D = Math.max(outsideMm / 1000, diameterM)
  const share = requireWithin(`${path}.insulationShare`, side.insulationShare ?? heatJointDefaults.insulationShare.value, 'share')
  const own = (property: WallProperty, name: 'insulationConductivityWPerMK' | 'insulationDensityKgPerM3' | 'insulationSpecificHeatJPerKgK'): number =>
    ofWall(wall, property, side[name], `${path}.${name}`)
  const k = requireWithin(`${path}.insulationConductivityWPerMK`, own('conductivityWPerMK', 'insulationConductivityWPerMK'), 'conductivityWPerMK')
  const density = requireWithin(`${path}.insulationDensityKgPerM3`, own('densityKgPerM3', 'insulationDensityKgPerM3'), 'densityKgPerM3')
  const heat = requireWithin(`${path}.insulationSpecificHeatJPerKgK`, own('specificHeatJPerKgK', 'insulationSpecificHeatJPerKgK'), 'specificHeatJPerKgK')
  const limitPath = `${path}.insulationLimitC`
  return {
    outsideM: D,
    wallMKPerW: Math.log(D / diameterM) / (2 * Math.PI * k),
    storeJPerMK: (share * density * heat * Math.PI * (D * D - diameterM * diameterM)) / 4,
    limitC: requireJointTemperature(limitPath, ofWall(wall, 'shortExposureC', side.insulationLimitC, limitPath)),
  }
}

function readClip(side: HeatSide, path: string, ambientC: number): WireClip | null {
  const clip = side.clip ?? null
  if (clip === null) return null
  return {
    atM: requireWithin(`${path}.clip.distanceMm`, clip.distanceMm, 'clipMm') / 1000,
    resistanceKPerW: requireWithin(`${path}.clip.resistanceKPerW`, clip.resistanceKPerW, 'smallResistanceKPerW'),
    riseK: requireJointTemperature(`${path}.clip.temperatureC`, clip.temperatureC) - ambientC,
  }
}

/** Surroundings of a conductor: the air, the stream, still-air film by diameter and emissivity, and a tube over the joint. */
interface Around {
  readonly ambientC: number
  readonly sweep: Sweep | null
  readonly still: (diameterM: number, emissivity: number) => number
  readonly tube: ReadTube | null
}

/** Places closer together than this are one: an element between them would drive the time steps to nothing. */
const samePlaceM = 1e-9

/** The first of the other places that is the same place, else the place itself. */
function snapped(placeM: number, othersM: readonly number[]): number {
  return othersM.find((other) => Math.abs(other - placeM) < samePlaceM) ?? placeM
}

/** Reads one conductor in SI units; path prefixes the parameter names. */
export function readConductor(side: HeatSide, path: string, { ambientC, sweep, still, tube }: Around): ReadConductor {
  const defaults = heatJointDefaults
  const copper = entryAt(`${path}.material`, () => metal(side.material ?? defaults.material.value))
  const areaMm2 = requireWithin(`${path}.areaMm2`, side.areaMm2, 'areaMm2')
  const density = requireWithin(`${path}.densityKgPerM3`, side.densityKgPerM3 ?? copper.densityKgPerM3.nominal, 'densityKgPerM3')
  const heat = requireWithin(`${path}.specificHeatJPerKgK`, side.specificHeatJPerKgK ?? copper.specificHeatJPerKgK.nominal, 'specificHeatJPerKgK')
  const k = requireWithin(`${path}.conductivityWPerMK`, side.conductivityWPerMK ?? copper.conductivityWPerMK.nominal, 'conductivityWPerMK')
  const d = requireWithin(`${path}.diameterMm`, side.diameterMm ?? Math.sqrt((4 * areaMm2) / Math.PI), 'diameterMm') / 1000
  const tails = side.tails ?? defaults.tails.value
  if (tails !== 1 && tails !== 2) throw new DomainError(`${path}.tails`, tails, '1 or 2', undefined, 'wrong-choice')
  const stubM = snapped(requireWithin(`${path}.stubMm`, side.stubMm, 'stubMm') / 1000, [0])
  const stubFilm = requireWithin(`${path}.stubFilmWPerM2K`, side.stubFilmWPerM2K ?? still(d, defaults.stubEmissivity.value), 'filmWPerM2K')
  const { outsideM: D, wallMKPerW, storeJPerMK, limitC } = readWall(side, path, d)
  const film = requireWithin(`${path}.insulationFilmWPerM2K`, side.insulationFilmWPerM2K ?? still(D, defaults.insulationEmissivity.value), 'filmWPerM2K')
  const bareStore = (areaMm2 / 1e6) * density * heat
  const bareLoss = (byFilm: number): number => Math.PI * d * byFilm
  const over = tube === null ? null : tube.overWire({ stubM, diameterM: d, outsideM: D, insulationMKPerW: wallMKPerW })
  const tubeOver = over === null ? null : { ...over, toM: snapped(over.toM, [stubM]) }
  const sweptToM = snapped(sweep?.toM ?? 0, [stubM, tubeOver?.toM ?? 0])
  const clip = readClip(side, path, ambientC)
  const wire: Wire = {
    tails,
    conductanceWM: (k * areaMm2) / 1e6,
    stubM,
    bareStoreJPerMK: bareStore,
    insulatedStoreJPerMK: bareStore + storeJPerMK,
    bareLossWPerMK: bareLoss(stubFilm),
    insulatedLossWPerMK: wallLossWPerMK(D, film, wallMKPerW),
    swept:
      sweep === null
        ? null
        : {
            toM: sweptToM,
            bareLossWPerMK: bareLoss(sweep.filmWPerM2K),
            insulatedLossWPerMK: wallLossWPerMK(D, sweep.filmWPerM2K, wallMKPerW),
            riseK: sweep.riseK,
          },
    tube: tubeOver,
    clip: clip === null ? null : { ...clip, atM: snapped(clip.atM, [stubM, tubeOver?.toM ?? 0, sweptToM]) },
    limitRiseK: limitC - ambientC,
    outerShare: filmShare(D, film, wallMKPerW),
    sweptOuterShare: sweep === null ? 1 : filmShare(D, sweep.filmWPerM2K, wallMKPerW),
  }
  return { lapStoreJPerMK: bareStore, wire }
}
