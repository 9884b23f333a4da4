import { firstStage } from './moments.ts'

// Over a step every lump's value is the parabola through its values at the start, the first stage and the end; x runs from 0 to 1.

/** Coefficient of x in the parabola: its slope at the start, for the whole step. */
export function startSlope(start: number, first: number, last: number): number {
  return last - start - curvature(start, first, last)
}

/** Coefficient of x^2. */
export function curvature(start: number, first: number, last: number): number {
  return (last - start - (first - start) / firstStage) / (1 - firstStage)
}

export function parabolaAt(start: number, first: number, last: number, x: number): number {
  const c = curvature(start, first, last)
  return start + x * (last - start - c + c * x)
}

/** First x in 0..1 at which the parabola passes the bound, upwards or downwards; 2 where it does not. At the bound and on the wrong way: 0. */
export function firstPassing(start: number, first: number, last: number, bound: number, upwards: boolean): number {
  const sign = upwards ? 1 : -1
  const below = sign * (bound - start)
  if (below <= 0) return sign * (last - bound) > 0 ? 0 : 2
  const c = sign * curvature(start, first, last)
  const b = sign * startSlope(start, first, last)
  const ends = sign * (last - bound)
  // A crown within the step may pass the bound although both ends lie below it.
  if (ends < 0 && !(b > 0 && b < -2 * c)) return 2
  const root = b * b + 4 * c * below
  if (root < 0) return 2
  const q = b + Math.sqrt(root)
  // The smaller positive root of c x^2 + b x - below, written without cancellation.
  if (q > 0) return Math.min((2 * below) / q, 1)
  // So little below that the root is b itself: it dips first and comes back to where it was.
  return Math.min(-b / c, 1)
}

/** The highest value of the parabola in 0..1. */
export function highest(start: number, first: number, last: number): number {
  const ends = Math.max(start, last)
  const c = curvature(start, first, last)
  const x = -startSlope(start, first, last) / (2 * c)
  return x > 0 && x < 1 ? Math.max(ends, parabolaAt(start, first, last, x)) : ends
}
