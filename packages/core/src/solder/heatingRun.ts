import { ConvergenceError } from '../errors/index.ts'
import { limitedBelowK } from './heatExchange.ts'
import { advanceWire, edgeRiseK, type HeatingRecord, newRecord, recordJoint, takeSamples } from './heatingRecord.ts'
import { type HeatingStep, solveStep } from './heatingStep.ts'
import { type HeatedWire, heatedWire, levelTable, meshSettings, oddTable, rebase, shortestTimeS, withoutStream } from './heatingWires.ts'
import type { HeatModel } from './heatModel.ts'
import { changePhase, heatJ, type Lump, lowerBound, moveTo, moving, newLump, upperBound } from './lump.ts'
import { firstPassing } from './parabola.ts'
import type { StepTable } from './stepTable.ts'

/** A run that is under way. */
interface Run {
  readonly step: HeatingStep
  readonly record: HeatingRecord
  wires: HeatedWire[]
  readonly tables: StepTable[]
  readonly toleranceK: number
  level: number
  nowS: number
  toolOn: boolean
  /** Integral of the joint's rise since the modes last changed, and when that was. */
  riseKS: number
  sinceS: number
  readonly atChange: Float64Array[]
  /** Room for the modes at a step's end. */
  readonly next: Float64Array[]
  lossJ: number
  heatInJ: number
}

/** Error allowed within a step at accuracy 1, in K, and how it falls for finer ones: errors of many steps add. */
const stepToleranceK = 0.012
const toleranceGrade = 1.5
/** Steps a run may take before it is given up. */
const mostSteps = 200_000
/** Steps grow at most fourfold and shrink at most sixteenfold; a change of phase restarts with one this many doublings shorter. */
const growLevels = 2
const shrinkLevels = 4
const restartLevels = 4
/** The error of a step grows with its length to this power. */
const errorPower = 3
/** Passings of one instant in a row before the step is taken as it is. */
const mostPassings = 4
const refinements = 6

/** What ends a step early. */
const passed = { none: 0, jointUp: 1, jointDown: 2, bodyUp: 3, bodyDown: 4, freed: 5, limited: 6 } as const
type Passed = (typeof passed)[keyof typeof passed]

/** Which event comes first within the solved step, at `share` of it. */
interface Passing {
  kind: Passed
  share: number
  bound: number
}

function consider(found: Passing, kind: Passed, start: number, first: number, last: number, bound: number, upwards: boolean): void {
  if (!(bound > -Infinity && bound < Infinity)) return
  const x = firstPassing(start, first, last, bound, upwards)
  if (x > 1 || x >= found.share) return
  found.kind = kind
  found.share = x
  found.bound = bound
}

function findPassing(step: HeatingStep, found: Passing): void {
  found.kind = passed.none
  found.share = 2
  const { joint, body } = step
  const at = moving(joint)
  consider(found, passed.jointUp, at, step.jointMoves1, step.jointMoves2, upperBound(joint), true)
  consider(found, passed.jointDown, at, step.jointMoves1, step.jointMoves2, lowerBound(joint), false)
  const limit = limitedBelowK(step.source)
  if (body !== null) {
    const bodyAt = moving(body)
    consider(found, passed.bodyUp, bodyAt, step.bodyMoves1, step.bodyMoves2, upperBound(body), true)
    consider(found, passed.bodyDown, bodyAt, step.bodyMoves1, step.bodyMoves2, lowerBound(body), false)
  }
  const governs = body ?? joint
  const first = body === null ? step.joint1 : step.body1
  const last = body === null ? step.joint2 : step.body2
  if (step.limited) consider(found, passed.freed, governs.riseK, first, last, limit, true)
  else consider(found, passed.limited, governs.riseK, first, last, limit, false)
}

/** Where what passes a bound stands at the end of the solved step, and its slope there for the whole step. */
function ending(step: HeatingStep, kind: Passed): number {
  if (kind === passed.jointUp || kind === passed.jointDown) return step.jointMoves2
  if (kind === passed.bodyUp || kind === passed.bodyDown) return step.bodyMoves2
  return step.body === null ? step.joint2 : step.body2
}

function oddTables(run: Run, durationS: number): void {
  for (let w = 0; w < run.wires.length; w++) run.tables[w] = oddTable(run.wires[w] as HeatedWire, durationS)
}

