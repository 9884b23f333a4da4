/**
 * Round wires in a round bundle as one smooth minimisation: the bundle's radius plus a penalty for every overlap and every wire that sticks out.
 * Multipliers of the contacts (augmented Lagrangian) let the penalty vanish at the end, so that the wires touch and don't overlap.
 */
export interface PackingProblem {
  readonly count: number
  readonly radii: Float64Array
  /** All x, then all y, then the bundle's radius. */
  readonly place: Float64Array
  /** One force a pair of wires, in the order (1,0), (2,0), (2,1), ... */
  readonly pairForces: Float64Array
  /** One force a wire against the bundle's edge. */
  readonly edgeForces: Float64Array
}

/** Below this distance the direction between two centres is undefined. */
const coincident = 1e-12

/** A new problem for these radii, all wires at the centre. */
export function packingProblem(radii: Float64Array): PackingProblem {
  const count = radii.length
  return {
    count,
    radii,
    place: new Float64Array(2 * count + 1),
    pairForces: new Float64Array((count * (count - 1)) / 2),
    edgeForces: new Float64Array(count),
  }
}

/** Penalised radius at a position, divided by the stiffness; writes its gradient. */
export function packingEnergy(problem: PackingProblem, place: Float64Array, slope: Float64Array, stiffness: number): number {
  const { count, radii, pairForces, edgeForces } = problem
  const softness = 1 / stiffness
  const bundle = place[2 * count] ?? 0
  let energy = 0
  let bundleSlope = 0
  let pair = 0
  slope.fill(0)
  for (let i = 0; i < count; i++) {
    const xi = place[i] ?? 0
    const yi = place[count + i] ?? 0
    const ri = radii[i] ?? 0
    let slopeX = 0
    let slopeY = 0
    const reach = bundle - ri - (edgeForces[i] ?? 0) * softness
    const fromCentre2 = xi * xi + yi * yi
    if (reach < 0 || fromCentre2 > reach * reach) {
      const fromCentre = Math.sqrt(fromCentre2)
      const out = fromCentre - reach
      energy += out * out
      bundleSlope -= out
      if (fromCentre > coincident) {
        slopeX += (out / fromCentre) * xi
        slopeY += (out / fromCentre) * yi
      }
    }
    for (let j = 0; j < i; j++, pair++) {
      const dx = xi - (place[j] ?? 0)
      const dy = yi - (place[count + j] ?? 0)
      const apart = ri + (radii[j] ?? 0) + (pairForces[pair] ?? 0) * softness
      const distance2 = dx * dx + dy * dy
      if (distance2 >= apart * apart) continue
      const distance = Math.sqrt(distance2)
      const overlap = apart - distance
      energy += overlap * overlap
      if (distance <= coincident) continue
      const pushX = (overlap / distance) * dx
      const pushY = (overlap / distance) * dy
      slopeX -= pushX
      slopeY -= pushY
      slope[j] = (slope[j] ?? 0) + pushX
      slope[count + j] = (slope[count + j] ?? 0) + pushY
    }
    // Later pairs add to this.
    slope[i] = slopeX
    slope[count + i] = slopeY
  }
  slope[2 * count] = bundleSlope + softness
  return energy / 2 + bundle * softness
}

/** Updates the multipliers by the contact forces; returns the largest remaining overlap. */
export function updateForces(problem: PackingProblem, stiffness: number): number {
  const { count, radii, place, pairForces, edgeForces } = problem
  const bundle = place[2 * count] ?? 0
  let worst = 0
  let pair = 0
  for (let i = 0; i < count; i++) {
    const xi = place[i] ?? 0
    const yi = place[count + i] ?? 0
    const ri = radii[i] ?? 0
    const out = Math.sqrt(xi * xi + yi * yi) + ri - bundle
    worst = Math.max(worst, out)
    edgeForces[i] = Math.max(0, (edgeForces[i] ?? 0) + stiffness * out)
    for (let j = 0; j < i; j++, pair++) {
      const dx = xi - (place[j] ?? 0)
      const dy = yi - (place[count + j] ?? 0)
      const overlap = ri + (radii[j] ?? 0) - Math.sqrt(dx * dx + dy * dy)
      worst = Math.max(worst, overlap)
      pairForces[pair] = Math.max(0, (pairForces[pair] ?? 0) + stiffness * overlap)
    }
  }
  return worst
}

/** Spreads the wires until none overlaps, sets the bundle's radius to enclose them, and returns it. */
export function makeFeasible(problem: PackingProblem): number {
  const { count, radii, place } = problem
  let spread = 0
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < i; j++) {
      const dx = (place[i] ?? 0) - (place[j] ?? 0)
      const dy = (place[count + i] ?? 0) - (place[count + j] ?? 0)
      spread = Math.max(spread, ((radii[i] ?? 0) + (radii[j] ?? 0)) / Math.sqrt(dx * dx + dy * dy))
    }
  }
  spread *= 1 + hair
  let bundle = 0
  for (let i = 0; i < count; i++) {
    const x = (place[i] ?? 0) * spread
    const y = (place[count + i] ?? 0) * spread
    place[i] = x
    place[count + i] = y
    bundle = Math.max(bundle, Math.sqrt(x * x + y * y) + (radii[i] ?? 0))
  }
  place[2 * count] = bundle
  return bundle
}

/** Extra spread so that rounding leaves no overlap. */
const hair = 1e-14
