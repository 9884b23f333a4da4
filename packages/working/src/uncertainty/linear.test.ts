import { DomainError } from '@strandwise/core/errors'
import { describe, expect, test } from 'vitest'
import type { Matrix } from './correlations.ts'
import { linear } from './linear.ts'
import type { Known } from './uncertain.ts'

const input = (value: number, uncertainty: number, degreesOfFreedom: number | null = null): Known => ({
  name: 'x',
  value,
  uncertainty,
  shape: 'normal',
  degreesOfFreedom,
})
const alone = (count: number): Matrix =>
  Array.from({ length: count }, (_row, row) => Array.from({ length: count }, (_column, column) => (row === column ? 1 : 0)))
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)

describe('slopes', () => {
  test('a certain input is not moved', () => {
    const model = ([a = 0, b = 0]: readonly number[]): number => {
      if (b !== 3) throw new DomainError('b', b, '3')
      return a * b
    }
    expect(linear(model, [input(2, 0.1), input(3, 0)], alone(2))).toMatchObject({ value: 6, uncertainty: expect.closeTo(0.3, 9), shares: [1, 0] })
  })

  test.each([
    [1e9, 1e-3],
    [-4e6, 1e-9],
    [0, 1e-12],
    [1, 1e6],
  ])('a step that the digits of %s can hold, for an uncertainty of %s', (value, uncertainty) => {
    expect(linear(sum, [input(value, uncertainty)], alone(1)).uncertainty / uncertainty).toBeCloseTo(1, 6)
  })

  test('five points: right up to the fourth power', () => {
    const quartic = ([x = 0]: readonly number[]): number => x ** 4 - 2 * x ** 3 + x
    expect(linear(quartic, [input(1.5, 0.2)], alone(1)).uncertainty).toBeCloseTo(0.2 * (4 * 1.5 ** 3 - 6 * 1.5 ** 2 + 1), 9)
  })

  test.each([
    ['above', 1],
    ['below', -1],
  ] as const)('where only %s is allowed three points there do: right up to the second power', (_name, side) => {
    const model = ([x = 0, y = 0]: readonly number[]): number => {
      if (side * (x - 2) < 0) throw new DomainError('x', x, 'this side of 2')
      return 3 * x * x - 5 * y
    }
    const { uncertainty } = linear(
      model,
      [input(2, 0.1), input(1, 0.2)],
      [
        [1, 0.5],
        [0.5, 1],
      ],
    )
    // The cross term has the signs of both slopes.
    expect(uncertainty).toBeCloseTo(Math.sqrt(1.2 ** 2 + 1 - 1.2), 7)
  })

  test('what is no matter of the domain comes through, even where the other side would do', () => {
    const broken = ([x = 0]: readonly number[]): number => {
      if (x > 2) throw new TypeError('broken')
      return x
    }
    expect(() => linear(broken, [input(2, 0.1)], alone(1))).toThrow(TypeError)
  })
})

describe('degrees of freedom', () => {
  test('of one input among endless ones', () => {
    const { degreesOfFreedom } = linear(sum, [input(1, 2, 5), input(1, 1)], alone(2))
    expect(degreesOfFreedom).toBeCloseTo(25 / (16 / 5), 6)
    expect(linear(sum, [input(1, 2), input(1, 1)], alone(2)).degreesOfFreedom).toBeNull()
  })

  test('of two by themselves, by Welch and Satterthwaite', () => {
    expect(linear(sum, [input(1, 2, 5), input(1, 1, 3)], alone(2)).degreesOfFreedom).toBeCloseTo(25 / (16 / 5 + 1 / 3), 6)
  })

  test('correlated ones are one, with the fewest of them', () => {
    const together: Matrix = [
      [1, 0.5, 0],
      [0.5, 1, 0],
      [0, 0, 1],
    ]
    const { degreesOfFreedom, uncertainty } = linear(sum, [input(1, 2, 9), input(1, 1, 4), input(1, 3, 6)], together)
    expect(uncertainty).toBeCloseTo(4, 9)
    expect(degreesOfFreedom).toBeCloseTo(256 / (49 / 4 + 81 / 6), 5)
  })
})

test('where the cross terms take more than there is, nothing is left', () => {
  const difference = ([a = 0, b = 0]: readonly number[]): number => a - b
  const same: Matrix = [
    [1, 1 + 1e-12],
    [1 + 1e-12, 1],
  ]
  expect(linear(difference, [input(1, 1), input(1, 1)], same)).toEqual({ value: 0, uncertainty: 0, degreesOfFreedom: null, shares: [0, 0] })
})
