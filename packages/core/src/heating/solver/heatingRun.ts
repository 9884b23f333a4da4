import type { HeatModel, HeatState } from '../heatModel.ts'
import { type Course, firstPassing, newCourse, readEnd, readStart, straighten } from './course.ts'
import { acceptStep, changeState, type HeatedJoint, heatedJoint, shortestTimeS, solveStep, stepErrorK } from './heatedJoint.ts'
import { storedJ } from './heatedWire.ts'
import { heatOf, riseOf } from './lumps.ts'
import { type HeatingRecord, newRecord, recordStep } from './record.ts'

/** Error tolerance of a step at accuracy 1; the estimate is of third order, so the true error is several times smaller. */
const toleranceAtOneK = 0.1
/** A step's length may change by these factors, a little less than the error asks for. */
const safety = 0.85
const mostGrowth = 6
const leastGrowth = 0.1
/** First step after a discontinuity, as a fraction of the current step. */
const afterChange = 1 / 8
/** A kink inside the step, farther than this fraction from both ends, shortens the step to end there. */
const bendMargin = 0.005
/** A step that ends within this fraction of the tube's recovery ends on it. */
const nearRecovery = 1e-7
/** Factor on the step after a stage failed to converge. */
const unsettledShare = 1 / 4
/** A step below this fraction of the run is accepted whatever its error. */
const leastShare = 1e-13

interface Run {
  readonly joint: HeatedJoint
  readonly record: HeatingRecord
  readonly course: Course
  readonly toleranceK: number
  nowS: number
  /** Planned length of the next step. */
  wantedS: number
  heatInJ: number
  lossJ: number
}

/** Finds values and slopes at the start, or just after a change from outside. */
const restart = ({ joint, course, wantedS }: Run): void => readStart(joint, course, 1e-6 * wantedS)

/** The tool leaves, or the tube shrinks: go on with shorter steps. */
function change(run: Run, state: HeatState): void {
  changeState(run.joint, state)
  run.wantedS *= afterChange
  restart(run)
}

/** Heat of the joint (0) or tip (1) at which the heater leaves full power; Infinity if it never does. */
function limitedBelowJ({ model: { source }, state, curve, bodyJPerK }: HeatedJoint, entry: 0 | 1): number {
  if (!state.toolOn) return Infinity
  if (entry === 0 && source.kind === 'iron') return heatOf(curve, Math.max(source.setRiseK - source.maximumW * source.resistanceKPerW, -1))
  if (entry === 1 && source.kind === 'heavy-iron') return bodyJPerK * (source.setRiseK - source.maximumW * source.tipResistanceKPerW)
  return Infinity
}

/** Fraction of the step at which a heat flow has a kink: the solder begins or ends to melt, or the heater leaves full power; 1 if none. */
function bendInside({ joint, course }: Run): number {
  let first = 1
  const look = (entry: 0 | 1, heatJ: number): void => {
    const x = Math.min(firstPassing(course, entry, heatJ, true), firstPassing(course, entry, heatJ, false))
    if (x > bendMargin && x < 1 - bendMargin && x < first) first = x
  }
  look(0, joint.curve.solidusJ)
  look(0, joint.curve.liquidusJ)
  look(0, limitedBelowJ(joint, 0))
  look(1, limitedBelowJ(joint, 1))
  return first
}

/** Fraction of the step at which the tube recovers; 1 also if just beyond the end, Infinity if it does not. */
function recoveryInside({ joint, course }: Run): number {
  const { source } = joint.model
  if (source.kind !== 'tube' || joint.state.recovered) return Infinity
  const heatJ = joint.bodyJPerK * source.recoveryRiseK
  const x = firstPassing(course, 1, heatJ, true)
  if (x < Infinity) return x > 1 - nearRecovery ? 1 : x
  return (course.end[1] as number) >= heatJ * (1 - nearRecovery) ? 1 : Infinity
}

