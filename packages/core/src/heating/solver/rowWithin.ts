import { fourNumbers, moments } from './moments.ts'
import type { WireModes } from './wireModes.ts'

const scratch = /* @__PURE__ */ fourNumbers()

/**
 * Sum of row times mode, and its slope for the whole step, at the share x of a step that began at y, the rise being the parabola through start, first
 * and last; both are left in out.
 */
export function rowWithin(
  modes: WireModes,
  row: Float64Array,
  y: Float64Array,
  durationS: number,
  x: number,
  start: number,
  first: number,
  last: number,
  out: Float64Array,
): void {
  const { count, ratesPerS, coupling, drive } = modes
  const m = scratch
  const c2 = 3 * start - 4.5 * first + 1.5 * last
  const c1 = -4 * start + 4.5 * first - 0.5 * last
  const rise = start + x * (c1 + x * c2)
  let sum = 0
  let slope = 0
  for (let k = 0; k < count; k++) {
    const weight = row[k] as number
    if (weight === 0) continue
    const rate = ratesPerS[k] as number
    const beta = coupling[k] as number
    const sigma = drive[k] as number
    moments(rate * durationS, x, m)
    const i0 = m[0] as number
    const driven = beta * (start * i0 + c1 * (m[1] as number) + c2 * (m[2] as number)) + sigma * i0
    const value = (y[k] as number) * (m[3] as number) + durationS * driven
    sum += weight * value
    slope += weight * (beta * rise + sigma - rate * value)
  }
  out[0] = sum
  out[1] = slope * durationS
}
