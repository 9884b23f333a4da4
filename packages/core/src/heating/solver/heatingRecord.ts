import type { HeatModel } from '../heatModel.ts'
import { firstPassing, highest } from './parabola.ts'

/** What a run leaves behind, as rises above the surroundings and times; one entry a wire where a list stands. */
export interface HeatingRecord {
  solidusAtS: number | null
  liquidusAtS: number | null
  wettedAtS: number | null
  resolidifiedAtS: number | null
  /** A tube over the joint: when it recovers, and when its ring has melted. */
  recoveredAtS: number | null
  ringMeltsAtS: number | null
  jointAtToolOffK: number
  jointPeakK: number
  /** Peaks of the edges with the tool on, and after it. */
  readonly edgePeakOnK: Float64Array
  readonly edgePeakOffK: Float64Array
  readonly exposureS: Float64Array
  /** First time above the limit; Infinity where never. */
  readonly limitAtS: Float64Array
  readonly jointK: Float64Array
  readonly edgeK: Float64Array[]
  nextSample: number
  readonly samplesInOrder: readonly number[]
  /** Rise and slope at each edge at the step's start. */
  readonly edgeNowK: Float64Array
  readonly edgeSlopeKPerS: Float64Array
}

export function newRecord(model: HeatModel): HeatingRecord {
  const wires = model.wires.length
  const samples = model.sampleTimesS
  return {
    solidusAtS: null,
    liquidusAtS: null,
    wettedAtS: null,
    resolidifiedAtS: null,
    recoveredAtS: null,
    ringMeltsAtS: null,
    jointAtToolOffK: 0,
    jointPeakK: 0,
    edgePeakOnK: new Float64Array(wires),
    edgePeakOffK: new Float64Array(wires).fill(-Infinity),
    exposureS: new Float64Array(wires),
    limitAtS: new Float64Array(wires).fill(Infinity),
    jointK: new Float64Array(samples.length),
    edgeK: Array.from({ length: wires }, () => new Float64Array(samples.length)),
    nextSample: 0,
    samplesInOrder: samples.map((_, k) => k).sort((a, b) => (samples[a] ?? 0) - (samples[b] ?? 0)),
    edgeNowK: new Float64Array(wires),
    edgeSlopeKPerS: new Float64Array(wires),
  }
}

/** The joint's peak, and the first time it is hot enough to wet throughout. */
export function recordJoint(record: HeatingRecord, model: HeatModel, atS: number, durationS: number, start: number, first: number, last: number): void {
  record.jointPeakK = Math.max(record.jointPeakK, highest(start, first, last))
  if (record.wettedAtS !== null) return
  const x = firstPassing(start, first, last, model.wettedRiseK, true)
  if (x <= 1) record.wettedAtS = atS + x * durationS
}

/** When a tube that has recovered first passes the liquidus of the ring in it. */
export function recordBody(record: HeatingRecord, model: HeatModel, atS: number, durationS: number, start: number, first: number, last: number): void {
  if (record.ringMeltsAtS !== null) return
  const x = firstPassing(start, first, last, model.melt.liquidusRiseK, true)
  if (x <= 1) record.ringMeltsAtS = atS + x * durationS
}
