import { airConductivityAtK, airDensityAtK, airViscosityAtK } from './airProperties.ts'
import { airSpecificHeatJPerKgK, leastReynoldsPrandtl, standardGravityMPerS2, stefanBoltzmannWPerM2K4, zeroCelsiusK } from './constants.ts'
import { crossFlowNusselt } from './forcedConvectionNusselt.ts'
import { churchillChuNusselt, morganNusselt } from './naturalConvectionNusselt.ts'

// Plain arithmetic for solvers: nothing is checked and nothing is allocated. heatFlowWPerM is the checked form.

/** Rayleigh number of a horizontal cylinder at its film temperature. */
export function surfaceRayleigh(surfaceC: number, ambientC: number, diameterM: number, pressurePa: number): number {
  const T = 0.5 * (surfaceC + ambientC) + zeroCelsiusK
  const mu = airViscosityAtK(T)
  const rho = airDensityAtK(T, pressurePa)
  const Pr = (mu * airSpecificHeatJPerKgK) / airConductivityAtK(T)
  return ((standardGravityMPerS2 / T) * Math.abs(surfaceC - ambientC) * diameterM ** 3 * Pr * rho * rho) / (mu * mu)
}

/** Reynolds number of a stream across the cylinder at its film temperature. */
export function surfaceReynolds(surfaceC: number, ambientC: number, diameterM: number, airSpeedMPerS: number, pressurePa: number): number {
  const T = 0.5 * (surfaceC + ambientC) + zeroCelsiusK
  return (airDensityAtK(T, pressurePa) * airSpeedMPerS * diameterM) / airViscosityAtK(T)
}

/** Natural convection from a horizontal cylinder in W/m, with the sign of surface minus ambient. */
export function naturalFlowWPerM(surfaceC: number, ambientC: number, diameterM: number, pressurePa: number, morgan: boolean): number {
  const T = 0.5 * (surfaceC + ambientC) + zeroCelsiusK
  const mu = airViscosityAtK(T)
  const k = airConductivityAtK(T)
  const rho = airDensityAtK(T, pressurePa)
  const Pr = (mu * airSpecificHeatJPerKgK) / k
  const rise = surfaceC - ambientC
  const Ra = ((standardGravityMPerS2 / T) * Math.abs(rise) * diameterM * diameterM * diameterM * Pr * rho * rho) / (mu * mu)
  return (morgan ? morganNusselt(Ra) : churchillChuNusselt(Ra, Pr)) * k * Math.PI * rise
}

/** Forced convection in W/m; 0 where Re Pr is at most 0.2, outside the fit. */
export function forcedFlowWPerM(surfaceC: number, ambientC: number, diameterM: number, airSpeedMPerS: number, pressurePa: number): number {
  if (airSpeedMPerS === 0) return 0
  const T = 0.5 * (surfaceC + ambientC) + zeroCelsiusK
  const mu = airViscosityAtK(T)
  const k = airConductivityAtK(T)
  const Pr = (mu * airSpecificHeatJPerKgK) / k
  const Re = (airDensityAtK(T, pressurePa) * airSpeedMPerS * diameterM) / mu
  return Re * Pr > leastReynoldsPrandtl ? crossFlowNusselt(Re, Pr) * k * Math.PI * (surfaceC - ambientC) : 0
}

/** Radiation to surroundings at the ambient temperature, in W/m. */
export function radiationFlowWPerM(surfaceC: number, ambientC: number, diameterM: number, emissivity: number): number {
  const Ts = surfaceC + zeroCelsiusK
  const Ta = ambientC + zeroCelsiusK
  return emissivity * stefanBoltzmannWPerM2K4 * Math.PI * diameterM * (Ts * Ts + Ta * Ta) * (Ts + Ta) * (surfaceC - ambientC)
}

/** Convection (the larger by size of natural and forced) and radiation of a horizontal cylinder in W/m. */
export function surfaceFlowWPerM(
  surfaceC: number,
  ambientC: number,
  diameterM: number,
  emissivity: number,
  airSpeedMPerS: number,
  pressurePa: number,
  morgan: boolean,
): number {
  const natural = naturalFlowWPerM(surfaceC, ambientC, diameterM, pressurePa, morgan)
  const radiation = radiationFlowWPerM(surfaceC, ambientC, diameterM, emissivity)
  if (airSpeedMPerS === 0) return natural + radiation
  const forced = forcedFlowWPerM(surfaceC, ambientC, diameterM, airSpeedMPerS, pressurePa)
  return (Math.abs(forced) > Math.abs(natural) ? forced : natural) + radiation
}
