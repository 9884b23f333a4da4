import type { PackingProblem } from './packingEnergy.ts'

/** Overlap of touching wires that counts as rounding, as a fraction of the thickest one's radius. */
const rounding = 1e-14

function overlapsAny(problem: PackingProblem, order: readonly number[], placed: number, x: number, y: number, radius: number): boolean {
  const { count, radii, place } = problem
  for (let k = 0; k < placed; k++) {
    const other = order[k] ?? 0
    const dx = x - (place[other] ?? 0)
    const dy = y - (place[count + other] ?? 0)
    const apart = radius + (radii[other] ?? 0) - rounding
    if (dx * dx + dy * dy < apart * apart) return true
  }
  return false
}

const sides = [1, -1] as const

/** The best free place for one wire: the corner between two placed wires nearest to the centre; if no corner is free, outside all of them. */
function placeOne(problem: PackingProblem, order: readonly number[], placed: number, reach: number): void {
  const { count, radii, place } = problem
  const wire = order[placed] ?? 0
  const radius = radii[wire] ?? 0
  let best = Number.POSITIVE_INFINITY
  place[wire] = reach + radius
  place[count + wire] = 0
  for (let a = 0; a < placed; a++) {
    const one = order[a] ?? 0
    const x1 = place[one] ?? 0
    const y1 = place[count + one] ?? 0
    const r1 = (radii[one] ?? 0) + radius
    for (let b = 0; b < a; b++) {
      const two = order[b] ?? 0
      const r2 = (radii[two] ?? 0) + radius
      const dx = (place[two] ?? 0) - x1
      const dy = (place[count + two] ?? 0) - y1
      const apart2 = dx * dx + dy * dy
      if (apart2 > (r1 + r2) * (r1 + r2)) continue
      const along = (apart2 + (r1 - r2) * (r1 + r2)) / (2 * apart2)
      const across = Math.sqrt(Math.max(0, (r1 * r1) / apart2 - along * along))
      for (const side of sides) {
        const x = x1 + along * dx - side * across * dy
        const y = y1 + along * dy + side * across * dx
        const out = Math.sqrt(x * x + y * y) + radius
        if (out >= best - rounding || overlapsAny(problem, order, placed, x, y, radius)) continue
        best = out
        place[wire] = x
        place[count + wire] = y
      }
    }
  }
}

/** Places the wires from index `from` on, in the given order, each in the free corner nearest to the centre. Never overlaps; often a good start. */
export function placeInCorners(problem: PackingProblem, order: readonly number[], from: number): void {
  const { count, radii, place } = problem
  let reach = from === 0 ? 0 : (place[2 * count] ?? 0)
  for (let k = from; k < count; k++) {
    const wire = order[k] ?? 0
    if (k === 0) {
      place[wire] = 0
      place[count + wire] = 0
    } else if (k === 1) {
      const first = order[0] ?? 0
      place[wire] = (place[first] ?? 0) + (radii[first] ?? 0) + (radii[wire] ?? 0)
      place[count + wire] = place[count + first] ?? 0
    } else placeOne(problem, order, k, reach)
    reach = Math.max(reach, Math.hypot(place[wire] ?? 0, place[count + wire] ?? 0) + (radii[wire] ?? 0))
  }
  place[2 * count] = reach
}
