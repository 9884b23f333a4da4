/** The plainest solution of the heat balance: one secant on the surface temperature, without caching or checks. Baseline for the library's solver. */
import type { Point } from './grid.ts'

const conductivityWPerMK = 0.17
const emissivity = 0.9
const pressurePa = 101325
const rho20 = 1.7241e-8
const alpha = 0.00393
const residual = 1e-9

/** Convection in still air and radiation, W/m. */
export function flow(Ts: number, Ta: number, D: number, morgan: boolean): number {
  const T = 0.5 * (Ts + Ta)
  const T15 = T * Math.sqrt(T)
  const mu = (1.458e-6 * T15) / (T + 110.4)
  const k = (2.64638e-3 * T15) / (T + 245.4 * 10 ** (-12 / T))
  const nu = (mu * 8.314462618 * T) / (pressurePa * 0.0289586)
  const Pr = (mu * 1006) / k
  const Ra = ((9.80665 / T) * Math.abs(Ts - Ta) * D * D * D * Pr) / (nu * nu)
  let Nu: number
  if (morgan) {
    if (Ra < 1e-2) Nu = 0.675 * Ra ** 0.058
    else if (Ra < 1e2) Nu = 1.02 * Ra ** 0.148
    else if (Ra < 1e4) Nu = 0.85 * Ra ** 0.188
    else if (Ra < 1e7) Nu = 0.48 * Ra ** 0.25
    else Nu = 0.125 * Math.cbrt(Ra)
  } else {
    const root = 0.6 + (0.387 * Ra ** (1 / 6)) / (1 + (0.559 / Pr) ** (9 / 16)) ** (8 / 27)
    Nu = root * root
  }
  return Nu * k * Math.PI * (Ts - Ta) + emissivity * 5.670374419e-8 * Math.PI * D * (Ts * Ts * Ts * Ts - Ta * Ta * Ta * Ta)
}

let evaluations = 0

/** Conductor's temperature in C. */
export function plainSecant(point: Point): number {
  const area = point.areaMm2 * 1e-6
  const d = Math.sqrt((4 * area) / Math.PI)
  const D = d + 2e-3 * point.insulationThicknessMm
  const R = Math.log(D / d) / (2 * Math.PI * conductivityWPerMK)
  const heat20 = (point.currentA ** 2 * rho20) / area
  const Ta = point.ambientC + 273.15
  const morgan = point.correlation === 'morgan'
  let q = 0
  const F = (Ts: number): number => {
    evaluations += 1
    q = flow(Ts, Ta, D, morgan)
    return heat20 * (1 + alpha * (Ts - 293.15 + q * R)) - q
  }
  // Starting points 1 and 2 K above the air, without knowledge of the wire.
  let a = Ta + 1
  let fa = F(a)
  let b = Ta + 2
  let fb = F(b)
  for (let n = 0; n < 100 && Math.abs(fb) > residual * Math.min(1, q); n += 1) {
    const c = b - (fb * (b - a)) / (fb - fa)
    a = b
    fa = fb
    b = c
    fb = F(b)
  }
  return b + q * R - 273.15
}

/** Evaluations of the terms since the last call. */
export function takeEvaluations(): number {
  const taken = evaluations
  evaluations = 0
  return taken
}
