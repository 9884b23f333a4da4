import { type PackingProblem, packingEnergy } from './packingEnergy.ts'

/** Number of past steps kept by limited-memory BFGS, then the parameters of its line search. */
const memory = 5
const enoughDescent = 1e-4
const mostHalvings = 12
const firstStep = 0.5
const flat = 1e-18

/** Work arrays of the descent, allocated once per problem. */
export interface DescentRoom {
  readonly next: Float64Array
  readonly slope: Float64Array
  readonly nextSlope: Float64Array
  readonly step: Float64Array
  readonly moves: readonly Float64Array[]
  readonly turns: readonly Float64Array[]
  readonly scale: Float64Array
  readonly share: Float64Array
}

/** Allocates the work arrays for this many wires. */
export function descentRoom(count: number): DescentRoom {
  const line = () => new Float64Array(2 * count + 1)
  return {
    next: line(),
    slope: line(),
    nextSlope: line(),
    step: line(),
    moves: Array.from({ length: memory }, line),
    turns: Array.from({ length: memory }, line),
    scale: new Float64Array(memory),
    share: new Float64Array(memory),
  }
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += (a[i] ?? 0) * (b[i] ?? 0)
  return sum
}

function addTimes(to: Float64Array, factor: number, from: Float64Array): void {
  for (let i = 0; i < to.length; i++) to[i] = (to[i] ?? 0) + factor * (from[i] ?? 0)
}

/** Turns the gradient in room.step into the quasi-Newton step; newest is the slot after the last stored pair. */
function shapeStep(room: DescentRoom, kept: number, newest: number): void {
  const { step, moves, turns, scale, share } = room
  for (let m = 0; m < kept; m++) {
    const slot = (newest - 1 - m + 2 * memory) % memory
    share[slot] = (scale[slot] ?? 0) * dot(moves[slot] ?? step, step)
    addTimes(step, -(share[slot] ?? 0), turns[slot] ?? step)
  }
  const last = (newest - 1 + memory) % memory
  const lastTurn = turns[last] ?? step
  const length = kept === 0 ? firstStep : 1 / ((scale[last] ?? 1) * dot(lastTurn, lastTurn))
  for (let i = 0; i < step.length; i++) step[i] = (step[i] ?? 0) * length
  for (let m = kept - 1; m >= 0; m--) {
    const slot = (newest - 1 - m + 2 * memory) % memory
    const back = (scale[slot] ?? 0) * dot(turns[slot] ?? step, step)
    addTimes(step, (share[slot] ?? 0) - back, moves[slot] ?? step)
  }
}

/** Minimises for at most mostSteps, or until the gradient is below steepness; returns the penalised radius reached. */
export function settle(problem: PackingProblem, room: DescentRoom, stiffness: number, mostSteps: number, steepness: number): number {
  const { place } = problem
  const { next, step, moves, turns, scale } = room
  let slope = room.slope
  let nextSlope = room.nextSlope
  let energy = packingEnergy(problem, place, slope, stiffness)
  let kept = 0
  let newest = 0
  for (let steps = 0; steps < mostSteps; steps++) {
    const steep = dot(slope, slope)
    if (steep < steepness * steepness) break
    step.set(slope)
    shapeStep(room, kept, newest)
    const descent = -dot(step, slope)
    let share = 1
    let halvings = 0
    let nextEnergy = energy
    for (; halvings < mostHalvings; halvings++) {
      for (let i = 0; i < place.length; i++) next[i] = (place[i] ?? 0) - share * (step[i] ?? 0)
      nextEnergy = packingEnergy(problem, next, nextSlope, stiffness)
      if (nextEnergy <= energy + enoughDescent * share * descent) break
      share /= 2
    }
    if (halvings === mostHalvings) break
    let bend = 0
    for (let i = 0; i < place.length; i++) bend += ((next[i] ?? 0) - (place[i] ?? 0)) * ((nextSlope[i] ?? 0) - (slope[i] ?? 0))
    // A step without curvature is not stored.
    if (bend > flat) {
      const move = moves[newest] ?? step
      const turn = turns[newest] ?? step
      for (let i = 0; i < place.length; i++) {
        move[i] = (next[i] ?? 0) - (place[i] ?? 0)
        turn[i] = (nextSlope[i] ?? 0) - (slope[i] ?? 0)
      }
      scale[newest] = 1 / bend
      newest = (newest + 1) % memory
      if (kept < memory) kept++
    }
    place.set(next)
    const swap = slope
    slope = nextSlope
    nextSlope = swap
    energy = nextEnergy
  }
  return energy * stiffness
}
