import { describe, expect, test } from 'vitest'
import type { HeatModel } from '../heatModel.ts'
import { edgeWithin, newEdgeStep } from './edgeStep.ts'
import { advanceWire, edgeRiseK, setEdges, takeSamples } from './heatingEdges.ts'
import { newRecord } from './heatingRecord.ts'
import { firstStage } from './moments.ts'
import { curvature, startSlope } from './parabola.ts'
import { emptyTable, fillTable } from './stepTable.ts'
import type { WireModes } from './wireModes.ts'

const none = new Float64Array(2)
/** Two modes, a fast and a slow one; the edge follows the joint late. */
const late: WireModes = {
  count: 2,
  ratesPerS: Float64Array.of(8, 1),
  coupling: Float64Array.of(3, 0.6),
  drive: Float64Array.of(0.2, 0.1),
  admittanceWPerK: 0,
  drivenW: 0,
  jointStoreJPerK: 0,
  edge: Float64Array.of(-0.4, 1.1),
  edgeJoint: 0,
  edgeOffsetK: 0.5,
  loss: none,
  lossJointWPerK: 0,
  lossOffsetW: 0,
  store: none,
  base: null,
}
const model = { wires: [{}], sampleTimesS: [3.3, 3.05] } as unknown as HeatModel
/** The same wire, the edge so near that the joint itself shows in it. */
const near: WireModes = { ...late, edgeJoint: 0.3 }

/** A step of the joint's parabola, from and to these rises by way of the first stage. */
interface Course {
  readonly modes: WireModes
  readonly values: readonly [number, number]
  readonly durationS: number
  readonly joint: readonly [number, number, number]
}
const first = (start: number, b: number, c: number): readonly [number, number, number] => [start, start + b * firstStage + c * firstStage ** 2, start + b + c]
/** The joint falls and turns; the edge still rises, then falls. */
const crown: Course = { modes: late, values: [40, 55], durationS: 0.5, joint: first(100, -150, 60) }
const nearCrown: Course = { modes: near, values: [40, 30], durationS: 0.5, joint: first(60, 260, -260) }
/** The joint rises evenly from below what the wire has left; the edge falls, then rises above where it was. */
const dip: Course = { modes: { ...late, edge: Float64Array.of(0, 1.1) }, values: [0, 55], durationS: 2, joint: first(20, 180, 0) }
const nearDip: Course = { ...dip, modes: { ...near, edge: Float64Array.of(0, 1.1) }, values: [0, 80] }
const fall: Course = { ...dip, durationS: 0.9, joint: first(20, 81, 0) }

const places = 20_000

function taken({ modes, values: from, durationS, joint: [start, at, last] }: Course, limitRiseK: number, toolOn: boolean) {
  const values = Float64Array.from(from)
  const step = newEdgeStep(modes, limitRiseK, values)
  const record = newRecord(model)
  record.edgeNowK[0] = edgeRiseK(modes, values, start)
  const slopeOf = (y: Float64Array, rise: number): number =>
    [0, 1].reduce(
      (sum, k) => sum + (modes.edge[k] ?? 0) * ((modes.coupling[k] ?? 0) * rise + (modes.drive[k] ?? 0) - (modes.ratesPerS[k] ?? 0) * (y[k] ?? 0)),
      0,
    )
  record.edgeSlopeKPerS[0] = slopeOf(values, start)
  const table = emptyTable(2)
  fillTable(modes, durationS, table)
  setEdges([step], durationS, start, at, last)
  takeSamples(record, model, [step], 3, durationS, start, at, last)
  // The edge at fine places, asked while the step is still at its start.
  const rises = Array.from({ length: places + 1 }, (_, k) => {
    edgeWithin(step, k / places)
    return step.found[0] ?? 0
  })
  advanceWire(record, 0, step, table, new Float64Array(2), 3, toolOn)
  return { record, rises, values, slopeOf, step, table }
}

