import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { levelTable, oddTable } from './heatingWires.ts'
import { firstStage } from './moments.ts'
import { rowWithin } from './rowWithin.ts'
import { A, emptyTable, fillTable } from './stepTable.ts'
import type { WireModes } from './wireModes.ts'

const none = new Float64Array(2)
const modes: WireModes = {
  count: 2,
  ratesPerS: Float64Array.of(9, 0.4),
  coupling: Float64Array.of(0.7, 0.3),
  drive: Float64Array.of(2, -1),
  admittanceWPerK: 0,
  drivenW: 0,
  jointStoreJPerK: 0,
  edge: none,
  edgeJoint: 0,
  edgeOffsetK: 0,
  loss: none,
  lossJointWPerK: 0,
  lossOffsetW: 0,
  store: none,
  base: null,
}
const y = Float64Array.of(12, -5)
const rise = fc.double({ min: -100, max: 400, noNaN: true })

describe('the table of a step', () => {
  test('tells the modes at its end, and the flow at both stages, as they are asked one by one', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 20, noNaN: true }), rise, rise, rise, (durationS, start, first, last) => {
        const table = emptyTable(2)
        fillTable(modes, durationS, table)
        const { answers: a, flow } = table
        const out = new Float64Array(2)
        const within = (row: Float64Array, x: number): number => {
          rowWithin(modes, row, y, durationS, x, start, first, last, out)
          return out[0] ?? 0
        }
        for (const k of [0, 1]) {
          const at = (place: number): number => a[k * A.width + place] ?? Number.NaN
          const end = at(A.decay) * (y[k] ?? 0) + at(A.toStart) * start + at(A.toFirst) * first + at(A.toLast) * last + at(A.toDrive)
          expect(Math.abs(end - within(Float64Array.of(1 - k, k), 1))).toBeLessThan(1e-9)
        }
        for (const [x, left, of] of [
          [firstStage, A.left1, 0],
          [1, A.left2, 4],
        ] as const) {
          let sum = (flow[of] ?? 0) * start + (flow[of + 1] ?? 0) * first + (flow[of + 2] ?? 0) * last + (flow[of + 3] ?? 0)
          for (const k of [0, 1]) sum += (a[k * A.width + left] ?? 0) * (y[k] ?? 0)
          expect(Math.abs(sum - within(modes.coupling, x))).toBeLessThan(1e-9)
        }
      }),
    )
  })

  test('of a power of two is kept until its place is needed, any other is filled anew', () => {
    const heated = { modes, tables: new Array(17).fill(null) } as unknown as Parameters<typeof levelTable>[0]
    const fresh = (durationS: number) => {
      const table = emptyTable(2)
      fillTable(modes, durationS, table)
      return table
    }
    const first = levelTable(heated, -3)
    expect(first).toEqual(fresh(0.125))
    expect(levelTable(heated, -2)).toEqual(fresh(0.25))
    expect(first).toEqual(fresh(0.125))
    // A table that was written over would be found out.
    first.flow[0] = 7
    expect(levelTable(heated, -3).flow[0]).toBe(7)
    expect(levelTable(heated, 13)).toEqual(fresh(8192))
    expect(levelTable(heated, -3)).toEqual(fresh(0.125))
    expect(oddTable(heated, 0.3)).toEqual(fresh(0.3))
    expect(oddTable(heated, 0.4)).toEqual(fresh(0.4))
    expect(levelTable(heated, 2)).toEqual(fresh(4))
  })
})
