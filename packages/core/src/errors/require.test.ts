import { describe, expect, test } from 'vitest'
import { DomainError } from './domainError.ts'
import {
  absoluteZeroC,
  requireAboveUpTo,
  requireBetween,
  requireChoice,
  requireFinite,
  requireFiniteResult,
  requireNotNegative,
  requirePositive,
  requireTemperature,
  requireWhole,
} from './require.ts'

const least = Number.MIN_VALUE
const most = Number.MAX_VALUE

/** Each helper with the values accepted at its edges and those just beyond. */
const helpers = [
  { name: 'requireFinite', check: (value: number) => requireFinite('x', value), good: [-most, 0, most], bad: [] },
  { name: 'requirePositive', check: (value: number) => requirePositive('x', value), good: [least, most], bad: [0, -0, -least] },
  { name: 'requireNotNegative', check: (value: number) => requireNotNegative('x', value), good: [0, -0, most], bad: [-least] },
  { name: 'requireBetween', check: (value: number) => requireBetween('x', value, -60, 300), good: [-60, 300], bad: [-60.001, 300.001] },
  { name: 'requireAboveUpTo', check: (value: number) => requireAboveUpTo('x', value, 0, 1), good: [least, 1], bad: [0, 1.001] },
  { name: 'requireTemperature', check: (value: number) => requireTemperature('x', value), good: [-273.149, most], bad: [absoluteZeroC] },
  { name: 'requireWhole', check: (value: number) => requireWhole('x', value, 1), good: [1, Number.MAX_SAFE_INTEGER], bad: [0, 2 ** 53] },
]

function refused(call: () => unknown): DomainError {
  try {
    call()
  } catch (error) {
    if (error instanceof DomainError) return error
    throw error
  }
  throw new Error('nothing was refused')
}

describe.each(helpers)('$name', ({ check, good, bad }) => {
  test('gives back what lies inside, its edges included', () => {
    for (const value of good) expect(check(value)).toBe(value)
  })

  test('refuses what lies past its edges', () => {
    for (const value of bad) expect(refused(() => check(value))).toMatchObject({ parameter: 'x', value, code: 'out-of-range' })
  })

  test.each([
    [undefined, 'missing'],
    [Number.NaN, 'not-a-number'],
    ['1', 'not-a-number'],
    [null, 'not-a-number'],
    [[1], 'not-a-number'],
    [true, 'not-a-number'],
    [Infinity, 'not-finite'],
    [-Infinity, 'not-finite'],
  ])('refuses %s as %s', (value, code) => {
    expect(refused(() => check(value as number))).toMatchObject({ parameter: 'x', value, code })
  })
})

describe('the other helpers', () => {
  test('a whole number: a fraction has its own code', () => {
    expect(refused(() => requireWhole('x', 1.5, 1, 9))).toMatchObject({ code: 'not-whole', allowed: 'a whole number from 1 to 9' })
  })

  test('a choice: what is allowed are the words', () => {
    expect(requireChoice('x', 'a', ['a', 'b'])).toBe('a')
    expect(refused(() => requireChoice('x', 'c', ['a', 'b'], 'S'))).toMatchObject({ code: 'wrong-choice', allowed: 'a, b', source: 'S' })
    expect(refused(() => requireChoice<string>('x', undefined as unknown as string, ['a']))).toMatchObject({ code: 'missing' })
  })

  test.each([Infinity, -Infinity, Number.NaN])('a result of %s names the input that is out of reach', (result) => {
    expect(requireFiniteResult('x', 5, 6)).toBe(6)
    expect(refused(() => requireFiniteResult('x', 5, result))).toMatchObject({ parameter: 'x', value: 5, code: 'out-of-range' })
  })

  test('a limit carries its source', () => {
    expect(refused(() => requireBetween('x', 2, 0, 1, 'S')).message).toBe('"x" is 2; allowed: from 0 to 1, S')
  })
})
