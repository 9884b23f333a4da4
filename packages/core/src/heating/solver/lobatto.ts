// Gauss-Lobatto points on an element: polynomials through them carry the temperature along a wire, and their weights lump the stored heat at the nodes.

/** Points, weights and stiffness of one element of unit length and unit conductance-length. */
interface LobattoRule {
  readonly degree: number
  /** On 0..1. */
  readonly points: Float64Array
  readonly weights: Float64Array
  /** Row-major, (degree + 1) squared: integral of the products of slopes. */
  readonly stiffness: Float64Array
}

const inner: Readonly<Record<number, readonly number[]>> = {
  1: [],
  2: [0],
  3: [-Math.sqrt(1 / 5), Math.sqrt(1 / 5)],
  4: [-Math.sqrt(3 / 7), 0, Math.sqrt(3 / 7)],
  5: [
    -Math.sqrt(1 / 3 + (2 * Math.sqrt(7)) / 21),
    -Math.sqrt(1 / 3 - (2 * Math.sqrt(7)) / 21),
    Math.sqrt(1 / 3 - (2 * Math.sqrt(7)) / 21),
    Math.sqrt(1 / 3 + (2 * Math.sqrt(7)) / 21),
  ],
}

function legendre(degree: number, x: number): number {
  let before = 1
  let at = x
  for (let k = 2; k <= degree; k++) {
    const next = ((2 * k - 1) * x * at - (k - 1) * before) / k
    before = at
    at = next
  }
  return degree === 0 ? 1 : at
}

function build(degree: number): LobattoRule {
  const z = [-1, ...(inner[degree] ?? []), 1]
  const n = degree + 1
  const w = z.map((x) => 2 / (degree * n * legendre(degree, x) ** 2))
  const slope = (i: number, j: number): number => {
    const zi = z[i] ?? 0
    const zj = z[j] ?? 0
    if (i === j) return i === 0 ? (-degree * n) / 4 : i === degree ? (degree * n) / 4 : 0
    return legendre(degree, zi) / (legendre(degree, zj) * (zi - zj))
  }
  const stiffness = new Float64Array(n * n)
  for (let a = 0; a < n; a++) {
    for (let b = 0; b < n; b++) {
      let sum = 0
      for (let k = 0; k < n; k++) sum += (w[k] ?? 0) * slope(k, a) * slope(k, b)
      // From -1..1 to 0..1: each slope doubles, the length halves.
      stiffness[a * n + b] = 2 * sum
    }
  }
  return { degree, points: Float64Array.from(z, (x) => (x + 1) / 2), weights: Float64Array.from(w, (x) => x / 2), stiffness }
}

const rules: readonly LobattoRule[] = /* @__PURE__ */ [1, 2, 3, 4, 5].map(build)

/** The rule of a degree from 1 to 5. */
export function lobattoRule(degree: number): LobattoRule {
  const rule = rules[degree - 1]
  if (rule === undefined) throw new RangeError(`no element of degree ${degree}`)
  return rule
}
