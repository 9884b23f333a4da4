/** Enough steps to close any bracket, with a bisection every third step. */
const mostSteps = 250
/** Width of a converged bracket, relative to its larger end or to 1. */
const closed = 2 ** -51

/** Root of a rising function between low (f <= 0) and high (f >= 0). Illinois variant of regula falsi with every third step a bisection, so jumps and infinite values do no harm. */
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

/** The same with high found by doubling the step above low until f >= 0; null if never. */
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
