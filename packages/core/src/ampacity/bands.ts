import { type Correlation, correlations } from '../heat/index.ts'
import { conductorTemperatureC } from './conductorTemperature.ts'
import { steadyCurrentA } from './steadyCurrent.ts'
import type { Band, WireHeat } from './wire.ts'

function band(models: readonly { readonly correlation: Correlation; readonly value: number }[]): Band {
  const values = models.map(({ value }) => value)
  return { low: Math.min(...values), high: Math.max(...values), models }
}

/**
 * Gives the steady temperature of the conductor by both still-air correlations; its high end is the unfavourable one.
 *
 * @equation low, high = the two of conductorTemperatureC
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
 * @symbol Tc - result - C - temperature of the conductor, low and high and by model
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
 * conductorTemperatureBandC({ areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 30, currentA: 19 }) // { low: 72.73, high: 78.94 }
 * @source Heat balance of an insulated wire in air: Churchill and Chu 1975 or Morgan 1975, Churchill and Bernstein 1977, Stefan-Boltzmann law, Fourier in the wall
 */
export function conductorTemperatureBandC(i: WireHeat & { readonly currentA: number }): Band {
  return band(correlations.map((correlation) => ({ correlation, value: conductorTemperatureC({ ...i, correlation }) })))
}

/**
 * Gives the steady current for a limit temperature by both still-air correlations; its low end is the unfavourable one.
 *
 * @equation low, high = the two of steadyCurrentA
 * @symbol Tc - limitC - C - temperature that the conductor may reach
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
 * @symbol I - result - A - steady current, low and high and by model; null where either allows none
 * @domain limitC: at least -173.15
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
 * @example
 * steadyCurrentBandA({ areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 30, limitC: 70 }) // { low: 17.16, high: 18.38 }
 * @source Heat balance of an insulated wire in air: Churchill and Chu 1975 or Morgan 1975, Churchill and Bernstein 1977, Stefan-Boltzmann law, Fourier in the wall
 */
export function steadyCurrentBandA(i: WireHeat & { readonly limitC: number }): Band | null {
  const models: { readonly correlation: Correlation; readonly value: number }[] = []
  for (const correlation of correlations) {
    const value = steadyCurrentA({ ...i, correlation })
    if (value === null) return null
    models.push({ correlation, value })
  }
  return band(models)
}
