import type { Interval } from '../../materials/index.ts'

/** Places tried on the way to a lever's end: what is wanted may lie between two ends that both fail. */
const places = 4
/** A lever is moved to within this share of just far enough. */
const nearEnough = 1e-3
const mostTrials = 60

/** From one position of a lever to another, by equal ratios where both are above 0. */
function between(from: number, to: number, share: number): number {
  if (share === 1) return to
  return from > 0 && to > 0 ? from * (to / from) ** share : from + (to - from) * share
}

/** The least move from one end, which does not serve, towards the other; null where no place tried serves. */
function leastMove(from: number, to: number, serves: (value: number) => boolean): number | null {
  let bad = from
  for (let place = 1; place <= places; place++) {
    let good = between(from, to, place / places)
    if (!serves(good)) {
      bad = good
      continue
    }
    for (let trial = 0; trial < mostTrials && Math.abs(bad - good) > nearEnough * Math.max(Math.abs(bad), Math.abs(good)); trial++) {
      const value = between(bad, good, 0.5)
      if (serves(value)) good = value
      else bad = value
    }
    return good
  }
  return null
}

/** |ln(to/from)|: how far a lever was moved; Infinity where that has no meaning. */
export function moveOf(from: number | string | null, to: number | string): number {
  return typeof from === 'number' && typeof to === 'number' && from > 0 && to > 0 ? Math.abs(Math.log(to / from)) : Infinity
}

/** The position nearest to `from`, which does not serve itself, within the limits; null where none serves. */
export function nearestPosition(from: number, { low, high }: Interval, serves: (value: number) => boolean): number | null {
  const down = low < from ? leastMove(from, low, serves) : null
  const up = high > from ? leastMove(from, high, serves) : null
  if (down === null || up === null) return down ?? up
  return moveOf(from, down) <= moveOf(from, up) ? down : up
}
