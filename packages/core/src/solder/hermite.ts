// Between two instants an edge's rise is the cubic of its values and slopes there; slopes are for the whole step, x runs from 0 to 1.

const bisections = 60

function cubicAt(a: number, sa: number, b: number, sb: number, x: number): number {
  const c = 3 * (b - a) - 2 * sa - sb
  const d = sa + sb - 2 * (b - a)
  return a + x * (sa + x * (c + x * d))
}

/** Where the cubic turns within 0..1: the first and the second place, 1 where there is none. */
function turns(a: number, sa: number, b: number, sb: number, which: 0 | 1): number {
  const c = 3 * (b - a) - 2 * sa - sb
  const d = sa + sb - 2 * (b - a)
  // 3 d x^2 + 2 c x + sa = 0
  const root = c * c - 3 * d * sa
  if (root < 0) return 1
  const q = -(c + (c >= 0 ? 1 : -1) * Math.sqrt(root))
  const one = q === 0 ? 1 : sa / q
  const two = d === 0 ? 1 : q / (3 * d)
  const low = Math.min(inside(one), inside(two))
  const high = Math.max(inside(one), inside(two))
  return which === 0 ? low : high
}

function inside(x: number): number {
  return x > 0 && x < 1 ? x : 1
}

/** Whether the cubic turns between the two instants. */
export function turnsWithin(a: number, sa: number, b: number, sb: number): boolean {
  return turns(a, sa, b, sb, 0) < 1
}

/** Highest value of the cubic in 0..1. */
export function edgeHighest(a: number, sa: number, b: number, sb: number): number {
  return Math.max(a, b, cubicAt(a, sa, b, sb, turns(a, sa, b, sb, 0)), cubicAt(a, sa, b, sb, turns(a, sa, b, sb, 1)))
}

/** Share of the step in which the cubic is above a limit. */
export function edgeTimeAbove(a: number, sa: number, b: number, sb: number, limit: number): number {
  const spread = Math.abs(sa) + Math.abs(sb)
  if (Math.max(a, b) + spread <= limit) return 0
  if (Math.min(a, b) - spread >= limit) return 1
  const first = turns(a, sa, b, sb, 0)
  const second = turns(a, sa, b, sb, 1)
  return above(a, sa, b, sb, limit, 0, first) + above(a, sa, b, sb, limit, first, second) + above(a, sa, b, sb, limit, second, 1)
}

/** The same between two places with no turn between them. */
function above(a: number, sa: number, b: number, sb: number, limit: number, from: number, to: number): number {
  if (to <= from) return 0
  const low = cubicAt(a, sa, b, sb, from) > limit
  const high = cubicAt(a, sa, b, sb, to) > limit
  if (low === high) return low ? to - from : 0
  let left = from
  let right = to
  for (let k = 0; k < bisections; k++) {
    const middle = (left + right) / 2
    if (cubicAt(a, sa, b, sb, middle) > limit === low) left = middle
    else right = middle
  }
  return low ? left - from : to - left
}
