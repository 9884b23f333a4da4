/** The heat balance in the plainest way: one secant on the surface's temperature, nothing remembered, nothing checked. What the library's solver is measured against. */
import type { Point } from './grid.ts'

const conductivityWPerMK = 0.17
const emissivity = 0.9
const pressurePa = 101325
const rho20 = 1.7241e-8
const alpha = 0.00393
const residual = 1e-9

const morganBands = [
  [1e-2, 0.675, 0.058],
  [1e2, 1.02, 0.148],
  [1e4, 0.85, 0.188],
  [1e7, 0.48, 0.25],
  [Number.POSITIVE_INFINITY, 0.125, 1 / 3],
] as const

/** Convection in still air and radiation, W/m. */
export function flow(Ts: number, Ta: number, D: number, morgan: boolean): number {
  const T = 0.5 * (Ts + Ta)
  const mu = (1.458e-6 * T ** 1.5) / (T + 110.4)
  const k = (2.64638e-3 * T ** 1.5) / (T + 245.4 * 10 ** (-12 / T))
  const nu = (mu * 8.314462618 * T) / (pressurePa * 0.0289586)
  const Pr = (mu * 1006) / k
  const Ra = ((9.80665 / T) * Math.abs(Ts - Ta) * D ** 3 * Pr) / (nu * nu)
  let Nu: number
  if (morgan) {
    const [, C, n] = morganBands.find(([upper]) => Ra < upper) ?? morganBands[4]
    Nu = C * Ra ** n
  } else {
    const root = 0.6 + (0.387 * Ra ** (1 / 6)) / (1 + (0.559 / Pr) ** (9 / 16)) ** (8 / 27)
    Nu = root * root
  }
  return Nu * k * Math.PI * (Ts - Ta) + emissivity * 5.670374419e-8 * Math.PI * D * (Ts ** 4 - Ta ** 4)
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
  // A film of 15 W/(m2 K) to begin with, and a tenth more.
  let a = Ta + heat20 / (Math.PI * D * 15)
  let fa = F(a)
  let b = Ta + 1.1 * (a - Ta)
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

/** Evaluations of the terms since the last time that they were asked for. */
export function takeEvaluations(): number {
  const taken = evaluations
  evaluations = 0
  return taken
}
