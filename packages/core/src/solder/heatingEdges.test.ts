import { describe, expect, test } from 'vitest'
import { edgeWithin, newEdgeStep } from './edgeStep.ts'
import { advanceWire, edgeRiseK, setEdges, takeSamples } from './heatingEdges.ts'
import { newRecord } from './heatingRecord.ts'
import type { HeatModel } from './heatModel.ts'
import { firstStage } from './moments.ts'
import { emptyTable, fillTable } from './stepTable.ts'
import type { WireModes } from './wireModes.ts'

const none = new Float64Array(2)
/** Two modes, a fast and a slow one; the edge follows the joint late. */
const modes: WireModes = {
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
const durationS = 0.5
const [start, first, last] = [100, 100 - 150 * firstStage + 60 * firstStage ** 2, 10] as const

function taken(limitRiseK: number, toolOn: boolean) {
  const values = Float64Array.of(40, 55)
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
  setEdges([step], durationS, start, first, last)
  takeSamples(record, model, [step], 3, durationS, start, first, last)
  // The edge at fine places, asked while the step is still at its start.
  const rises = Array.from({ length: 20_001 }, (_, k) => {
    edgeWithin(step, k / 20_000)
    return step.found[0] ?? 0
  })
  advanceWire(record, 0, step, table, new Float64Array(2), 3, toolOn)
  return { record, rises, values, slopeOf }
}

describe('a wire that moves to the end of a step', () => {
  const { record, rises, values, slopeOf } = taken(47, true)

  test('ends where the parabola drives it, with the slope it has there', () => {
    expect(record.edgeNowK[0]).toBeCloseTo(rises.at(-1) ?? 0, 9)
    expect(record.edgeNowK[0]).toBeCloseTo(edgeRiseK(modes, values, last), 12)
    expect(record.edgeSlopeKPerS[0]).toBeCloseTo(slopeOf(values, last), 9)
    const n = rises.length
    expect(record.edgeSlopeKPerS[0]).toBeCloseTo((((rises[n - 1] ?? 0) - (rises[n - 2] ?? 0)) * 20_000) / durationS, 1)
  })

  test('the crown within the step is the peak, with the tool on or off', () => {
    const top = Math.max(...rises)
    expect(top).toBeGreaterThan(Math.max(rises[0] ?? 0, rises.at(-1) ?? 0) + 0.1)
    expect(record.edgePeakOnK[0]).toBeCloseTo(top, 5)
    expect(record.edgePeakOffK[0]).toBe(-Infinity)
    const off = taken(47, false).record
    expect(off.edgePeakOffK[0]).toBeCloseTo(top, 5)
    expect(off.edgePeakOnK[0]).toBe(0)
  })

  test.each([
    ['below its whole course', -1],
    ['between start and crown', 0.5],
    ['just beneath the crown', 0.98],
    ['above its whole course', 1.1],
  ] as const)('time above a limit %s, and when it was first passed', (_name, share) => {
    const low = Math.max(rises[0] ?? 0, rises.at(-1) ?? 0)
    const limit = share < 0 ? Math.min(...rises) - 1 : low + share * (Math.max(...rises) - low)
    const got = taken(limit, true).record
    const over = rises.filter((rise) => rise > limit).length / rises.length
    expect(Math.abs((got.exposureS[0] ?? 0) - over * durationS)).toBeLessThan(1e-4)
    const firstOver = rises.findIndex((rise) => rise > limit)
    if (firstOver < 0) expect(got.limitAtS[0]).toBe(Infinity)
    else expect(Math.abs((got.limitAtS[0] ?? 0) - 3 - (firstOver / 20_000) * durationS)).toBeLessThan(1e-4)
  })

  test('samples in the step are taken, later ones left', () => {
    expect(record.jointK[1]).toBeCloseTo(100 - 150 * 0.1 + 60 * 0.01, 9)
    expect(record.edgeK[0]?.[1]).toBeCloseTo(rises[2000] ?? 0, 9)
    expect(record.edgeK[0]?.[0]).toBeCloseTo(rises[12_000] ?? 0, 9)
    expect(record.nextSample).toBe(2)
    const later = newRecord({ wires: [{}], sampleTimesS: [3.6] } as unknown as HeatModel)
    takeSamples(later, { sampleTimesS: [3.6] } as unknown as HeatModel, [], 3, durationS, start, first, last)
    expect(later.nextSample).toBe(0)
  })
})
