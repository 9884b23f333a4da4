import type { HeatModel, HeatSource } from '../heatModel.ts'
import { limitedBelowK } from './heatExchange.ts'
import { energyResidual, linkWires, settleLosses, startEdges } from './heatingBalance.ts'
import { restartLevels, runTo } from './heatingLoop.ts'
import { type HeatingRecord, newRecord } from './heatingRecord.ts'
import type { HeatingState } from './heatingState.ts'
import { heatedWire, meshSettings, rebase, shortestTimeS, withoutStream } from './heatingWires.ts'
import { type Lump, newLump } from './lump.ts'
import { newStep } from './stepState.ts'

/** Error allowed within a step at accuracy 1, in K, and how it falls for finer ones: errors of many steps add. */
const stepToleranceK = 0.008
const toleranceGrade = 1.5
/** The first step is this many doublings shorter than the shortest time of interest. */
const startLevels = 8

/** The tool's tip where it stores heat, hot at the start; a tube with its ring, cold; else none. */
function firstBody(model: HeatModel): Lump | null {
  const { source } = model
  if (source.kind === 'heavy-iron') return newLump(source.capacityJPerK, null, source.setRiseK)
  if (source.kind === 'tube') return newLump(source.capacityJPerK, model.melt, 0)
  return null
}

/** What stays when the tool is gone. */
function afterTool(source: HeatSource): HeatSource {
  return source.kind === 'tube' ? { ...source, film: null } : { kind: 'none' }
}

function start(model: HeatModel): HeatingState {
  const body = firstBody(model)
  const shortestS = shortestTimeS(model)
  const wires = model.wires.map((wire) => heatedWire(wire, meshSettings(wire, model, shortestS)))
  const level = Math.floor(Math.log2(shortestS)) - startLevels
  // Inside a tube the ring's latent heat lies in the tube until it recovers.
  const melt = model.source.kind === 'tube' ? { ...model.melt, latentJ: 0 } : model.melt
  const room = (): Float64Array[] => wires.map((heated) => new Float64Array(heated.modes.count))
  return {
    step: newStep(model, newLump(model.capacityJPerK, melt, 0), body, limitedBelowK(model.source) > (body?.riseK ?? 0), room()),
    record: newRecord(model),
    wires,
    edges: [],
    tables: [],
    toleranceK: stepToleranceK * model.accuracy ** toleranceGrade,
    level,
    nowS: 0,
    toolOn: true,
    riseKS: 0,
    sinceS: 0,
    atChange: room(),
    next: room(),
    lossJ: 0,
    heatInJ: 0,
  }
}

/** The tool goes: its mass with it, and the stream from the wires. */
function removeTool(run: HeatingState): void {
  const { step, record } = run
  record.jointAtToolOffK = step.joint.riseK
  run.toolOn = false
  step.source = afterTool(step.source)
  step.limited = false
  if (step.source.kind === 'none') step.body = null
  if (run.wires.some((heated) => heated.wire.swept !== null)) {
    settleLosses(run)
    run.wires = run.wires.map((heated, w) => {
      if (heated.wire.swept === null) return heated
      const next = withoutStream(heated)
      rebase(step.values[w] as Float64Array, heated.modes, next.modes)
      run.atChange[w]?.set(step.values[w] as Float64Array)
      return next
    })
    linkWires(run)
  }
  startEdges(run)
  run.level -= restartLevels
}

/** Heats the joint and lets it cool; returns the record and the share of the heat that the balance misses. */
export function heatingRun(model: HeatModel): { readonly record: HeatingRecord; readonly energyResidual: number } {
  const run = start(model)
  linkWires(run)
  startEdges(run)
  runTo(run, model.toolOffS)
  removeTool(run)
  runTo(run, model.observeS)
  settleLosses(run)
  return { record: run.record, energyResidual: energyResidual(run) }
}
