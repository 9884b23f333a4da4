import type { HeatModel } from '../heatModel.ts'
import { type Course, courseAt, edgeEntry, firstPassing, passedAt, pieces, shareAbove, tubeEntry } from './course.ts'
import { bodyRiseOf, type HeatedJoint } from './heatedJoint.ts'
import { exchange, heatOf, riseOf, X } from './lumps.ts'
import { layerOf } from './wireMesh.ts'

/** Results of a run: rises above the surroundings, and times; lists have one entry a wire. */
export type HeatingRecord = ReturnType<typeof newRecord>

export function newRecord(model: HeatModel) {
  const wires = model.wires.length
  const never = null as number | null
  return {
    solidusAtS: never,
    liquidusAtS: never,
    wettedAtS: never,
    resolidifiedAtS: never,
    recoveredAtS: never,
    ringMeltsAtS: never,
    tubeShortLimitAtS: never,
    tubeOuterPeakK: 0,
    tubeAboveContinuousS: 0,
    tubeAboveShortS: 0,
    jointAtToolOffK: 0,
    jointPeakK: 0,
    edgePeakK: new Float64Array(wires),
    outerPeakK: new Float64Array(wires),
    exposureS: new Float64Array(wires),
    /** First time above the limit; Infinity if never. */
    limitAtS: new Float64Array(wires).fill(Infinity),
    jointK: new Float64Array(model.sampleTimesS.length),
    edgeK: model.wires.map(() => new Float64Array(model.sampleTimesS.length)),
  }
}

/** Rise at the edge of a wire's insulation. Without a stub it is the joint's, which has kinks that the cubic misses. */
function edgeK(joint: HeatedJoint, course: Course, w: number, x: number): number {
  return joint.wires[w]?.mesh.edgeNode === 0 ? riseOf(joint.curve, courseAt(course, 0, x)) : courseAt(course, edgeEntry(w), x)
}

/** Outer face of the insulation just beyond the stub. */
function outerFaceK(joint: HeatedJoint, course: Course, w: number, x: number, edge: number): number {
  const wire = joint.model.wires[w]
  if (wire === undefined) return edge
  if (wire.tube !== null && wire.tube.toM > wire.stubM) {
    const layer = layerOf(wire.tube, false, joint.state.recovered)
    return edge + layer.coverMKPerW * layer.innerWPerMK * (courseAt(course, tubeEntry(w, 2), x) - edge)
  }
  const swept = joint.state.toolOn && wire.swept !== null && wire.stubM < wire.swept.toM ? wire.swept : null
  return swept === null ? edge * wire.outerShare : swept.riseK + (edge - swept.riseK) * wire.sweptOuterShare
}

function recordEdges(joint: HeatedJoint, record: HeatingRecord, course: Course): void {
  const { wires } = joint.model
  const pieceS = course.durationS / pieces
  for (let w = 0; w < wires.length; w++) {
    const limit = wires[w]?.limitRiseK ?? Infinity
    let before = edgeK(joint, course, w, 0)
    let peak = record.edgePeakK[w] as number
    let outerPeak = record.outerPeakK[w] as number
    let aboveS = 0
    for (let k = 1; k <= pieces; k++) {
      const now = edgeK(joint, course, w, k / pieces)
      peak = Math.max(peak, now)
      outerPeak = Math.max(outerPeak, outerFaceK(joint, course, w, k / pieces, now))
      if (now > limit || before > limit) {
        aboveS += shareAbove(before, now, limit) * pieceS
        record.limitAtS[w] = Math.min(record.limitAtS[w] as number, course.atS + (k - 1 + passedAt(before, now, limit)) * pieceS)
      }
      before = now
    }
    record.edgePeakK[w] = peak
    record.outerPeakK[w] = outerPeak
    record.exposureS[w] = (record.exposureS[w] as number) + aboveS
  }
}

