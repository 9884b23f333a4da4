import { DomainError, requireBetween, requireChoice, requireFinite, requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'
import { airHighestC, airLowestC, type Correlation, correlations } from '../heat/index.ts'
import { requireAirPressure } from '../heat/inner.ts'
import { type Metal, metal } from '../materials/index.ts'
import { type Balance, startingShare } from './balance.ts'
import { type WireHeat, wireDefaults } from './wire.ts'

/** Least conductor diameter over that of a solid round of the same area: a nominal area may exceed the true one, within this. */
const leastDiameterShare = 0.85
/** Above any real input; powers of it in the correlations do not overflow. */
const largestNumber = 1e30
const referenceC = 20

/** Refuses a value above largestNumber, which would overflow in a correlation. */
function withinReach(parameter: string, value: number): number {
  return value <= largestNumber ? value : requireFiniteResult(parameter, value, Infinity)
}

function positive(parameter: string, value: number): number {
  return typeof value === 'number' && value > 0 && value <= largestNumber ? value : withinReach(parameter, requirePositive(parameter, value))
}

function notNegative(parameter: string, value: number): number {
  return typeof value === 'number' && value >= 0 && value <= largestNumber ? value : withinReach(parameter, requireNotNegative(parameter, value))
}

/** Diameter of the conductor in mm: given, else of a solid round. */
export function conductorDiameterMm(i: WireHeat): number {
  const solid = Math.sqrt((4 * positive('areaMm2', i.areaMm2)) / Math.PI)
  if (i.conductorDiameterMm === undefined) return solid
  const d = positive('conductorDiameterMm', i.conductorDiameterMm)
  if (d < leastDiameterShare * solid) {
    throw new DomainError(
      'conductorDiameterMm',
      d,
      `at least ${leastDiameterShare} of the solid round of that area, ${solid.toPrecision(4)} mm`,
      undefined,
      'contradiction',
    )
  }
  return d
}

/** The metal that supplies properties not given. */
export function metalOf(i: WireHeat): Metal {
  return metal(i.material ?? wireDefaults.material)
}

/** Checks every field of a wire and turns it into SI for the solvers. */
export function resolveWire(i: WireHeat): Balance {
  const m = metalOf(i)
  const d = conductorDiameterMm(i)
  const wall = notNegative('insulationThicknessMm', i.insulationThicknessMm)
  const k = positive('insulationConductivityWPerMK', i.insulationConductivityWPerMK)
  const layFactor = i.layFactor ?? wireDefaults.layFactor
  if (!(positive('layFactor', layFactor) >= 1)) throw new DomainError('layFactor', layFactor, '1 or above: no strand is shorter than its wire')
  const rho = positive('resistivity20OhmM', i.resistivity20OhmM ?? m.resistivity20OhmM.nominal)
  const al = notNegative('temperatureCoefficient20PerK', i.temperatureCoefficient20PerK ?? m.temperatureCoefficient20PerK.nominal)
  const emissivity = requireBetween('emissivity', i.emissivity ?? wireDefaults.emissivity, 0, 1)
  const ambientC = requireBetween('ambientC', i.ambientC, airLowestC, airHighestC)
  const airSpeedMPerS = notNegative('airSpeedMPerS', i.airSpeedMPerS ?? wireDefaults.airSpeedMPerS)
  const pressurePa = positive('pressurePa', requireAirPressure('pressurePa', i.pressurePa ?? wireDefaults.pressurePa))
  const sunWPerM = notNegative('solarAbsorbedWPerM', i.solarAbsorbedWPerM ?? wireDefaults.solarAbsorbedWPerM)
  const correlation = requireChoice<Correlation>('correlation', i.correlation ?? wireDefaults.correlation, correlations)
  if (!(1 + al * (ambientC - referenceC) > 0)) {
    throw new DomainError('ambientC', ambientC, `above ${(referenceC - 1 / al).toPrecision(4)}, where the straight line of resistance reaches 0`)
  }
  const outsideM = (d + 2 * wall) / 1000
  return {
    outsideM,
    emissivity,
    ambientC,
    airSpeedMPerS,
    pressurePa,
    morgan: correlation === 'morgan',
    sunWPerM,
    insideMKPerW: Math.log1p((2 * wall) / d) / (2 * Math.PI * k),
    filmMKPerW: i.filmWPerM2K === undefined ? null : 1 / (Math.PI * outsideM * positive('filmWPerM2K', i.filmWPerM2K)),
    resistance20OhmPerM: requireFiniteResult('areaMm2', i.areaMm2, (rho * layFactor * 1e6) / i.areaMm2),
    coefficientPerK: al,
    meltingC: m.meltingC.nominal,
    riseK: 0,
    flowWPerM: 0,
    evaluations: 0,
    outerShare: startingShare,
    outerWPerMK: 0,
  }
}

/** Checks a conductor temperature: between the coldest air of the correlations and the metal's melting point. */
export function requireConductorC(parameter: string, temperatureC: number, b: Balance): number {
  if (!(requireFinite(parameter, temperatureC) >= airLowestC && temperatureC <= b.meltingC)) {
    throw new DomainError(parameter, temperatureC, `from ${airLowestC} to ${b.meltingC}, where its material melts`)
  }
  return temperatureC
}
