import type { HeatModel } from '../heatModel.ts'
import { type EdgeStep, edgeWithin, placeOf, shareAbove } from './edgeStep.ts'
import type { HeatingRecord } from './heatingRecord.ts'
import { curvature, parabolaAt, startSlope } from './parabola.ts'
import { A, type StepTable } from './stepTable.ts'
import type { WireModes } from './wireModes.ts'

/** Rise at a wire's edge from its modes. */
export function edgeRiseK(modes: WireModes, y: Float64Array, jointRiseK: number): number {
  const { count, edge, edgeJoint, edgeOffsetK } = modes
  let sum = edgeOffsetK + edgeJoint * jointRiseK
  for (let k = 0; k < count; k++) sum += (edge[k] as number) * (y[k] as number)
  return sum
}

/** Readies the wires' edges for a step in which the joint's rise is the parabola through start, first and last. */
export function setEdges(edges: readonly EdgeStep[], durationS: number, start: number, first: number, last: number): void {
  for (let w = 0; w < edges.length; w++) {
    const step = edges[w] as EdgeStep
    step.durationS = durationS
    step.start = start
    step.first = first
    step.last = last
  }
}

/** Takes the samples that lie in this step, before the modes move on. */
export function takeSamples(
  record: HeatingRecord,
  model: HeatModel,
  edges: readonly EdgeStep[],
  atS: number,
  durationS: number,
  start: number,
  first: number,
  last: number,
): void {
  while (record.nextSample < record.samplesInOrder.length) {
    const sample = record.samplesInOrder[record.nextSample] as number
    const x = Math.max(0, ((model.sampleTimesS[sample] as number) - atS) / durationS)
    if (x > 1) return
    record.jointK[sample] = parabolaAt(start, first, last, x)
    for (let w = 0; w < edges.length; w++) {
      const step = edges[w] as EdgeStep
      edgeWithin(step, x)
      const list = record.edgeK[w] as Float64Array
      list[sample] = step.found[0] as number
    }
    record.nextSample++
  }
}

/** Adds an edge's peak and exposure over a step, before its modes move on. */
function recordEdge(record: HeatingRecord, w: number, nowS: number, step: EdgeStep, peaks: Float64Array, after: number, slopeAfter: number): void {
  const { limitRiseK: limit, durationS } = step
  const before = record.edgeNowK[w] as number
  const slopeBefore = (record.edgeSlopeKPerS[w] as number) * durationS + step.modes.edgeJoint * startSlope(step.start, step.first, step.last)
  // It turns once at most: steps are short where the joint is lively, and the wire smooths what comes after.
  const crown = slopeBefore > 0 && slopeAfter < 0
  const dip = slopeBefore < 0 && slopeAfter > 0 && before > limit && after > limit
  let x = 1
  let turn = after
  if (crown || dip) {
    x = placeOf(step, 1, 0, 0, slopeBefore, 1, slopeAfter)
    edgeWithin(step, x)
    turn = step.found[0] as number
  }
  const untilTurn = shareAbove(step, 0, before, x, turn)
  const afterTurn = x < 1 ? shareAbove(step, x, turn, 1, after) : 0
  peaks[w] = Math.max(peaks[w] as number, before, turn, after)
  if (untilTurn + afterTurn === 0) return
  record.exposureS[w] = (record.exposureS[w] as number) + durationS * (untilTurn + afterTurn)
  if (record.limitAtS[w] === Infinity) record.limitAtS[w] = nowS + durationS * (before > limit ? 0 : x - untilTurn)
}

/** Moves a wire's modes to the end of the step, and its edge's rise, peak and exposure with them. */
export function advanceWire(record: HeatingRecord, w: number, step: EdgeStep, table: StepTable, next: Float64Array, nowS: number, toolOn: boolean): void {
  const { modes, values: y, start, first, last } = step
  const { count, edge, edgeJoint, edgeOffsetK, ratesPerS, coupling, drive } = modes
  const { answers, durationS } = table
  let rise = edgeOffsetK + edgeJoint * last
  let slope = 0
  for (let k = 0, at = 0; k < count; k++, at += A.width) {
    const value =
      (answers[at + A.decay] as number) * (y[k] as number) +
      (answers[at + A.toStart] as number) * start +
      (answers[at + A.toFirst] as number) * first +
      (answers[at + A.toLast] as number) * last +
      (answers[at + A.toDrive] as number)
    next[k] = value
    const e = edge[k] as number
    rise += e * value
    slope += e * ((coupling[k] as number) * last + (drive[k] as number) - (ratesPerS[k] as number) * value)
  }
  // With the edge on the joint its slope comes from the parabola alone.
  const slopeAfter = slope * durationS + edgeJoint * (startSlope(start, first, last) + 2 * curvature(start, first, last))
  recordEdge(record, w, nowS, step, toolOn ? record.edgePeakOnK : record.edgePeakOffK, rise, slopeAfter)
  y.set(next)
  record.edgeNowK[w] = rise
  record.edgeSlopeKPerS[w] = slope
}
