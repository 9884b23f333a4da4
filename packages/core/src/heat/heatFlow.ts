import { requireBetween, requireChoice, requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'
import { airHighestC, airLowestC } from './constants.ts'
import { type Correlation, correlations, heatDefaults } from './correlation.ts'
import { requireAirPressure } from './requireAirPressure.ts'
import { forcedFlowWPerM, naturalFlowWPerM, radiationFlowWPerM } from './surfaceFlow.ts'

/**
 * Gives the heat that leaves each metre of a horizontal wire's surface, by natural and forced convection and radiation.
 *
 * @equation q = max(Nu_n, Nu_f) k pi (Ts - Ta) + eps sigma pi D (Ts^4 - Ta^4) - sun
 * @symbol Ts - surfaceC - C - temperature of the surface (K in the fourth powers)
 * @symbol Ta - ambientC - C - temperature of the air and of the surroundings
 * @symbol D - diameterMm - mm - outside diameter
 * @symbol eps - emissivity - 1 - emissivity of the surface
 * @symbol v - airSpeedMPerS - m/s - speed of the air across the wire, in the Reynolds number
 * @symbol p - pressurePa - Pa - absolute pressure, in the density of the air
 * @symbol sun - solarAbsorbedWPerM - W/m - sunshine that the surface absorbs
 * @symbol q - result - W/m - heat flow, positive where the surface is the hotter
 * @domain surfaceC: from -173.15 to 1626.85
 * @domain ambientC: from -173.15 to 1626.85
 * @domain diameterMm: above 0
 * @domain emissivity: from 0 to 1
 * @domain optional airSpeedMPerS: at least 0
 * @domain optional pressurePa: at least 1000
 * @domain optional solarAbsorbedWPerM: at least 0
 * @throws DomainError outside the domain
 * @example
 * heatFlowWPerM({ surfaceC: 60, ambientC: 20, diameterMm: 2.4, emissivity: 0.9, airSpeedMPerS: 0, pressurePa: 101325, solarAbsorbedWPerM: 0 }) // { convectionWPerM: 4.933, radiationWPerM: 1.898, totalWPerM: 6.831 }
 * @source Churchill and Chu 1975 or Morgan 1975, Churchill and Bernstein 1977 where Re Pr is above 0.2 (else forced flow is 0), Stefan-Boltzmann law
 */
export function heatFlowWPerM(i: {
  readonly surfaceC: number
  readonly ambientC: number
  readonly diameterMm: number
  readonly emissivity: number
  readonly airSpeedMPerS?: number
  readonly pressurePa?: number
  readonly solarAbsorbedWPerM?: number
  readonly correlation?: Correlation
}): {
  readonly naturalWPerM: number
  readonly forcedWPerM: number
  readonly convectionWPerM: number
  readonly radiationWPerM: number
  readonly totalWPerM: number
} {
  const { surfaceC, ambientC, emissivity } = i
  requireBetween('surfaceC', surfaceC, airLowestC, airHighestC)
  requireBetween('ambientC', ambientC, airLowestC, airHighestC)
  requirePositive('diameterMm', i.diameterMm)
  requireBetween('emissivity', emissivity, 0, 1)
  const airSpeedMPerS = requireNotNegative('airSpeedMPerS', i.airSpeedMPerS ?? heatDefaults.airSpeedMPerS)
  const pressurePa = requireAirPressure('pressurePa', i.pressurePa ?? heatDefaults.pressurePa)
  const sun = requireNotNegative('solarAbsorbedWPerM', i.solarAbsorbedWPerM ?? heatDefaults.solarAbsorbedWPerM)
  const correlation = requireChoice<Correlation>('correlation', i.correlation ?? heatDefaults.correlation, correlations)
  const D = i.diameterMm / 1000
  const natural = requireFiniteResult('diameterMm', i.diameterMm, naturalFlowWPerM(surfaceC, ambientC, D, pressurePa, correlation === 'morgan'))
  const forced = requireFiniteResult('airSpeedMPerS', airSpeedMPerS, forcedFlowWPerM(surfaceC, ambientC, D, airSpeedMPerS, pressurePa))
  const radiation = requireFiniteResult('diameterMm', i.diameterMm, radiationFlowWPerM(surfaceC, ambientC, D, emissivity))
  const convection = Math.abs(forced) > Math.abs(natural) ? forced : natural
  const total = requireFiniteResult('solarAbsorbedWPerM', sun, convection + radiation - sun)
  return { naturalWPerM: natural, forcedWPerM: forced, convectionWPerM: convection, radiationWPerM: radiation, totalWPerM: total }
}
