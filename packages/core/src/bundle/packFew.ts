/** Exact packing of up to three wires, radii in descending order. Returns all x, then all y, then the bundle's radius. */
export function packFew(radii: Float64Array): Float64Array {
  const [r1 = 0, r2 = 0, r3 = 0] = radii
  if (radii.length === 1) return Float64Array.of(0, 0, r1)
  if (radii.length === 2) return Float64Array.of(-r2, r1, 0, 0, r1 + r2)
  return packThree(r1, r2, r3)
}

/** A third wire that fits the gap beside the other two does not widen the bundle; a thicker one makes all three touch the bundle's edge, the outer circle of Descartes' theorem. */
function packThree(r1: number, r2: number, r3: number): Float64Array {
  const between = r1 + r2
  // Radius of the largest third wire that fits between two touching ones and their outer circle.
  const inGap = (r1 * r2 * between) / (r1 * r1 + r1 * r2 + r2 * r2)
  const bundle = r3 <= inGap ? between : outerCircle(r1, r2, r3)
  const [x1, y1, x2, y2] = r3 <= inGap ? ([-r2, 0, r1, 0] as const) : onEdge(bundle, r1, r2)
  // The third wire touches both, on the side of the bundle's centre.
  const to1 = r1 + r3
  const to2 = r2 + r3
  const along = (to1 * to1 + (between - to2) * (between + to2)) / (2 * between)
  const across = Math.sqrt(Math.max(0, (to1 - along) * (to1 + along)))
  const ex = (x2 - x1) / between
  const ey = (y2 - y1) / between
  return Float64Array.of(x1, x2, x1 + along * ex - across * ey, y1, y2, y1 + along * ey + across * ex, bundle)
}

/** Radius of the circle round three mutually touching ones. */
function outerCircle(r1: number, r2: number, r3: number): number {
  const k1 = 1 / r1
  const k2 = 1 / r2
  const k3 = 1 / r3
  return 1 / (2 * Math.sqrt(k1 * k2 + k2 * k3 + k3 * k1) - k1 - k2 - k3)
}

/** Positions of two touching wires that both touch the bundle's edge: the first on the negative axis, the second below it, so that the third lies above. */
function onEdge(bundle: number, r1: number, r2: number): readonly [number, number, number, number] {
  const out1 = bundle - r1
  const out2 = bundle - r2
  const between = r1 + r2
  const cosine = (out1 * out1 + out2 * out2 - between * between) / (2 * out1 * out2)
  const sine = Math.sqrt(Math.max(0, 1 - cosine * cosine))
  return [-out1, 0, -out2 * cosine, -out2 * sine]
}
