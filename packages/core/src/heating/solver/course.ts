import { gamma, type HeatedJoint, stages } from './heatedJoint.ts'

/**
 * Dense output of a step: for each entry a cubic Hermite through both ends, or a straight line if the step was accepted in spite of its error.
 * Entries: heat of the joint and of tip or tube; then of each wire the edge's rise, and the tube's at three places: next to the lap, at the stub's end
 * and over the insulation's edge.
 */
export type Course = ReturnType<typeof newCourse>

const entriesAWire = 4
export const edgeEntry = (w: number): number => 2 + entriesAWire * w
/** The tube over a wire: 0 next to the lap, 1 at the stub's end, 2 over the insulation's edge. */
export const tubeEntry = (w: number, k: 0 | 1 | 2): number => edgeEntry(w) + 1 + k

export function newCourse(joint: HeatedJoint) {
  const list = (): Float64Array => new Float64Array(edgeEntry(joint.wires.length))
  // Slopes per second.
  return { atS: 0, durationS: 0, start: list(), end: list(), startSlope: list(), endSlope: list() }
}

const tubePlaces = [0, 1, 2] as const

/** Reads the entries at the start (stage 0) or end (last stage) of a step; for the tube also the slopes. */
export function readEntries(joint: HeatedJoint, stage: number, values: Float64Array, slopes: Float64Array): void {
  const lumps = joint.lumps[stage] as Float64Array
  values[0] = lumps[0] as number
  values[1] = lumps[1] as number
  for (let w = 0; w < joint.wires.length; w++) {
    const wire = joint.wires[w]
    if (wire === undefined) return
    const { edgeNode } = wire.mesh
    const u = wire.u[stage] as Float64Array
    values[edgeEntry(w)] = u[edgeNode] as number
    // The last place of the element that ends at the edge, and the first of the one that begins there; without stub, or under a tube that ends there, none.
    const edgePlace = (3 * edgeNode) / 2
    for (const k of tubePlaces) {
      const place = k === 0 ? 0 : edgePlace + k - 2
      if (place < 0 || place >= wire.places) continue
      const entry = tubeEntry(w, k)
      const tube = (wire.tubeU[stage] as Float64Array)[place] as number
      const copper = u[k === 0 ? 0 : edgeNode] as number
      values[entry] = tube
      const taken = (wire.tubeDrive[place] as number) - (wire.tubeOut[place] as number) * tube + (wire.tubeIn[place] as number) * (copper - tube)
      slopes[entry] = taken / (wire.tubeStore[place] as number)
    }
  }
}

/** Slopes of lumps and edges at the end of a solved step: those of its last stage. */
export function endSlopes(joint: HeatedJoint, durationS: number, slopes: Float64Array): void {
  const nuS = gamma * durationS
  const lumps = joint.lumps[stages] as Float64Array
  for (let k = 0; k < 2; k++) slopes[k] = ((lumps[k] as number) - (joint.lastZ[k] as number)) / nuS
  for (let w = 0; w < joint.wires.length; w++) {
    const wire = joint.wires[w]
    if (wire === undefined) return
    slopes[edgeEntry(w)] = (((wire.u[stages] as Float64Array)[wire.mesh.edgeNode] as number) - (joint.edgeLastZ[w] as number)) / nuS
  }
}

/** Replaces every cubic by a straight line. */
export function straighten({ start, end, startSlope, endSlope, durationS }: Course): void {
  for (let k = 0; k < start.length; k++) {
    const slope = ((end[k] as number) - (start[k] as number)) / durationS
    startSlope[k] = slope
    endSlope[k] = slope
  }
}

/** Value of an entry at the fraction x of the step. */
export function courseAt({ start, end, startSlope, endSlope, durationS }: Course, entry: number, x: number): number {
  const from = start[entry] as number
  const to = end[entry] as number
  if (x >= 1) return to
  const change = to - from
  const a = (startSlope[entry] as number) * durationS - change
  const b = change - (endSlope[entry] as number) * durationS
  return from + x * (change + (1 - x) * (a * (1 - x) + b * x))
}

/** Pieces of a step; peaks, limits and crossings are checked at their ends. */
export const pieces = 16

/** Fraction of the step at which an entry crosses a value between x0 and x1: secant, then one Newton step. */
function passingBetween(course: Course, entry: number, value: number, x0: number, x1: number): number {
  const low = courseAt(course, entry, x0)
  const x = x0 + ((value - low) / (courseAt(course, entry, x1) - low)) * (x1 - x0)
  const aside = (x1 - x0) * 1e-3
  const slope = (courseAt(course, entry, Math.min(x + aside, 1)) - courseAt(course, entry, x - aside)) / (Math.min(x + aside, 1) - x + aside)
  const next = x - (courseAt(course, entry, x) - value) / slope
  return next >= x0 && next <= x1 ? next : x
}

/** False if an entry certainly does not cross the value in the step: a cubic stays within the hull of its control points. */
function mayPass({ start, end, startSlope, endSlope, durationS }: Course, entry: number, value: number): boolean {
  const a = start[entry] as number
  const d = end[entry] as number
  const b = a + ((startSlope[entry] as number) * durationS) / 3
  const c = d - ((endSlope[entry] as number) * durationS) / 3
  return Math.min(a, b, c, d) <= value && Math.max(a, b, c, d) >= value
}

/** Fraction of the step at which an entry first crosses a value upwards (or downwards); Infinity if it does not. */
export function firstPassing(course: Course, entry: number, value: number, upwards: boolean): number {
  if (!mayPass(course, entry, value)) return Infinity
  let before = course.start[entry] as number
  for (let k = 1; k <= pieces; k++) {
    const now = courseAt(course, entry, k / pieces)
    if (upwards ? before < value && now >= value : before >= value && now < value) return passingBetween(course, entry, value, (k - 1) / pieces, k / pieces)
    before = now
  }
  return Infinity
}

/** Fraction of a piece above a limit, by linear interpolation. */
export function shareAbove(before: number, now: number, limit: number): number {
  if (before > limit) return now > limit ? 1 : (before - limit) / (before - now)
  return now <= limit ? 0 : (now - limit) / (now - before)
}

/** Fraction of a piece at which a limit is first exceeded, by linear interpolation; Infinity if it is not. */
export function passedAt(before: number, now: number, limit: number): number {
  if (before > limit) return 0
  return now <= limit ? Infinity : (limit - before) / (now - before)
}