/** Solves steps of other lengths until the one that ends on the bound is found; returns its length. */
function refine(run: Run, found: Passing, durationS: number): number {
  const { step } = run
  const startValue =
    found.kind === passed.jointUp || found.kind === passed.jointDown
      ? moving(step.joint)
      : found.kind >= passed.freed
        ? (step.body ?? step.joint).riseK
        : moving(step.body ?? step.joint)
  let low = 0
  let lowGap = found.bound - startValue
  let high = durationS
  let highGap = found.bound - ending(step, found.kind)
  let length = found.share * durationS
  const near = 1e-9 * (Math.abs(found.bound) + 1)
  for (let k = 0; ; k++) {
    oddTables(run, length)
    solveStep(step, length, run.tables, newtonShare * run.toleranceK)
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

/** Newton's last change against the step's own tolerance. */
const newtonShare = 1e-3

/** Takes the solved step. */
function take(run: Run, durationS: number): void {
  const { step, record, wires } = run
  const { model, joint, body } = step
  const start = joint.riseK
  const { joint1: first, joint2: last } = step
  takeSamples(record, model, wires, step.values, run.nowS, durationS, start, first, last)
  recordJoint(record, model, run.nowS, durationS, start, first, last)
  for (let w = 0; w < wires.length; w++) {
    advanceWire(
      record,
      w,
      wires[w] as HeatedWire,
      run.tables[w] as StepTable,
      step.values[w] as Float64Array,
      run.next[w] as Float64Array,
      run.toolOn,
      start,
      first,
      last,
    )
  }
  run.riseKS += durationS * (0.75 * first + 0.25 * last)
  run.heatInJ += step.heatInJ
  run.lossJ += step.surfaceJ
  run.nowS += durationS
  moveTo(joint, step.jointMoves2)
  if (body !== null) moveTo(body, step.bodyMoves2)
}

/** What the event changes; the moving value stands on the bound. */
function happen(run: Run, kind: Passed): void {
  const { step, record } = run
  const { joint } = step
  switch (kind) {
    case passed.jointUp: {
      if (joint.phase === 'solid') record.solidusAtS ??= run.nowS
      changePhase(joint, true)
      if (joint.phase === 'liquid') record.liquidusAtS ??= run.nowS
      break
    }
    case passed.jointDown: {
      changePhase(joint, false)
      if (joint.phase === 'solid') record.resolidifiedAtS = run.nowS
      else record.resolidifiedAtS = null
      break
    }
    case passed.bodyUp:
    case passed.bodyDown:
      if (step.body !== null) changePhase(step.body, kind === passed.bodyUp)
      break
    case passed.freed:
      step.limited = false
      break
    case passed.limited:
      step.limited = true
  }
}

/** Runs to a time at which something changes from outside. */
function runTo(run: Run, endS: number): void {
  const { step } = run
  const found: Passing = { kind: passed.none, share: 2, bound: 0 }
  let passings = 0
  for (let count = 0; run.nowS < endS; count++) {
    if (count === mostSteps) throw new ConvergenceError('the heating curve, in s left', endS - run.nowS)
    const left = endS - run.nowS
    let durationS = 2 ** run.level
    const closing = durationS >= left * (1 - 1e-12)
    if (closing) {
      durationS = left
      oddTables(run, durationS)
    } else for (let w = 0; w < run.wires.length; w++) run.tables[w] = levelTable(run.wires[w] as HeatedWire, run.level)
    solveStep(step, durationS, run.tables, newtonShare * run.toleranceK)
    const room = Math.floor(Math.log2(0.9 * Math.max(run.toleranceK / Math.max(step.errorK, Number.MIN_VALUE), 1e-30)) / errorPower)
    const shortest = durationS < 1e-12 * (run.nowS + endS)
    if (room < 0 && !shortest) {
      run.level = Math.floor(Math.log2(durationS)) + Math.max(room, -shrinkLevels)
      if (2 ** run.level >= durationS) run.level--
      continue
    }
    findPassing(step, found)
    if (found.kind !== passed.none && passings < mostPassings) {
      if (found.share * durationS <= 1e-14 * endS) {
        passings++
        happen(run, found.kind)
        continue
      }
      if (found.share < 1) durationS = refine(run, found, durationS)
      take(run, durationS)
      const lump: Lump = found.kind === passed.bodyUp || found.kind === passed.bodyDown ? (step.body ?? step.joint) : step.joint
      if (found.kind < passed.freed) moveTo(lump, found.bound)
      happen(run, found.kind)
      passings = 1
      run.level = Math.min(run.level, Math.floor(Math.log2(durationS))) - restartLevels
      continue
    }
    passings = 0
    take(run, durationS)
    if (closing) run.nowS = endS
    else run.level += Math.min(room, growLevels)
  }
}

/** Heat that left the wires since their modes last changed: the exact integral of what the modes lost. */
function settleLosses(run: Run): void {
  const spanS = run.nowS - run.sinceS
  run.wires.forEach((heated, w) => {
    const { modes, wire } = heated
    const y = run.step.values[w] as Float64Array
    const y0 = run.atChange[w] as Float64Array
    let lost = modes.lossOffsetW * spanS + modes.lossJointWPerK * run.riseKS
    for (let k = 0; k < modes.count; k++) {
      const integral =
        ((modes.coupling[k] as number) * run.riseKS + (modes.drive[k] as number) * spanS - (y[k] as number) + (y0[k] as number)) /
        (modes.ratesPerS[k] as number)
      lost += (modes.loss[k] as number) * integral
    }
    run.lossJ += wire.tails * lost
    y0.set(y)
  })
  run.riseKS = 0
  run.sinceS = run.nowS
}

function link(run: Run): void {
  const { step } = run
  step.modes = run.wires.map((heated) => heated.modes)
  step.jointStoreJPerK = 0
  step.admittanceWPerK = 0
  step.drivenW = 0
  run.wires.forEach(({ modes, wire }) => {
    step.jointStoreJPerK += wire.tails * modes.jointStoreJPerK
    step.admittanceWPerK += wire.tails * modes.admittanceWPerK
    step.drivenW += wire.tails * modes.drivenW
  })
}

/** The edges' rises and slopes at this instant, from the modes. */
function startEdges(run: Run): void {
  const { step, record } = run
  run.wires.forEach((heated, w) => {
    const { modes } = heated
    const y = step.values[w] as Float64Array
    record.edgeNowK[w] = edgeRiseK(heated, y, step.joint.riseK)
    let slope = 0
    for (let k = 0; k < modes.count; k++) {
      slope +=
        (modes.edge[k] as number) *
        ((modes.coupling[k] as number) * step.joint.riseK + (modes.drive[k] as number) - (modes.ratesPerS[k] as number) * (y[k] as number))
    }
    record.edgeSlopeKPerS[w] = slope
  })
}

/** Heats the joint and lets it cool; returns the record and the share of the heat that the balance misses. */
export function heatingRun(model: HeatModel): { readonly record: HeatingRecord; readonly energyResidual: number } {
  const heavy = model.source.kind === 'heavy-iron' ? model.source : null
  const body = heavy === null ? null : newLump(heavy.capacityJPerK, null, heavy.setRiseK)
  const shortestS = shortestTimeS(model, body?.riseK ?? 0)
  const wires = model.wires.map((wire) => heatedWire(wire, meshSettings(wire, model, shortestS)))
  const step: HeatingStep = {
    model,
    source: model.source,
    limited: limitedBelowK(model.source) > (body?.riseK ?? 0),
    joint: newLump(model.capacityJPerK, model.melt, 0),
    body,
    modes: [],
    values: wires.map((heated) => new Float64Array(heated.modes.count)),
    jointStoreJPerK: 0,
    admittanceWPerK: 0,
    drivenW: 0,
    joint1: 0,
    joint2: 0,
    jointMoves1: 0,
    jointMoves2: 0,
    body1: 0,
    body2: 0,
    bodyMoves1: 0,
    bodyMoves2: 0,
    heatInJ: 0,
    surfaceJ: 0,
    errorK: 0,
    matrix: new Float64Array(16),
    right: new Float64Array(4),
    flows1: new Float64Array(8),
    flows2: new Float64Array(8),
  }
  const startLevel = Math.floor(Math.log2(shortestS)) - 8
  const run: Run = {
    step,
    record: newRecord(model),
    wires,
    tables: wires.map((heated) => levelTable(heated, startLevel)),
    toleranceK: stepToleranceK * model.accuracy ** toleranceGrade,
    level: startLevel,
    nowS: 0,
    toolOn: true,
    riseKS: 0,
    sinceS: 0,
    atChange: wires.map((heated) => new Float64Array(heated.modes.count)),
    next: wires.map((heated) => new Float64Array(heated.modes.count)),
    lossJ: 0,
    heatInJ: 0,
  }
  link(run)
  startEdges(run)
  runTo(run, model.toolOffS)
  run.record.jointAtToolOffK = step.joint.riseK
  run.toolOn = false
  step.source = { kind: 'none' }
  step.limited = false
  step.body = null
  if (model.wires.some((wire) => wire.swept !== null)) {
    settleLosses(run)
    run.wires = run.wires.map((heated, w) => {
      if (heated.wire.swept === null) return heated
      const next = withoutStream(heated)
      rebase(step.values[w] as Float64Array, heated.modes, next.modes)
      ;(run.atChange[w] as Float64Array).set(step.values[w] as Float64Array)
      return next
    })
    link(run)
  }
  startEdges(run)
  run.level -= restartLevels
  if (model.observeS > model.toolOffS) runTo(run, model.observeS)
  settleLosses(run)
  let storedJ = heatJ(step.joint) + step.jointStoreJPerK * step.joint.riseK
  run.wires.forEach(({ modes, wire }, w) => {
    for (let k = 0; k < modes.count; k++) storedJ += wire.tails * (modes.store[k] as number) * ((step.values[w] as Float64Array)[k] as number)
  })
  const missed = Math.abs(run.heatInJ - run.lossJ - storedJ)
  const over = run.heatInJ > 0 ? run.heatInJ : Math.max(Math.abs(run.lossJ), Math.abs(storedJ))
  return { record: run.record, energyResidual: over > 0 ? missed / over : 0 }
}
