import type { Interval } from '@strandwise/core'
import type { Candidate } from './candidates.ts'
import type { Fit, Fitter } from './fit.ts'
import { varianceOf } from './linear.ts'
import type { Ask } from './model.ts'
import { unknownCount } from './unknowns.ts'

/** What a probe would show under one cause: mean and deviation, of the logarithm for ohms. */
export interface Predicted {
  readonly mean: number
  readonly deviation: number
  readonly logarithm: boolean
}

const step = 1e-4
/** A meter shows no ohms outside these. */
const leastOhm = 1e-5
const mostOhm = 1e9
/** Of the mean: what a model of a healthy circuit leaves out. */
const leastShare = 0.002
const leastLogarithm = 0.02

const scaled = (ask: Ask, shown: number): number => (ask.state === 'dead' ? Math.log(Math.min(mostOhm, Math.max(leastOhm, shown))) : shown)

/** Predicts each probe under a fitted cause, with the spread that the readings leave; an unknown that no reading bears on keeps its own spread. */
export function predictAll(fitter: Fitter, { candidate, at, information, free }: Fit, asks: readonly Ask[]): readonly Predicted[] {
  const count = asks.length
  const n = free.length
  const means = new Float64Array(count)
  const gradients = asks.map(() => new Float64Array(n))
  const beside = new Float64Array(count)
  const moved = asks.some(({ when }) => when === 'moved')
  fitter.set(candidate, at, moved)
  for (let row = 0; row < count; row += 1) means[row] = scaled(asks[row] as Ask, fitter.model.show(asks[row] as Ask))
  const point = Float64Array.from(at)
  for (let index = 0; index < at.length; index += 1) {
    const k = free.indexOf(index)
    // A fault's size is felt over its whole width, an unknown of the circuit near its value.
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
    const variance = varianceOf(information, n, gradients[row] as Float64Array) + (beside[row] as number)
    return { mean, deviation: Math.sqrt(variance + model * model), logarithm }
  })
}

function widthOf({ sizes }: Candidate, size: number): number {
  const { low, high } = sizes[size] as Candidate['sizes'][number]
  return Math.min(0.05, (high - low) / 20)
}

/** Deviations to each side of a 95 % interval. */
const wide = 1.96

/** The 95 % interval in the probe's own unit; what cannot be negative is not. */
export function intervalOf({ mean, deviation, logarithm }: Predicted): Interval {
  const low = mean - wide * deviation
  const high = mean + wide * deviation
  return logarithm ? { low: Math.exp(low), high: Math.exp(high) } : { low, high }
}
