import { requireFiniteResult } from '../errors/index.ts'
import { airConductivityAtK, airDensityAtK, airViscosityAtK } from './airProperties.ts'
import { airSpecificHeatJPerKgK, leastReynoldsPrandtl, standardGravityMPerS2, stefanBoltzmannWPerM2K4, zeroCelsiusK } from './constants.ts'
import { crossFlowNusselt } from './forcedConvectionNusselt.ts'
import { churchillChuNusselt, morganNusselt } from './naturalConvectionNusselt.ts'

/** Rayleigh number of a horizontal cylinder at its film temperature: unchecked. */
export function surfaceRayleigh(surfaceC: number, ambientC: number, diameterM: number, pressurePa: number): number {
  const T = 0.5 * (surfaceC + ambientC) + zeroCelsiusK
  const mu = airViscosityAtK(T)
  const inverseNu = airDensityAtK(T, pressurePa) / mu
  const Pr = (mu * airSpecificHeatJPerKgK) / airConductivityAtK(T)
  return (standardGravityMPerS2 / T) * Math.abs(surfaceC - ambientC) * diameterM * diameterM * diameterM * Pr * inverseNu * inverseNu
}

/** Natural convection from a horizontal cylinder in W/m, with the sign of surface minus ambient: unchecked. */
export function naturalFlowWPerM(surfaceC: number, ambientC: number, diameterM: number, pressurePa: number, morgan: boolean): number {
  const T = 0.5 * (surfaceC + ambientC) + zeroCelsiusK
  const mu = airViscosityAtK(T)
  const k = airConductivityAtK(T)
  const inverseNu = airDensityAtK(T, pressurePa) / mu
  const Pr = (mu * airSpecificHeatJPerKgK) / k
  const rise = surfaceC - ambientC
  const Ra = (standardGravityMPerS2 / T) * Math.abs(rise) * diameterM * diameterM * diameterM * Pr * inverseNu * inverseNu
  return (morgan ? morganNusselt(Ra) : churchillChuNusselt(Ra, Pr)) * k * Math.PI * rise
}

/** Forced convection in W/m; 0 where Re Pr is at most 0.2, outside the fit: unchecked. */
export function forcedFlowWPerM(surfaceC: number, ambientC: number, diameterM: number, airSpeedMPerS: number, pressurePa: number): number {
  if (airSpeedMPerS === 0) return 0
  const T = 0.5 * (surfaceC + ambientC) + zeroCelsiusK
  const mu = airViscosityAtK(T)
  const k = airConductivityAtK(T)
  const Pr = (mu * airSpecificHeatJPerKgK) / k
  const Re = (airDensityAtK(T, pressurePa) * airSpeedMPerS * diameterM) / mu
  return Re * Pr > leastReynoldsPrandtl ? crossFlowNusselt(Re, Pr) * k * Math.PI * (surfaceC - ambientC) : 0
}

/** Radiation to surroundings at the ambient temperature, in W/m: unchecked. */
export function radiationFlowWPerM(surfaceC: number, ambientC: number, diameterM: number, emissivity: number): number {
  const Ts = surfaceC + zeroCelsiusK
  const Ta = ambientC + zeroCelsiusK
  return emissivity * stefanBoltzmannWPerM2K4 * Math.PI * diameterM * (Ts * Ts + Ta * Ta) * (Ts + Ta) * (surfaceC - ambientC)
}

/**
 * Gives the heat a metre of wire surface sheds by convection and radiation, for solvers: plain arithmetic, one check at the end.
 *
 * @equation q = max(Nu_n, Nu_f) k pi (Ts - Ta) + eps sigma pi D (Ts^4 - Ta^4)
 * @symbol Ts - surfaceC - C - temperature of the surface (K in the fourth powers)
 * @symbol Ta - ambientC - C - temperature of the air and of the surroundings
 * @symbol D - diameterM - m - outside diameter
 * @symbol eps - emissivity - 1 - emissivity of the surface
 * @symbol v - airSpeedMPerS - m/s - speed of the air across the wire
 * @symbol p - pressurePa - Pa - absolute pressure
 * @symbol q - result - W/m - heat flow, positive where the surface is the hotter
 * @domain surfaceC: finite
 * @domain ambientC: finite
 * @domain diameterM: finite
 * @domain emissivity: finite
 * @domain airSpeedMPerS: finite
 * @domain pressurePa: finite
 * @throws DomainError where the result is no finite number; heatFlowWPerM checks each parameter by its own range
 * @example
 * surfaceFlowWPerM(60, 20, 0.0024, 0.9, 1, 101325, false) // 22.809
 * @source as heatFlowWPerM
 */
export function surfaceFlowWPerM(
  surfaceC: number,
  ambientC: number,
  diameterM: number,
  emissivity: number,
  airSpeedMPerS: number,
  pressurePa: number,
  morgan: boolean,
): number {
  const T = 0.5 * (surfaceC + ambientC) + zeroCelsiusK
  const mu = airViscosityAtK(T)
  const k = airConductivityAtK(T)
  const inverseNu = airDensityAtK(T, pressurePa) / mu
  const Pr = (mu * airSpecificHeatJPerKgK) / k
  const rise = surfaceC - ambientC
  const Ra = (standardGravityMPerS2 / T) * Math.abs(rise) * diameterM * diameterM * diameterM * Pr * inverseNu * inverseNu
  let Nu = morgan ? morganNusselt(Ra) : churchillChuNusselt(Ra, Pr)
  if (airSpeedMPerS !== 0) {
    const Re = inverseNu * airSpeedMPerS * diameterM
    if (!(Re * Pr <= leastReynoldsPrandtl)) Nu = Math.max(Nu, crossFlowNusselt(Re, Pr))
  }
  const flow = Nu * k * Math.PI * rise + radiationFlowWPerM(surfaceC, ambientC, diameterM, emissivity)
  return flow > -Infinity && flow < Infinity ? flow : requireFiniteResult('surfaceC', surfaceC, flow)
}
