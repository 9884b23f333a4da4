import type { HeatingRecord } from './heatingRecord.ts'
import type { HeatedWire } from './heatingWires.ts'
import type { HeatModel } from './heatModel.ts'
import { edgeHighest, edgeTimeAbove, turnsWithin } from './hermite.ts'
import { curvature, parabolaAt, startSlope } from './parabola.ts'
import { rowWithin } from './rowWithin.ts'
import { A, type StepTable } from './stepTable.ts'

/** Rise at a wire's edge from its modes. */
export function edgeRiseK(heated: HeatedWire, y: Float64Array, jointRiseK: number): number {
  const { count, edge, edgeJoint, edgeOffsetK } = heated.modes
  let sum = edgeOffsetK + edgeJoint * jointRiseK
  for (let k = 0; k < count; k++) sum += (edge[k] as number) * (y[k] as number)
  return sum
}

const pair = /* @__PURE__ */ new Float64Array(2)

/** Takes the samples that lie in this step, before the modes move on. */
export function takeSamples(
  record: HeatingRecord,
  model: HeatModel,
  wires: readonly HeatedWire[],
  values: readonly Float64Array[],
  atS: number,
  durationS: number,
  start: number,
  first: number,
  last: number,
): void {
  while (record.nextSample < record.samplesInOrder.length) {
    const sample = record.samplesInOrder[record.nextSample] as number
    const x = ((model.sampleTimesS[sample] as number) - atS) / durationS
    if (x > 1) return
    const rise = parabolaAt(start, first, last, Math.max(x, 0))
    record.jointK[sample] = rise
    for (let w = 0; w < wires.length; w++) {
      const { modes } = wires[w] as HeatedWire
      const list = record.edgeK[w] as Float64Array
      rowWithin(modes, modes.edge, values[w] as Float64Array, durationS, Math.max(x, 0), start, first, last, pair)
      list[sample] = modes.edgeOffsetK + modes.edgeJoint * rise + (pair[0] as number)
    }
    record.nextSample++
  }
}

/** Parts into which a step is cut, each with its own cubic, where the edge turns or crosses its limit. */
const edgeParts = 4

/** Adds an edge's peak and exposure over a step, before its modes move on: by the cubic of its ends, or in parts where something happens. */
function recordEdge(
  record: HeatingRecord,
  w: number,
  heated: HeatedWire,
  y: Float64Array,
  durationS: number,
  peaks: Float64Array,
  start: number,
  first: number,
  last: number,
  after: number,
  slopeAfter: number,
): void {
  const { modes, wire } = heated
  const limit = wire.limitRiseK
  const b = startSlope(start, first, last)
  const c = curvature(start, first, last)
  let before = record.edgeNowK[w] as number
  let slopeBefore = (record.edgeSlopeKPerS[w] as number) * durationS + modes.edgeJoint * b
  if (before <= limit === after <= limit && !turnsWithin(before, slopeBefore, after, slopeAfter)) {
    peaks[w] = Math.max(peaks[w] as number, before, after)
    if (after > limit) record.exposureS[w] = (record.exposureS[w] as number) + durationS
    return
  }
  for (let part = 1; part <= edgeParts; part++) {
    const x = part / edgeParts
    let next = after
    let slopeNext = slopeAfter
    if (part < edgeParts) {
      rowWithin(modes, modes.edge, y, durationS, x, start, first, last, pair)
      next = modes.edgeOffsetK + modes.edgeJoint * parabolaAt(start, first, last, x) + (pair[0] as number)
      slopeNext = (pair[1] as number) + modes.edgeJoint * (b + 2 * c * x)
    }
    const sa = slopeBefore / edgeParts
    const sb = slopeNext / edgeParts
    peaks[w] = Math.max(peaks[w] as number, edgeHighest(before, sa, next, sb))
    record.exposureS[w] = (record.exposureS[w] as number) + (durationS / edgeParts) * edgeTimeAbove(before, sa, next, sb, limit)
    before = next
    slopeBefore = slopeNext
  }
}

/** Moves a wire's modes to the end of the step, and its edge's rise, peak and exposure with them. */
export function advanceWire(
  record: HeatingRecord,
  w: number,
  heated: HeatedWire,
  table: StepTable,
  y: Float64Array,
  next: Float64Array,
  nowS: number,
  toolOn: boolean,
  start: number,
  first: number,
  last: number,
): void {
  const { count, edge, edgeJoint, edgeOffsetK, ratesPerS, coupling, drive } = heated.modes
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
  const exposedBefore = record.exposureS[w] as number
  recordEdge(record, w, heated, y, durationS, toolOn ? record.edgePeakOnK : record.edgePeakOffK, start, first, last, rise, slopeAfter)
  y.set(next)
  if (exposedBefore === 0 && (record.exposureS[w] as number) > 0) {
    // It is above its limit to the end of the step, or but for a moment within it.
    record.limitAtS[w] = nowS + Math.max(0, durationS - (record.exposureS[w] as number))
  }
  record.edgeNowK[w] = rise
  record.edgeSlopeKPerS[w] = slope
}
