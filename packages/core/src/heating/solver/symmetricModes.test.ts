import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ConvergenceError } from '../../errors/index.ts'
import { symmetricModes } from './symmetricModes.ts'

const symmetric = fc
  .integer({ min: 1, max: 9 })
  .chain((n) => fc.tuple(fc.constant(n), fc.array(fc.integer({ min: -50, max: 50 }), { minLength: n * n, maxLength: n * n })))
  .map(([n, entries]) => ({ n, matrix: Float64Array.from(entries, (_, k) => ((entries[k] ?? 0) + (entries[(k % n) * n + Math.floor(k / n)] ?? 0)) / 2) }))

const units = (n: number): Float64Array[] => Array.from({ length: n }, (_, i) => Float64Array.from({ length: n }, (_v, j) => (i === j ? 1 : 0)))

describe('modes of a symmetric matrix', () => {
  test('rates and base rebuild the matrix, and the base is square to itself', () => {
    fc.assert(
      fc.property(symmetric, ({ n, matrix }) => {
        const base = units(n)
        const rates = symmetricModes(n, Float64Array.from(matrix), base)
        for (let i = 0; i < n; i++) {
          for (let j = 0; j < n; j++) {
            let sum = 0
            let square = 0
            for (let k = 0; k < n; k++) {
              sum += (base[i]?.[k] ?? 0) * (rates[k] ?? 0) * (base[j]?.[k] ?? 0)
              square += (base[i]?.[k] ?? 0) * (base[j]?.[k] ?? 0)
            }
            expect(Math.abs(sum - (matrix[i * n + j] ?? 0))).toBeLessThan(1e-11)
            expect(Math.abs(square - (i === j ? 1 : 0))).toBeLessThan(1e-12)
          }
        }
      }),
    )
  })

  test('a row is turned as the base is', () => {
    fc.assert(
      fc.property(symmetric, ({ n, matrix }) => {
        const row = Float64Array.from({ length: n }, (_, k) => Math.sin(3 * k + 1))
        const base = units(n)
        const turned = Float64Array.from(row)
        symmetricModes(n, Float64Array.from(matrix), base)
        symmetricModes(n, Float64Array.from(matrix), [turned])
        for (let k = 0; k < n; k++) {
          let sum = 0
          for (let i = 0; i < n; i++) sum += (row[i] ?? 0) * (base[i]?.[k] ?? 0)
          expect(Math.abs((turned[k] ?? 0) - sum)).toBeLessThan(1e-11)
        }
      }),
    )
  })

  test('the chain of n equal links has the rates of its cosines', () => {
    const n = 12
    const matrix = new Float64Array(n * n)
    for (let i = 0; i < n; i++) {
      matrix[i * n + i] = 2
      if (i > 0) matrix[i * n + i - 1] = -1
      if (i + 1 < n) matrix[i * n + i + 1] = -1
    }
    const rates = [...symmetricModes(n, matrix, [])].sort((a, b) => a - b)
    rates.forEach((rate, k) => {
      expect(rate).toBeCloseTo(2 - 2 * Math.cos((Math.PI * (k + 1)) / (n + 1)), 12)
    })
  })

  test('blocks, zeros and a single number', () => {
    expect([...symmetricModes(1, Float64Array.of(7), [])]).toEqual([7])
    expect([...symmetricModes(3, new Float64Array(9), [])]).toEqual([0, 0, 0])
    const block = Float64Array.of(1, 2, 0, 0, 2, 1, 0, 0, 0, 0, 5, 1, 0, 0, 1, 5)
    const rates = [...symmetricModes(4, block, [])].sort((a, b) => a - b)
    ;[-1, 3, 4, 6].forEach((rate, k) => {
      expect(rates[k]).toBeCloseTo(rate, 12)
    })
  })

  test('in another unit the rates are those in that unit, to the last digit', () => {
    fc.assert(
      fc.property(symmetric, fc.constantFrom(2 ** -60, 2 ** -20, 2 ** 40), ({ n, matrix }, unit) => {
        const rates = symmetricModes(n, Float64Array.from(matrix), [])
        expect([
          ...symmetricModes(
            n,
            matrix.map((entry) => entry * unit),
            [],
          ),
        ]).toEqual([...rates].map((rate) => rate * unit))
      }),
    )
  })

  test('what is no number, or too small to be squared, does not settle', () => {
    expect(() => symmetricModes(2, Float64Array.of(0, 1e-200, 1e-200, 0), [])).toThrow(ConvergenceError)
    expect(() => symmetricModes(3, Float64Array.of(1, NaN, 2, NaN, 1, 2, 2, 2, 1), [])).toThrow(ConvergenceError)
  })
})
