import { ConvergenceError } from '../../errors/index.ts'
import type { EdgeStep } from './edgeStep.ts'
import { advanceWire, setEdges, takeSamples } from './heatingEdges.ts'
import { beginning, ending, findPassing, happen, type Passing } from './heatingEvents.ts'
import { recordBody, recordJoint } from './heatingRecord.ts'
import type { HeatingState } from './heatingState.ts'
import { solveStep } from './heatingStep.ts'
import { type HeatedWire, levelTable, oddTable } from './heatingWires.ts'
import { moveTo } from './lump.ts'
import type { StepTable } from './stepTable.ts'

/** Steps a run may take before it is given up. */
const mostSteps = 200_000
/** In doublings: steps grow at most fourfold, and shrink to at least a thirty-second. */
const growLevels = 2
const shrinkLevels = 5
/** After a change of phase the next step is this many doublings shorter: the wires answer a kink like the root of the time since. */
export const restartLevels = 4
/** The error of a step grows with its length to this power, and is aimed at somewhat less than allowed. */
const errorPower = 3
const aim = 0.9
/** Events at one instant before the step is taken as it is. */
const mostPassings = 4
const refinements = 6
/** A remainder shorter than this share of the clock is rounding. */
const instantShare = 1e-14

function oddTables(run: HeatingState, durationS: number): void {
  for (let w = 0; w < run.wires.length; w++) run.tables[w] = oddTable(run.wires[w] as HeatedWire, durationS)
}

function levelTables(run: HeatingState): void {
  for (let w = 0; w < run.wires.length; w++) run.tables[w] = levelTable(run.wires[w] as HeatedWire, run.level)
}

/** Solves steps of other lengths until the one that ends on the bound is found; returns its length. */
function refine(run: HeatingState, found: Passing, durationS: number): number {
  const { step } = run
  let low = 0
  let lowGap = found.bound - beginning(step, found.kind)
  let high = durationS
  let highGap = found.bound - ending(step, found.kind)
  let length = found.share * durationS
  const near = 1e-9 * (Math.abs(found.bound) + 1)
  for (let k = 0; ; k++) {
    oddTables(run, length)
    solveStep(step, length, run.tables)
    const gap = found.bound - ending(step, found.kind)
    if (Math.abs(gap) <= near || k === refinements) return length
    if (gap > 0 === lowGap > 0) {
      low = length
      lowGap = gap
    } else {
      high = length
      highGap = gap
    }
    const next = lowGap === highGap ? (low + high) / 2 : low + ((high - low) * lowGap) / (lowGap - highGap)
    length = next > low && next < high ? next : (low + high) / 2
  }
}

/** Takes the solved step. */
function take(run: HeatingState, durationS: number): void {
  const { step, record } = run
  const { model, joint, body } = step
  const start = joint.riseK
  const { joint1: first, joint2: last } = step
  setEdges(run.edges, durationS, start, first, last)
  takeSamples(record, model, run.edges, run.nowS, durationS, start, first, last)
  recordJoint(record, model, run.nowS, durationS, start, first, last)
  for (let w = 0; w < run.edges.length; w++) {
    advanceWire(record, w, run.edges[w] as EdgeStep, run.tables[w] as StepTable, run.next[w] as Float64Array, run.nowS, run.toolOn)
  }
  // Radau's weights integrate the parabola exactly.
  run.riseKS += durationS * (0.75 * first + 0.25 * last)
  run.heatInJ += step.heatInJ
  run.lossJ += step.surfaceJ
  if (body !== null) {
    if (step.source.kind === 'tube' && step.source.gripped) recordBody(record, model, run.nowS, durationS, body.riseK, step.body1, step.body2)
    moveTo(body, step.bodyMoves2)
  }
  run.nowS += durationS
  moveTo(joint, step.jointMoves2)
}

/** By how many doublings the next step may be longer, or this one must be shorter. */
function levelsOfRoom(run: HeatingState): number {
  const room = run.toleranceK / Math.max(run.step.errorK, Number.MIN_VALUE)
  return Math.floor(Math.log2(aim * Math.min(Math.max(room, Number.MIN_VALUE), Number.MAX_VALUE)) / errorPower)
}

/** Runs to a time at which something changes from outside. */
export function runTo(run: HeatingState, endS: number): void {
  const { step, record } = run
  const found: Passing = { kind: 'none', share: 2, bound: 0 }
  let passings = 0
  for (let count = 0; run.nowS < endS; count++) {
    if (count === mostSteps) throw new ConvergenceError('the heating curve, in s left', endS - run.nowS)
    const left = endS - run.nowS
    let durationS = 2 ** run.level
    const closing = durationS >= left * (1 - 1e-12)
    if (closing) {
      durationS = left
      oddTables(run, durationS)
    } else levelTables(run)
    solveStep(step, durationS, run.tables)
    const room = levelsOfRoom(run)
    if (room < 0 && durationS > 1e-12 * endS) {
      run.level = Math.ceil(Math.log2(durationS)) + Math.max(room, -shrinkLevels)
      continue
    }
    findPassing(step, found)
    if (found.kind === 'none' || passings === mostPassings) {
      passings = 0
      take(run, durationS)
      if (closing) run.nowS = endS
      else run.level += Math.min(room, growLevels)
      continue
    }
    passings++
    // Already on the bound and about to pass it: the event takes no time.
    if (found.share * durationS > instantShare * endS) {
      if (found.share < 1) durationS = refine(run, found, durationS)
      take(run, durationS)
      passings = 1
      run.level = Math.min(run.level, Math.floor(Math.log2(durationS))) - restartLevels
    }
    happen(step, record, found, run.nowS)
  }
}
