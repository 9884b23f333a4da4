import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { groupsOf, type Matrix, matrixOf, triangleOf } from './correlations.ts'
import type { Known } from './uncertain.ts'

const inputs = (...names: readonly string[]): readonly Known[] => names.map((name) => ({ name })) as unknown as readonly Known[]

/** Triangle times its transpose: the matrix again. */
const product = (triangle: Matrix): Matrix =>
  triangle.map((row) => triangle.map((column) => row.reduce((sum, entry, at) => sum + entry * (column[at] ?? 0), 0)))

const unit = (row: readonly number[]): readonly number[] => row.map((entry) => entry / Math.hypot(...row))

describe('the triangle', () => {
  test('of three inputs, by hand', () => {
    const triangle = triangleOf([
      [1, 0.6, 0.3],
      [0.6, 1, 0.5],
      [0.3, 0.5, 1],
    ])
    const wanted = [[1], [0.6, 0.8], [0.3, 0.4, Math.sqrt(0.75)]]
    expect(triangle.map((row) => row.length)).toEqual([1, 2, 3])
    triangle.forEach((row, at) => {
      row.forEach((entry, place) => {
        expect(entry).toBeCloseTo(wanted[at]?.[place] ?? Number.NaN, 12)
      })
    })
  })

  test('multiplied by its transpose it gives the matrix', () => {
    const entry = fc.double({ min: -1, max: 1, noNaN: true })
    const rows = fc.tuple(entry, entry, entry, entry, entry, entry)
    fc.assert(
      fc.property(rows, ([a, b, c, d, e, f]) => {
        const matrix = product([[1], unit([a, 1]), unit([b, c, 1]), unit([d, e, f, 1])])
        const again = product(triangleOf(matrix))
        matrix.flat().forEach((value, at) => {
          expect(again.flat()[at]).toBeCloseTo(value, 9)
        })
      }),
    )
  })

  test('inputs that are one and the same have one draw, and agree with the third', () => {
    const twins = (first: number, second: number): Matrix => [
      [1, 1, first],
      [1, 1, second],
      [first, second, 1],
    ]
    expect(triangleOf(twins(0.6, 0.6))).toEqual([[1], [1, 0], [0.6, 0, 0.8]])
    expect(triangleOf(twins(0.6, 0.6 + 0.9e-6))[2]).toEqual([0.6, 0, 0.8])
    expect(() => triangleOf(twins(0.6, 0.6 + 1.1e-6))).toThrow(expect.objectContaining({ parameter: 'options.correlations', code: 'contradiction' }))
    expect(() => triangleOf(twins(0.6, 0.5))).toThrow('hold together')
    expect(triangleOf([...twins(1, 1)])).toEqual([[1], [1, 0], [1, 0, 0]])
  })

  test('coefficients that leave less than nothing are refused', () => {
    const three = (last: number): Matrix => [
      [1, 0.6, 0.8],
      [0.6, 1, last],
      [0.8, last, 1],
    ]
    // 0.8 and (last - 0.48)/0.8: at 0.96 no variance remains.
    expect(triangleOf(three(0.96))[2]?.[2]).toBeCloseTo(0, 4)
    expect(() => triangleOf(three(0.961))).toThrow(expect.objectContaining({ parameter: 'options.correlations', code: 'contradiction' }))
    expect(() => triangleOf(three(-0.001))).toThrow('hold together')
  })
})

describe('groups', () => {
  const linked = (count: number, ...pairs: readonly (readonly [number, number])[]): Matrix =>
    Array.from({ length: count }, (_row, row) =>
      Array.from({ length: count }, (_column, column) =>
        row === column ? 1 : pairs.some(([one, other]) => (one === row && other === column) || (one === column && other === row)) ? -0.3 : 0,
      ),
    )

  test.each([
    ['none', linked(3), [[0], [1], [2]]],
    ['a pair', linked(3, [0, 2]), [[0, 2], [1]]],
    ['a chain, through others', linked(5, [3, 0], [3, 4]), [[0, 3, 4], [1], [2]]],
    ['two chains that meet at last', linked(4, [0, 1], [2, 3], [1, 3]), [[0, 1, 2, 3]]],
    [
      'two pairs',
      linked(4, [0, 3], [1, 2]),
      [
        [0, 3],
        [1, 2],
      ],
    ],
    ['no inputs', [], []],
  ])('%s', (_name, matrix, groups) => {
    expect([...groupsOf(matrix)].sort((one, other) => (one[0] ?? 0) - (other[0] ?? 0))).toEqual(groups)
  })
})

test('each pair is set on both sides of the diagonal; of a repeated pair the last counts', () => {
  expect(
    matrixOf(inputs('a', 'b', 'c'), [
      ['a', 'c', 0.2],
      ['c', 'b', -0.4],
      ['c', 'a', 0.5],
    ]),
  ).toEqual([
    [1, 0, 0.5],
    [0, 1, -0.4],
    [0.5, -0.4, 1],
  ])
  expect(matrixOf(inputs(), [])).toEqual([])
})
