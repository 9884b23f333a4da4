import { airProperties, churchillBernsteinNusselt } from '../heat/index.ts'
import type { StreamFilm } from './heatModel.ts'

/** The coefficient is smooth in temperature: twelve Chebyshev terms fit it to 1e-9 over 1000 K. */
const terms = 12

/** A constant film coefficient. */
export function constantFilm(filmWPerM2K: number): StreamFilm {
  return { lowRiseK: 0, highRiseK: 1, coefficientsWPerM2K: Float64Array.of(filmWPerM2K) }
}

/** Chebyshev fit of a smooth property of the surroundings against the rise, between two temperatures. */
export function tabled(ambientC: number, lowC: number, highC: number, property: (temperatureC: number) => number): StreamFilm {
  const middle = (lowC + highC) / 2
  const half = (highC - lowC) / 2
  const angle = (j: number): number => (Math.PI * (j + 0.5)) / terms
  const values = Float64Array.from({ length: terms }, (_, j) => property(middle + half * Math.cos(angle(j))))
  const coefficientsWPerM2K = Float64Array.from({ length: terms }, (_, m) => {
    let sum = 0
    for (let j = 0; j < terms; j++) sum += (values[j] as number) * Math.cos(m * angle(j))
    return (sum * (m === 0 ? 1 : 2)) / terms
  })
  return { lowRiseK: lowC - ambientC, highRiseK: highC - ambientC, coefficientsWPerM2K }
}

/** The film coefficient of a stream across a cylinder by Churchill and Bernstein at the film temperature, for surfaces between two temperatures. */
export function crossFlowFilm(i: {
  readonly ambientC: number
  readonly lowC: number
  readonly highC: number
  readonly airC: number
  readonly airSpeedMPerS: number
  readonly pressurePa: number
  readonly diameterM: number
  readonly factor: number
}): StreamFilm {
  return tabled(i.ambientC, i.lowC, i.highC, (surfaceC) => i.factor * crossFlowWPerM2K({ ...i, surfaceC }))
}

/** The same at one surface temperature. */
export function crossFlowWPerM2K(i: {
  readonly surfaceC: number
  readonly airC: number
  readonly airSpeedMPerS: number
  readonly pressurePa: number
  readonly diameterM: number
}): number {
  const air = airProperties((i.airC + i.surfaceC) / 2, i.pressurePa)
  const reynolds = (air.densityKgPerM3 * i.airSpeedMPerS * i.diameterM) / air.viscosityPaS
  return (churchillBernsteinNusselt({ reynolds, prandtl: air.prandtl }) * air.conductivityWPerMK) / i.diameterM
}

/** Clenshaw summation. */
export function filmAt(film: StreamFilm, riseK: number): number {
  const c = film.coefficientsWPerM2K
  if (c.length === 1) return c[0] as number
  const x = (2 * riseK - film.lowRiseK - film.highRiseK) / (film.highRiseK - film.lowRiseK)
  let b1 = 0
  let b2 = 0
  for (let m = c.length - 1; m > 0; m--) {
    const b0 = 2 * x * b1 - b2 + (c[m] as number)
    b2 = b1
    b1 = b0
  }
  return x * b1 - b2 + (c[0] as number)
}
