import { DomainError, requireBetween, requireChoice, requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'
import { entryAt } from '../errors/inner.ts'
import { airHighestC, airLowestC, type Correlation, correlations, insulationResistanceMKPerW } from '../heat/index.ts'
import { requireAirPressure } from '../heat/inner.ts'
import { metal } from '../materials/index.ts'
import { type JointSide, type JointSite, jointDefaults } from './jointSite.ts'
import { mmPerM } from './lapPair.ts'

/** Square millimetres in a square metre. */
const mm2PerM2 = 1e6
/** Least conductor diameter over that of a solid round of the same area: a nominal area may exceed the true one, within this. */
const leastDiameterShare = 0.85
/** Reference temperature of resistances, in degC. */
export const referenceC = 20

/** Heat path from a stretch of conductor: through a wall, then by a given film coefficient or by convection and radiation. */
export interface WayOut {
  readonly wallMKPerW: number
  readonly outsideM: number
  readonly emissivity: number
  readonly filmWPerM2K: number | undefined
}

export interface SideModel {
  /** Conductivity times area, in W m/K. */
  readonly kA: number
  /** Resistance per metre at 20 degC and its temperature coefficient. */
  readonly r20: number
  readonly alpha: number
  readonly meltingC: number
  readonly wire: WayOut
  readonly sleeve: WayOut | undefined
}

/** A checked JointSite in SI units. */
export interface JointModel {
  readonly currentA: number
  readonly ambientC: number
  readonly pressurePa: number
  readonly morgan: boolean
  readonly linear: boolean
  /** Sleeve length on each side, in m; 0 without a sleeve. */
  readonly sleeveM: number
  readonly sides: readonly [SideModel, SideModel]
  /** Lower melting point of the two metals. */
  readonly ceilingC: number
}

/** Checks a site and converts it to SI. */
export function jointModel(i: JointSite): JointModel {
  const currentA = requireNotNegative('currentA', i.currentA)
  const ambientC = requireBetween('ambientC', i.ambientC, airLowestC, airHighestC)
  if (!Array.isArray(i.conductors) || i.conductors.length !== 2)
    throw new DomainError('conductors', i.conductors, 'two wires', undefined, i.conductors === undefined ? 'missing' : 'wrong-choice')
  const pressurePa = i.pressurePa === undefined ? jointDefaults.pressurePa : requireAirPressure('pressurePa', i.pressurePa)
  const correlation = requireChoice<Correlation>('correlation', i.correlation ?? jointDefaults.correlation, correlations)
  const linear = i.conductors[0]?.filmWPerM2K !== undefined
  const sleeve = i.sleeve ?? undefined
  const sleeveM = sleeve === undefined ? 0 : requirePositive('sleeve.lengthMm', sleeve.lengthMm) / (2 * mmPerM)
  const out = sleeve === undefined ? undefined : sleeveOut(sleeve, linear)
  const first = sideModel(i.conductors[0], 0, linear, out)
  const second = sideModel(i.conductors[1], 1, linear, out)
  const sides = [first, alike(first, second) ? first : second] as const
  for (const { alpha } of sides) {
    if (!(1 + alpha * (ambientC - referenceC) > 0))
      throw new DomainError(
        'ambientC',
        ambientC,
        `above ${(referenceC - 1 / alpha).toPrecision(4)}, where the straight line of resistance reaches 0`,
        undefined,
        'contradiction',
      )
  }
  const ceilingC = Math.min(sides[0].meltingC, sides[1].meltingC)
  return { currentA, ambientC, pressurePa, morgan: correlation === 'morgan', linear, sleeveM, sides, ceilingC }
}

/** Identical wires share one object, and so their solution. */
function alike(one: SideModel, other: SideModel): boolean {
  const { kA, r20, alpha, meltingC, wire } = one
  return (
    kA === other.kA &&
    r20 === other.r20 &&
    alpha === other.alpha &&
    meltingC === other.meltingC &&
    wire.wallMKPerW === other.wire.wallMKPerW &&
    wire.outsideM === other.wire.outsideM &&
    wire.emissivity === other.wire.emissivity &&
    wire.filmWPerM2K === other.wire.filmWPerM2K
  )
}

function film(path: string, given: number | undefined, linear: boolean): number | undefined {
  if ((given !== undefined) !== linear)
    throw new DomainError(path, given, 'a film coefficient for both wires and the sleeve, or for none of them', undefined, 'contradiction')
  return given === undefined ? undefined : requirePositive(path, given)
}

function sleeveOut(sleeve: NonNullable<JointSite['sleeve']>, linear: boolean): WayOut {
  const core = requirePositive('sleeve.coreDiameterMm', sleeve.coreDiameterMm)
  const outside = requirePositive('sleeve.outsideDiameterMm', sleeve.outsideDiameterMm)
  const k = requirePositive('sleeve.conductivityWPerMK', sleeve.conductivityWPerMK)
  if (outside < core) throw new DomainError('sleeve.outsideDiameterMm', outside, `at least sleeve.coreDiameterMm, ${core}`, undefined, 'contradiction')
  return {
    wallMKPerW: insulationResistanceMKPerW({ conductorDiameterMm: core, outsideDiameterMm: outside, conductivityWPerMK: k }),
    outsideM: outside / mmPerM,
    emissivity: requireBetween('sleeve.emissivity', sleeve.emissivity ?? jointDefaults.sleeveEmissivity, 0, 1),
    filmWPerM2K: film('sleeve.filmWPerM2K', sleeve.filmWPerM2K, linear),
  }
}

function sideModel(side: JointSide, index: number, linear: boolean, sleeve: WayOut | undefined): SideModel {
  const at = `conductors.${index}`
  const area = requirePositive(`${at}.areaMm2`, side?.areaMm2)
  const properties = entryAt(`${at}.material`, () => metal(side.material ?? jointDefaults.material))
  const solid = Math.sqrt((4 * area) / Math.PI)
  const d = side.conductorDiameterMm === undefined ? solid : requirePositive(`${at}.conductorDiameterMm`, side.conductorDiameterMm)
  if (d < leastDiameterShare * solid) {
    const allowed = `at least ${leastDiameterShare} of the solid round of that area, ${solid.toPrecision(4)} mm`
    throw new DomainError(`${at}.conductorDiameterMm`, d, allowed, undefined, 'contradiction')
  }
  const wall = requireNotNegative(`${at}.insulationThicknessMm`, side.insulationThicknessMm)
  const kWall = requirePositive(`${at}.insulationConductivityWPerMK`, side.insulationConductivityWPerMK)
  const k = requirePositive(`${at}.conductivityWPerMK`, side.conductivityWPerMK ?? properties.conductivityWPerMK.nominal)
  const ρ = requirePositive(`${at}.resistivity20OhmM`, side.resistivity20OhmM ?? properties.resistivity20OhmM.nominal)
  const outside = d + 2 * wall
  return {
    kA: (k * area) / mm2PerM2,
    r20: requireFiniteResult(`${at}.areaMm2`, area, (ρ * mm2PerM2) / area),
    alpha: requireNotNegative(`${at}.temperatureCoefficient20PerK`, side.temperatureCoefficient20PerK ?? properties.temperatureCoefficient20PerK.nominal),
    meltingC: properties.meltingC.nominal,
    wire: {
      wallMKPerW: insulationResistanceMKPerW({ conductorDiameterMm: d, outsideDiameterMm: outside, conductivityWPerMK: kWall }),
      outsideM: outside / mmPerM,
      emissivity: requireBetween(`${at}.emissivity`, side.emissivity ?? jointDefaults.emissivity, 0, 1),
      filmWPerM2K: film(`${at}.filmWPerM2K`, side.filmWPerM2K, linear),
    },
    sleeve,
  }
}