/** Takes one step, at most to endS. */
function takeStep(run: Run, endS: number): void {
  const { joint, course, toleranceK } = run
  let durationS = Math.min(run.wantedS, endS - run.nowS)
  let cut = durationS < run.wantedS
  for (;;) {
    const forced = durationS <= leastShare * joint.model.observeS
    const settled = solveStep(joint, durationS, toleranceK)
    const error = settled ? stepErrorK(joint) : Infinity
    const growth = settled ? Math.min(mostGrowth, Math.max(leastGrowth, safety * (error / toleranceK) ** (-1 / 4))) : unsettledShare
    course.atS = run.nowS
    course.durationS = durationS
    readEnd(joint, course)
    if (forced) straighten(course)
    const recoversAt = settled ? recoveryInside(run) : Infinity
    const endsAt = settled ? Math.min(recoversAt, bendInside(run)) : 1
    if (!forced && endsAt < 1) {
      // A kink inside also spoils the error estimate, so the step is first shortened to end on it.
      durationS *= endsAt
      cut = true
    } else if (!forced && error > toleranceK) {
      durationS *= growth
      run.wantedS = durationS
      cut = false
    } else {
      finish(run, durationS, cut ? Math.max(run.wantedS, growth * durationS) : growth * durationS, endS, recoversAt <= 1)
      return
    }
  }
}

/** Records the step and makes its end the start of the next. */
function finish(run: Run, durationS: number, wantedS: number, endS: number, recovers: boolean): void {
  const { joint, course, record } = run
  recordStep(joint, record, course)
  run.heatInJ += joint.heatInJ
  run.lossJ += joint.lossJ
  acceptStep(joint)
  const nextS = run.nowS + durationS
  run.nowS = endS - nextS <= leastShare * endS ? endS : nextS
  run.wantedS = wantedS
  course.start.set(course.end)
  course.startSlope.set(course.endSlope)
  if (recovers) {
    record.recoveredAtS = run.nowS
    change(run, { ...joint.state, recovered: true })
  }
}

function removeTool(run: Run): void {
  const { joint, record } = run
  record.jointAtToolOffK = riseOf(joint.curve, (joint.states[0] as Float64Array)[0] as number)
  change(run, { ...joint.state, toolOn: false })
}

/** Heat stored in lumps and wires; a tip's heat belongs to the tool. */
function heatHeldJ({ joint }: Run): number {
  const [jointJ = 0, bodyJ = 0] = joint.states[0] as Float64Array
  let sum = jointJ + (joint.model.source.kind === 'tube' ? bodyJ : 0)
  for (const wire of joint.wires) sum += wire.wire.tails * storedJ(wire)
  return sum
}

/** Heats the joint and lets it cool, or ends the run once it is wetted under the tool; returns the record and the relative residual of the energy balance. */
export function heatingRun(model: HeatModel, untilWetted = false): { readonly record: HeatingRecord; readonly energyResidual: number } {
  const shortestS = shortestTimeS(model)
  const joint = heatedJoint(model, shortestS)
  const record = newRecord(model)
  const toleranceK = toleranceAtOneK * model.accuracy ** 1.1
  const run: Run = { joint, record, course: newCourse(joint), toleranceK, nowS: 0, wantedS: shortestS / 32, heatInJ: 0, lossJ: 0 }
  const heldJ = heatHeldJ(run)
  restart(run)
  const ended = (): boolean => untilWetted && record.wettedAtS !== null
  while (run.nowS < model.toolOffS && !ended()) takeStep(run, model.toolOffS)
  if (!ended()) {
    removeTool(run)
    while (run.nowS < model.observeS) takeStep(run, model.observeS)
  }
  const gainedJ = heatHeldJ(run) - heldJ
  const over = run.heatInJ > 0 ? run.heatInJ : Math.max(Math.abs(run.heatInJ), Math.abs(run.lossJ), Math.abs(gainedJ))
  return { record, energyResidual: over > 0 ? Math.abs(run.heatInJ - run.lossJ - gainedJ) / over : 0 }
}
