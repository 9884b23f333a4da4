import { describe, expect, test } from 'vitest'
import { solveLinear } from './solveLinear.ts'

const wide = (rows: readonly (readonly number[])[]): Float64Array => {
  const list = new Float64Array(16).fill(7)
  rows.forEach((row, i) => {
    row.forEach((value, j) => {
      list[4 * i + j] = value
    })
  })
  return list
}

describe('the linear solver', () => {
  test('by hand: 2 x + y = 5, x + 3 y = 10', () => {
    const right = Float64Array.of(5, 10, 7, 7)
    solveLinear(
      2,
      wide([
        [2, 1],
        [1, 3],
      ]),
      right,
    )
    expect([...right.slice(0, 2)]).toEqual([1, 3])
  })

  test('rows change places where a pivot is 0, or so small that digits would go', () => {
    const right = Float64Array.of(3, 4, 5, 6)
    solveLinear(
      4,
      wide([
        [0, 0, 0, 1],
        [0, 0, 1, 0],
        [0, 1, 0, 0],
        [1, 0, 0, 0],
      ]),
      right,
    )
    expect([...right]).toEqual([6, 5, 4, 3])
    const small = Float64Array.of(1, 2, 0, 0)
    solveLinear(
      2,
      wide([
        [1e-20, 1],
        [1, 1],
      ]),
      small,
    )
    expect([...small.slice(0, 2)]).toEqual([1, 1])
    // The largest of what is left, not the first that will do.
    const three = Float64Array.of(1 + 1e-17, 3, 2)
    solveLinear(
      3,
      wide([
        [1e-17, 1, 0],
        [1e-8, 1, 2],
        [1, 1, 0],
      ]),
      three,
    )
    expect([three[0], three[1]].map((x) => Math.abs((x ?? 0) - 1) < 1e-15)).toEqual([true, true])
    expect(three[2]).toBeCloseTo(1, 7)
  })

  test('touches nothing beyond the part it is asked for', () => {
    const right = Float64Array.of(5, 10, 11, 12)
    const matrix = wide([
      [2, 1],
      [1, 3],
    ])
    solveLinear(2, matrix, right)
    expect([...right.slice(2)]).toEqual([11, 12])
    expect([2, 3, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15].map((k) => matrix[k])).toEqual(Array(12).fill(7))
  })
})