describe('a wire that moves to the end of a step', () => {
  test.each([
    ['far from the joint', crown],
    ['near it', nearCrown],
    ['as the joint rises', nearDip],
  ])('%s it ends where the parabola drives it, with the slope that its modes have there', (_name, course) => {
    const { record, rises, values, slopeOf } = taken(course, 47, true)
    const last = course.joint[2]
    expect(record.edgeNowK[0]).toBeCloseTo(rises.at(-1) ?? 0, 9)
    expect(record.edgeNowK[0]).toBeCloseTo(edgeRiseK(course.modes, values, last), 12)
    expect(record.edgeSlopeKPerS[0]).toBeCloseTo(slopeOf(values, last), 9)
    const ends = ((rises[places] ?? 0) - (rises[places - 1] ?? 0)) * places
    const byJoint = course.modes.edgeJoint * (startSlope(...course.joint) + 2 * curvature(...course.joint))
    expect((record.edgeSlopeKPerS[0] ?? 0) * course.durationS + byJoint).toBeCloseTo(ends, 1)
  })

  test('its rise is that of its modes and of the joint, each by its share', () => {
    expect(edgeRiseK(near, Float64Array.of(10, 20), 100)).toBeCloseTo(0.5 + 30 - 4 + 22, 12)
  })

  test.each([
    ['far from the joint', crown],
    ['near it', nearCrown],
  ])('%s the crown within the step is the peak, with the tool on or off', (_name, course) => {
    const { record, rises } = taken(course, 47, true)
    const top = Math.max(...rises)
    expect(top).toBeGreaterThan(Math.max(rises[0] ?? 0, rises.at(-1) ?? 0) + 0.1)
    expect(record.edgePeakOnK[0]).toBeCloseTo(top, 5)
    expect(record.edgePeakOffK[0]).toBe(-Infinity)
    const off = taken(course, 47, false).record
    expect(off.edgePeakOffK[0]).toBeCloseTo(top, 5)
    expect(off.edgePeakOnK[0]).toBe(0)
  })

  test('without a crown the peak is the higher end', () => {
    const { record, rises } = taken(dip, 47, true)
    expect(record.edgePeakOnK[0]).toBeCloseTo(rises.at(-1) ?? 0, 9)
    const { record: falling, rises: fallen } = taken(fall, 47, true)
    expect(falling.edgePeakOnK[0]).toBe(fallen[0])
  })
})

describe('time above a limit, and when it was first passed', () => {
  const courses = { crown, 'crown near the joint': nearCrown, dip, 'dip near the joint': nearDip, fall }
  test.each(
    (Object.keys(courses) as (keyof typeof courses)[]).flatMap((name) =>
      (['below all', 'beneath the lower end', 'between the ends', 'over the higher end', 'above all'] as const).map((where) => [name, where] as const),
    ),
  )('%s, a limit %s', (name, where) => {
    const course = courses[name]
    const { rises } = taken(course, 0, true)
    const [low, high] = [Math.min(...rises), Math.max(...rises)]
    const [lower, higher] = [rises[0] ?? 0, rises.at(-1) ?? 0].sort((a, b) => a - b) as [number, number]
    if (name.startsWith('dip')) expect(low).toBeLessThan(lower - 0.1)
    const limit = {
      'below all': low - 1,
      'beneath the lower end': 0.5 * (low + lower),
      'between the ends': 0.6 * lower + 0.4 * higher,
      'over the higher end': 0.1 * higher + 0.9 * high,
      'above all': high + 1,
    }[where]
    const { record } = taken(course, limit, true)
    const over = rises.filter((rise) => rise > limit).length / rises.length
    expect(Math.abs((record.exposureS[0] ?? 0) - over * course.durationS)).toBeLessThan(4e-4)
    const firstOver = rises.findIndex((rise) => rise > limit)
    if (firstOver < 0) expect(record.limitAtS[0]).toBe(Infinity)
    else expect(Math.abs((record.limitAtS[0] ?? 0) - 3 - (firstOver / places) * course.durationS)).toBeLessThan(4e-4)
  })

  test('the first time stays, the exposure adds up', () => {
    const { record, step, table } = taken(dip, 50, true)
    expect(record.limitAtS[0]).toBe(3)
    const before = record.exposureS[0] ?? 0
    setEdges([step], dip.durationS, 200, 200, 200)
    advanceWire(record, 0, step, table, new Float64Array(2), 5, false)
    expect(record.limitAtS[0]).toBe(3)
    expect(record.exposureS[0]).toBeCloseTo(before + 2, 9)
  })
})

describe('samples', () => {
  test('in the step are taken, each in its place', () => {
    const { record, rises } = taken(crown, 47, true)
    expect(record.jointK[1]).toBeCloseTo(100 - 150 * 0.1 + 60 * 0.01, 9)
    expect(record.edgeK[0]?.[1]).toBeCloseTo(rises[2000] ?? 0, 9)
    expect(record.edgeK[0]?.[0]).toBeCloseTo(rises[12_000] ?? 0, 9)
    expect(record.nextSample).toBe(2)
  })

  test('behind it are left', () => {
    const later = newRecord({ wires: [{}], sampleTimesS: [3.6] } as unknown as HeatModel)
    takeSamples(later, { sampleTimesS: [3.6] } as unknown as HeatModel, [], 3, 0.5, ...crown.joint)
    expect(later.nextSample).toBe(0)
  })
})
