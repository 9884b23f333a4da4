/** Grid steps along each side of the lattice's smallest triangle, searched for the centre of the bundle. */
const steps = 8
const rowHeight = Math.sqrt(3) / 2

/** Lattice points that may be among the nearest to a centre, in wire diameters: x, y and squared distance. */
interface Lattice {
  readonly x: Float64Array
  readonly y: Float64Array
}

function latticeAround(count: number): Lattice {
  const reach = Math.ceil(0.6 * Math.sqrt(count)) + 3
  const wide = 2 * reach + 1
  const x = new Float64Array(wide * wide)
  const y = new Float64Array(wide * wide)
  for (let row = -reach, at = 0; row <= reach; row++) {
    for (let column = -reach; column <= reach; column++, at++) {
      x[at] = column + (row % 2 === 0 ? 0 : 0.5)
      y[at] = row * rowHeight
    }
  }
  return { x, y }
}

/** Packs equal wires on a triangular lattice without search: the points nearest to the best centre. 1 to 4 % wider than the best known packings, least for large counts. Wires of radius 1: all x, then all y, then the bundle's radius. */
export function packLattice(count: number): Float64Array {
  const { x, y } = latticeAround(count)
  const squares = new Float64Array(x.length)
  let best = Number.POSITIVE_INFINITY
  let [bestX, bestY] = [0, 0]
  for (let along = 0; along <= steps; along++) {
    for (let up = 0; up <= along; up++) {
      const centreX = (0.5 * along) / steps
      const centreY = up / (steps * 4 * rowHeight)
      for (let k = 0; k < x.length; k++) squares[k] = ((x[k] as number) - centreX) ** 2 + ((y[k] as number) - centreY) ** 2
      const farthest = squares.sort()[count - 1] as number
      if (farthest >= best) continue
      best = farthest
      bestX = centreX
      bestY = centreY
    }
  }
  const nearest = Array.from(x.keys(), (k) => [(x[k] as number) - bestX, (y[k] as number) - bestY] as const)
  nearest.sort((one, other) => Math.hypot(...one) - Math.hypot(...other))
  const place = new Float64Array(2 * count + 1)
  for (const [wire, [dx, dy]] of nearest.slice(0, count).entries()) {
    place[wire] = 2 * dx
    place[count + wire] = 2 * dy
  }
  place[2 * count] = 1 + 2 * Math.sqrt(best)
  return place
}
