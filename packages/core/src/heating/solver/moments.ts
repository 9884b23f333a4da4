// A mode that decays while something polynomial drives it: the integrals that tell where it ends.

/** First of the two instants at which a step balances the heat (Radau, third order, stiffly stable); the second is the end. */
export const firstStage = 1 / 3

/** Below this decay a series is exact to the last digit where the recurrence would cancel. */
const seriesBelow = 0.6
const seriesTerms = 11

/** Integrals of exp(-z (x - u)) u^k, k = 0, 1, 2, for u from 0 to x, and the decay exp(-z x) behind them. */
export function moments(z: number, x: number, out: Float64Array): void {
  const zx = z * x
  if (zx < seriesBelow) {
    let term = (x * x * x) / 3
    let i2 = term
    for (let j = 1; j <= seriesTerms; j++) {
      term *= -zx / (j + 3)
      i2 += term
    }
    const i1 = 0.5 * (x * x - z * i2)
    const i0 = x - z * i1
    out[0] = i0
    out[1] = i1
    out[2] = i2
    out[3] = 1 - z * i0
    return
  }
  const decay = Math.exp(-zx)
  const i0 = (1 - decay) / z
  const i1 = (x - i0) / z
  out[0] = i0
  out[1] = i1
  out[2] = (x * x - 2 * i1) / z
  out[3] = decay
}

/** Room for the four numbers of `moments`. */
export const fourNumbers = (): Float64Array => new Float64Array(4)
