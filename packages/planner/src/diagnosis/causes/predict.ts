import type { Interval } from '@strandwise/core'
import type { Candidate } from './candidates.ts'
import type { Fit, Fitter } from './fit.ts'
import { varianceOf } from './linear.ts'
import type { Ask } from './model.ts'
import { unknownCount } from './unknowns.ts'

/** Predicted reading under one cause: mean and standard deviation, of the logarithm for ohms. */
export interface Predicted {
  readonly mean: number
  readonly deviation: number
  readonly logarithm: boolean
}

const step = 1e-4
/** Limits of a meter's ohms display. */
const leastOhm = 1e-5
const mostOhm = 1e9
/** Least relative deviation: the error of the healthy model. */
const leastShare = 0.002
const leastLogarithm = 0.02

const scaled = (ask: Ask, shown: number): number => (ask.state === 'dead' ? Math.log(Math.min(mostOhm, Math.max(leastOhm, shown))) : shown)

/** Predicts each probe under a fitted cause, with the posterior spread; unknowns that no reading depends on keep their prior spread. */
export function predictAll(fitter: Fitter, { candidate, at, information, free }: Fit, asks: readonly Ask[]): readonly Predicted[] {
  const count = asks.length
  const n = free.length
  const means = new Float64Array(count)
  const gradients = asks.map(() => new Float64Array(n))
  const beside = new Float64Array(count)
  const moved = asks.some(({ when }) => when === 'moved')
  const known = information()
  fitter.set(candidate, at, moved)
  for (let row = 0; row < count; row += 1) means[row] = scaled(asks[row] as Ask, fitter.model.show(asks[row] as Ask))
  const point = Float64Array.from(at)
  for (let index = 0; index < at.length; index += 1) {
    const k = free.indexOf(index)
    // Step of the numerical derivative: a fault's size over its whole spread, a circuit unknown near its value.
    const width = index < unknownCount ? step : widthOf(candidate, index - unknownCount)
    point[index] = (at[index] as number) + width
    fitter.set(candidate, point, moved)
    for (let row = 0; row < count; row += 1) {
      const slope = (scaled(asks[row] as Ask, fitter.model.show(asks[row] as Ask)) - (means[row] as number)) / width
      if (k >= 0) (gradients[row] as Float64Array)[k] = slope
      else beside[row] = (beside[row] as number) + slope * slope
    }
    point[index] = at[index] as number
  }
  return asks.map((ask, row) => {
    const mean = means[row] as number
    const logarithm = ask.state === 'dead'
    const model = logarithm ? leastLogarithm : leastShare * Math.abs(mean)
    const variance = varianceOf(known, n, gradients[row] as Float64Array) + (beside[row] as number)
    return { mean, deviation: Math.sqrt(variance + model * model), logarithm }
  })
}

function widthOf({ sizes }: Candidate, size: number): number {
  const { low, high } = sizes[size] as Candidate['sizes'][number]
  return Math.min(0.05, (high - low) / 20)
}

/** Half width of a 95 % interval in standard deviations. */
const wide = 1.96

/** The 95 % interval in the probe's unit, cut at 0 where it cannot be negative. */
export function intervalOf({ mean, deviation, logarithm }: Predicted): Interval {
  const low = mean - wide * deviation
  const high = mean + wide * deviation
  return logarithm ? { low: Math.exp(low), high: Math.exp(high) } : { low, high }
}
