import type { Interval } from '../../materials/index.ts'

/** Positions tried between the present one and the limit: a value in between may work where both ends fail. */
const places = 4
/** Relative tolerance of the smallest move. */
const nearEnough = 1e-3
const mostTrials = 60

/** Interpolates between two positions of a lever, geometrically if both are positive. */
function between(from: number, to: number, share: number): number {
  if (share === 1) return to
  // Two powers, because to / from overflows for a tiny from.
  return from > 0 && to > 0 ? from ** (1 - share) * to ** share : from + (to - from) * share
}

/** The smallest move from one end, which fails, towards the other; null if every position tried fails. */
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

/** Size of a move, |ln(to/from)|; Infinity if undefined. */
export function moveOf(from: number | string | null, to: number | string): number {
  return typeof from === 'number' && typeof to === 'number' && from > 0 && to > 0 ? Math.abs(Math.log(to / from)) : Infinity
}

/** The working position nearest to `from`, which itself fails, within the limits; null if none. */
export function nearestPosition(from: number, { low, high }: Interval, serves: (value: number) => boolean): number | null {
  const down = low < from ? leastMove(from, low, serves) : null
  const up = high > from ? leastMove(from, high, serves) : null
  if (down === null || up === null) return down ?? up
  return moveOf(from, down) <= moveOf(from, up) ? down : up
}
