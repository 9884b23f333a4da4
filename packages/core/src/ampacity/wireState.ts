import { requireNotNegative } from '../errors/index.ts'
import { airProperties, heatFlowWPerM, largestRayleigh, leastRayleighMorgan, leastReynoldsPrandtl } from '../heat/index.ts'
import { surfaceRayleigh } from '../heat/inner.ts'
import { resolveWire } from './resolveWire.ts'
import { conductorAtCurrent } from './steady.ts'
import type { WireHeat } from './wire.ts'

/** Range in °C in which resistance is linear to about 1 %. */
const resistivityHolds = { lowC: -60, highC: 300 } as const

type Extrapolated = 'rayleigh' | 'reynolds-prandtl' | 'resistivity'

/**
 * Gives every term of the heat balance of one wire at its steady temperature, and which terms are extrapolated.
 *
 * With a given film coefficient, convection is the film's heat flow and radiation is 0. Residual: a jump of the piecewise correlation can leave up to 0.8 % of the flow.
 *
 * @equation I^2 R20 (1 + alpha (Tc - 20)) = convection + radiation - sun + residual
 * @symbol I - currentA - A - steady current
 * @symbol A - areaMm2 - mm2 - area of the conductor
 * @symbol d - conductorDiameterMm - mm - diameter of the conductor, a solid round of the area if absent
 * @symbol K - layFactor - 1 - length of a strand over length of the wire, in R20
 * @symbol rho20 - resistivity20OhmM - ohm m - resistivity at 20 C, in R20 = rho20 K/A
 * @symbol alpha - temperatureCoefficient20PerK - 1/K - temperature coefficient at 20 C
 * @symbol w - insulationThicknessMm - mm - wall of the insulation, D = d + 2 w
 * @symbol k - insulationConductivityWPerMK - W/(m K) - conductivity of the wall
 * @symbol eps - emissivity - 1 - emissivity of the surface
 * @symbol Ta - ambientC - C - temperature of the air and the surroundings
 * @symbol v - airSpeedMPerS - m/s - speed of the air across the wire
 * @symbol p - pressurePa - Pa - absolute pressure of the air
 * @symbol sun - solarAbsorbedWPerM - W/m - sunshine that the surface absorbs
 * @symbol h - filmWPerM2K - W/(m2 K) - film coefficient in place of convection and radiation
 * @symbol Tc - result - C - conductor, with surface, resistance, flows, Rayleigh and Reynolds numbers, evaluations and residual in W/m
 * @domain currentA: at least 0
 * @domain areaMm2: above 0
 * @domain optional conductorDiameterMm: above 0
 * @domain optional layFactor: at least 1
 * @domain optional resistivity20OhmM: above 0
 * @domain optional temperatureCoefficient20PerK: at least 0
 * @domain insulationThicknessMm: at least 0
 * @domain insulationConductivityWPerMK: above 0
 * @domain optional emissivity: from 0 to 1
 * @domain ambientC: from -173.15 to 1626.85
 * @domain optional airSpeedMPerS: at least 0
 * @domain optional pressurePa: at least 1000
 * @domain optional solarAbsorbedWPerM: at least 0
 * @domain optional filmWPerM2K: above 0
 * @throws DomainError outside the domain
 * @throws UnknownEntryError for a metal that the table does not hold
 * @throws NoSteadyStateError where nothing balances (runaway), or the answer passes the melting point
 * @example
 * wireState({ areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 30, currentA: 19 }) // { conductorC: 78.94, surfaceC: 73.74, convectionWPerM: 5.413, radiationWPerM: 2.2526, evaluations: 4 }
 * @source Heat balance of an insulated wire in air: Churchill and Chu 1975 or Morgan 1975, Churchill and Bernstein 1977, Stefan-Boltzmann law, Fourier in the wall
 */
export function wireState(i: WireHeat & { readonly currentA: number }): {
  readonly conductorC: number
  readonly surfaceC: number
  readonly resistanceOhmPerM: number
  readonly convectionWPerM: number
  readonly radiationWPerM: number
  readonly rayleigh: number
  readonly reynolds: number
  readonly extrapolated: readonly Extrapolated[]
  readonly evaluations: number
  readonly residual: number
} {
  const b = resolveWire(i)
  requireNotNegative('currentA', i.currentA)
  const conductorC = conductorAtCurrent(b, i.currentA, b.meltingC)
  const { ambientC, evaluations } = b
  const surfaceC = ambientC + b.riseK
  const resistanceOhmPerM = b.resistance20OhmPerM * (1 + b.coefficientPerK * (conductorC - 20))
  const air = airProperties(0.5 * (surfaceC + ambientC), b.pressurePa)
  const rayleigh = surfaceRayleigh(surfaceC, ambientC, b.outsideM, b.pressurePa)
  const reynolds = (air.densityKgPerM3 * b.airSpeedMPerS * b.outsideM) / air.viscosityPaS
  const flow =
    b.filmMKPerW === null
      ? heatFlowWPerM({ ...b, surfaceC, diameterMm: b.outsideM * 1000, correlation: b.morgan ? 'morgan' : 'churchill-chu' })
      : { convectionWPerM: b.flowWPerM, radiationWPerM: 0 }
  const extrapolated: Extrapolated[] = []
  if (b.filmMKPerW === null) {
    if (rayleigh > largestRayleigh || (b.morgan && rayleigh > 0 && rayleigh < leastRayleighMorgan)) extrapolated.push('rayleigh')
    if (b.airSpeedMPerS > 0 && !(reynolds * air.prandtl > leastReynoldsPrandtl)) extrapolated.push('reynolds-prandtl')
  }
  if (conductorC < resistivityHolds.lowC || conductorC > resistivityHolds.highC) extrapolated.push('resistivity')
  return {
    conductorC,
    surfaceC,
    resistanceOhmPerM,
    convectionWPerM: flow.convectionWPerM,
    radiationWPerM: flow.radiationWPerM,
    rayleigh,
    reynolds,
    extrapolated,
    evaluations,
    residual: i.currentA * i.currentA * resistanceOhmPerM - (b.flowWPerM - b.sunWPerM),
  }
}