function recordJoint(joint: HeatedJoint, record: HeatingRecord, course: Course): void {
  const { curve, model } = joint
  let most = -Infinity
  for (let k = 0; k <= pieces; k++) most = Math.max(most, courseAt(course, 0, k / pieces))
  record.jointPeakK = Math.max(record.jointPeakK, riseOf(curve, most))
  const first = (heatJ: number): number | null => {
    const x = firstPassing(course, 0, heatJ, true)
    return x === Infinity ? null : course.atS + x * course.durationS
  }
  record.solidusAtS ??= first(curve.solidusJ)
  record.liquidusAtS ??= first(curve.liquidusJ)
  record.wettedAtS ??= first(heatOf(curve, model.wettedRiseK))
  const frozen = firstPassing(course, 0, curve.solidusJ, false)
  if (frozen < Infinity) record.resolidifiedAtS = course.atS + frozen * course.durationS
}

/** Hottest outer face of the tube, over the lap, the stubs and the insulation's edges; and the inner face over the lap, where the ring is. */
function tubeFacesK(joint: HeatedJoint, course: Course, x: number): readonly [outer: number, inner: number] {
  const { state, model, flows } = joint
  const { source } = model
  if (source.kind !== 'tube') return [0, 0]
  const body = bodyRiseOf(joint, courseAt(course, 1, x))
  exchange(model, state, riseOf(joint.curve, courseAt(course, 0, x)), body, flows)
  const { halfWallKPerW } = state.recovered ? source.onLapRecovered : source.onLapLoose
  const inwards = flows[X.joint] as number
  let outer = body + ((flows[X.body] as number) + inwards) * halfWallKPerW
  model.wires.forEach(({ tube, stubM }, w) => {
    if (tube === null || tube.toM === 0) return
    const face = (bare: boolean, riseK: number): number => {
      const { streamWPerMK, stillWPerMK, radiationWPerMK, halfWallMKPerW } = layerOf(tube, bare, state.recovered)
      const out = state.toolOn ? streamWPerMK * (tube.airRiseK - riseK) : -stillWPerMK * riseK
      return riseK + halfWallMKPerW * (out - radiationWPerMK * riseK)
    }
    outer = Math.max(outer, face(stubM > 0, courseAt(course, tubeEntry(w, 0), x)))
    if (stubM > 0) outer = Math.max(outer, face(true, courseAt(course, tubeEntry(w, 1), x)))
    if (tube.toM > stubM) outer = Math.max(outer, face(false, courseAt(course, tubeEntry(w, 2), x)))
  })
  return [outer, body - inwards * halfWallKPerW]
}

function recordTube(joint: HeatedJoint, record: HeatingRecord, course: Course): void {
  const { source, melt } = joint.model
  if (source.kind !== 'tube') return
  const pieceS = course.durationS / pieces
  const melts = melt.liquidusRiseK
  let [outer, inner] = tubeFacesK(joint, course, 0)
  // When the tube grips, its inner face temperature jumps.
  if (inner >= melts) record.ringMeltsAtS ??= course.atS
  for (let k = 1; k <= pieces; k++) {
    const [nextOuter, nextInner] = tubeFacesK(joint, course, k / pieces)
    const fromS = course.atS + (k - 1) * pieceS
    const melted = passedAt(inner, nextInner, melts)
    if (melted < Infinity) record.ringMeltsAtS ??= fromS + melted * pieceS
    const passed = passedAt(outer, nextOuter, source.shortRiseK)
    if (passed < Infinity) record.tubeShortLimitAtS ??= fromS + passed * pieceS
    record.tubeAboveShortS += shareAbove(outer, nextOuter, source.shortRiseK) * pieceS
    record.tubeAboveContinuousS += shareAbove(outer, nextOuter, source.continuousRiseK) * pieceS
    record.tubeOuterPeakK = Math.max(record.tubeOuterPeakK, nextOuter)
    outer = nextOuter
    inner = nextInner
  }
}

/** Records the samples within the step. */
function recordSamples(joint: HeatedJoint, record: HeatingRecord, course: Course): void {
  const endS = course.atS + course.durationS
  joint.model.sampleTimesS.forEach((at, k) => {
    if (at < course.atS || at > endS) return
    const x = (at - course.atS) / course.durationS
    record.jointK[k] = riseOf(joint.curve, courseAt(course, 0, x))
    record.edgeK.forEach((list, w) => {
      list[k] = edgeK(joint, course, w, x)
    })
  })
}

/** Records the results of a step. */
export function recordStep(joint: HeatedJoint, record: HeatingRecord, course: Course): void {
  recordJoint(joint, record, course)
  recordEdges(joint, record, course)
  recordTube(joint, record, course)
  recordSamples(joint, record, course)
}
