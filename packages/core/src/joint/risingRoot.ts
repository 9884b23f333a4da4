/** Steps that close any bracket, even by a halving each third one. */
const mostSteps = 250
/** Width of the bracket, as a share of its larger end or of 1, at which it counts as closed. */
const closed = 2 ** -51

/**
 * Where a function that rises crosses 0, between low (not above 0 there) and high (not below 0 there).
 * Regula falsi after the Illinois rule, and each third step a halving: jumps and infinite values do no harm.
 */
export function risingRoot(f: (x: number) => number, low: number, high: number): number {
  let a = low
  let b = high
  let fa = f(a)
  if (fa === 0) return a
  let fb = f(b)
  let last = 0
  for (let k = 1; k <= mostSteps && b - a > closed * Math.max(Math.abs(a), Math.abs(b), 1); k++) {
    const chord = a - (fa * (b - a)) / (fb - fa)
    const x = k % 3 === 0 || !(chord > a && chord < b) ? 0.5 * (a + b) : chord
    const fx = f(x)
    if (fx === 0) return x
    const side = fx < 0 ? -1 : 1
    if (side < 0) {
      a = x
      fa = fx
      if (last === side) fb *= 0.5
    } else {
      b = x
      fb = fx
      if (last === side) fa *= 0.5
    }
    last = side
  }
  return 0.5 * (a + b)
}

/** The same, with high found by doubling the step above low until f is not negative; null where no such step is found. */
export function risingRootAbove(f: (x: number) => number, low: number, step: number): number | null {
  let a = low
  let width = step
  for (let k = 0; k < mostSteps; k++) {
    const b = low + width
    if (f(b) >= 0) return risingRoot(f, a, b)
    a = b
    width *= 2
  }
  return null
}
