import { endSlope, type HeatedJoint, solveStart, stages, startSlope } from './heatedJoint.ts'

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
  const watched = [0, 1]
  joint.wires.forEach(({ mesh, places }, w) => {
    const first = joint.from[w] as number
    const tube = first + 2 * mesh.endsM.length - 1
    // The place at the end of the last element under the stub, then the one at the start of the first under the insulation.
    const edgePlace = (3 * mesh.edgeNode) / 2
    const place = (p: number): number => (places === 0 ? first : tube + Math.min(Math.max(p, 0), places - 1))
    watched.push(first + mesh.edgeNode, place(0), place(edgePlace - 1), place(edgePlace))
  })
  const list = (): Float64Array => new Float64Array(watched.length)
  // Slopes per second.
  return { watched: Int32Array.from(watched), atS: 0, durationS: 0, start: list(), end: list(), startSlope: list(), endSlope: list() }
}

/** Reads values and slopes just after a change from outside; slopes of 0 if they cannot be solved. */
export function readStart(joint: HeatedJoint, course: Course, nuS: number): void {
  const { watched, start, startSlope: slopes } = course
  const solved = solveStart(joint, nuS)
  watched.forEach((i, entry) => {
    start[entry] = (joint.states[0] as Float64Array)[i] as number
    slopes[entry] = solved ? startSlope(joint, i, nuS) : 0
  })
}

/** Reads values and slopes at the end of a solved step. */
export function readEnd(joint: HeatedJoint, course: Course): void {
  const { watched, end, endSlope: slopes, durationS } = course
  for (let entry = 0; entry < watched.length; entry++) {
    const i = watched[entry] as number
    end[entry] = (joint.states[stages] as Float64Array)[i] as number
    slopes[entry] = endSlope(joint, i, durationS)
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
