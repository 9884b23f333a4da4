import { curvature, parabolaAt, startSlope } from './parabola.ts'
import { rowWithin } from './rowWithin.ts'
import type { WireModes } from './wireModes.ts'

/** Trials for the place of a turn or a crossing within a step; the place is told to this share of it. */
const mostTrials = 24
const placeShare = 1e-7
/** A trial by false position keeps this share of the span from either end. */
const keepOff = 1e-3

/** A step of one wire in hand: what its edge does within it is asked of the modes, exactly. One object serves a whole run. */
export interface EdgeStep {
  readonly modes: WireModes
  readonly limitRiseK: number
  /** The modes at the step's start. */
  readonly values: Float64Array
  durationS: number
  start: number
  first: number
  last: number
  /** Found by edgeWithin: the edge's rise, and its slope for the whole step. */
  readonly found: Float64Array
}

export function newEdgeStep(modes: WireModes, limitRiseK: number, values: Float64Array): EdgeStep {
  return { modes, limitRiseK, values, durationS: 0, start: 0, first: 0, last: 0, found: new Float64Array(2) }
}

/** Finds the edge's rise and slope at the share x of the step. */
export function edgeWithin(step: EdgeStep, x: number): void {
  const { modes, values, durationS, start, first, last, found } = step
  rowWithin(modes, modes.edge, values, durationS, x, start, first, last, found)
  found[0] = (found[0] as number) + modes.edgeOffsetK + modes.edgeJoint * parabolaAt(start, first, last, x)
  found[1] = (found[1] as number) + modes.edgeJoint * (startSlope(start, first, last) + 2 * curvature(start, first, last) * x)
}

/** Where the rise (0) or the slope (1) passes a value, between two shares at which it lies on either side: false position, halved in turn. */
export function placeOf(step: EdgeStep, which: 0 | 1, value: number, from: number, atFrom: number, to: number, atTo: number): number {
  let a = from
  let fa = atFrom - value
  let b = to
  let fb = atTo - value
  for (let trial = 0; trial < mostTrials && b - a > placeShare; trial++) {
    const straight = a + ((b - a) * fa) / (fa - fb)
    const x = trial % 3 === 2 ? (a + b) / 2 : Math.min(Math.max(straight, a + keepOff * (b - a)), b - keepOff * (b - a))
    edgeWithin(step, x)
    const fx = (step.found[which] as number) - value
    if (fx === 0) return x
    if (fx > 0 === fa > 0) {
      a = x
      fa = fx
    } else {
      b = x
      fb = fx
    }
  }
  return a + ((b - a) * fa) / (fa - fb)
}

/** Share of the step above the limit between two shares with no turn between them. */
export function shareAbove(step: EdgeStep, from: number, atFrom: number, to: number, atTo: number): number {
  const limit = step.limitRiseK
  if (atFrom > limit === atTo > limit) return atTo > limit ? to - from : 0
  const x = placeOf(step, 0, limit, from, atFrom, to, atTo)
  return atFrom > limit ? x - from : to - x
}
