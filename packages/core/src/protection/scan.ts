/** Minimum of a function on 0 to 1, and the intervals where it is negative. */
interface Scan {
  readonly leastAt: number
  readonly least: number
  readonly below: readonly (readonly [number, number])[]
}

/** Panels before the minimum is refined: the functions here are convex, or nearly so. */
const pieces = 4
/** Distance from an end, relative to the panel, at which the sign of the slope is probed. */
const probeShare = 1e-6
/** Golden-section search stops at this width in x; a crossing is accepted at this distance from 0. */
const leastWidth = 1e-6
const nearZero = 1e-12
const golden = (Math.sqrt(5) - 1) / 2
const mostSteps = 200

/** Samples 0 to 1, then refines the minimum and the zero crossings. Infinite values are allowed at the start. */
export function scan(h: (x: number) => number): Scan {
  const xs = Array.from({ length: pieces + 1 }, (_, k) => k / pieces)
  const values = xs.map(h)
  const lowest = values.indexOf(Math.min(...values))
  const [leastAt, least] = sharpen(h, xs, values, lowest)
  if (!xs.includes(leastAt)) {
    const place = xs.findIndex((x) => x > leastAt)
    xs.splice(place, 0, leastAt)
    values.splice(place, 0, least)
  }
  return { leastAt, least, below: stretchesBelow(h, xs, values) }
}

function sharpen(h: (x: number) => number, xs: readonly number[], values: readonly number[], lowest: number): readonly [number, number] {
  const at = xs[lowest] as number
  const value = values[lowest] as number
  const low = xs[lowest - 1] ?? at
  const high = xs[lowest + 1] ?? at
  const probeWidth = probeShare * (high - low)
  if (low === at && h(at + probeWidth) >= value) return [at, value]
  if (high === at && h(at - probeWidth) >= value) return [at, value]
  const found = goldenSection(h, low, high)
  return found[1] < value ? found : [at, value]
}

function goldenSection(h: (x: number) => number, from: number, to: number): readonly [number, number] {
  let low = from
  let high = to
  let left = high - golden * (high - low)
  let right = low + golden * (high - low)
  let leftValue = h(left)
  let rightValue = h(right)
  while (high - low > leastWidth) {
    if (leftValue <= rightValue) {
      high = right
      right = left
      rightValue = leftValue
      left = high - golden * (high - low)
      leftValue = h(left)
    } else {
      low = left
      left = right
      leftValue = rightValue
      right = low + golden * (high - low)
      rightValue = h(right)
    }
  }
  return leftValue <= rightValue ? [left, leftValue] : [right, rightValue]
}

function stretchesBelow(h: (x: number) => number, xs: readonly number[], values: readonly number[]): readonly (readonly [number, number])[] {
  const found: [number, number][] = []
  let start = (values[0] as number) < 0 ? (xs[0] as number) : null
  for (let k = 1; k < xs.length; k += 1) {
    const [x0, x1, v0, v1] = [xs[k - 1], xs[k], values[k - 1], values[k]] as [number, number, number, number]
    if (start === null && v1 < 0) start = crossing(h, x0, v0, x1, v1)
    else if (start !== null && v1 >= 0) {
      found.push([start, crossing(h, x0, v0, x1, v1)])
      start = null
    }
  }
  if (start !== null) found.push([start, xs.at(-1) as number])
  return found
}

/** Root between two values of opposite sign: bisection while an end is infinite, else the Illinois variant of regula falsi. */
function crossing(h: (x: number) => number, from: number, fromValue: number, to: number, toValue: number): number {
  let [a, fa, b, fb] = [from, fromValue, to, toValue]
  for (let step = 0; step < mostSteps && Math.abs(fb) > nearZero; step += 1) {
    const secant = (a * fb - b * fa) / (fb - fa)
    const x = Number.isFinite(secant) ? secant : (a + b) / 2
    const fx = h(x)
    if (fx < 0 === fb < 0) fa /= 2
    else {
      a = b
      fa = fb
    }
    b = x
    fb = fx
  }
  return b
}
