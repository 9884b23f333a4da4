import { describe, expect, test } from 'vitest'
import { DomainError } from './domainError.ts'

const thrown = (value: unknown, code?: 'contradiction') => new DomainError('areaMm2', value, 'above 0', undefined, code)

describe('a refused value', () => {
  test('carries parameter, value, allowed, source and code beside its text', () => {
    const error = new DomainError('altitudeM', 12000, 'from 0 to 11000', 'ISO 2533')
    expect(error).toBeInstanceOf(RangeError)
    expect(error).toMatchObject({
      name: 'DomainError',
      code: 'out-of-range',
      parameter: 'altitudeM',
      value: 12000,
      allowed: 'from 0 to 11000',
      source: 'ISO 2533',
    })
    expect(error.message).toBe('"altitudeM" is 12000; allowed: from 0 to 11000, ISO 2533')
  })

  test('says nothing of a source where there is none', () => {
    expect(thrown(-1).message).toBe('"areaMm2" is -1; allowed: above 0')
    expect(thrown(-1).source).toBeUndefined()
  })

  test.each([
    [-1, 'out-of-range'],
    [undefined, 'missing'],
    [Number.NaN, 'not-a-number'],
    ['5', 'not-a-number'],
    [null, 'not-a-number'],
    [5n, 'not-a-number'],
    [{}, 'not-a-number'],
    [Infinity, 'not-finite'],
    [-Infinity, 'not-finite'],
  ])('%s is refused as %s unless another code is given', (value, code) => {
    expect(thrown(value).code).toBe(code)
    expect(thrown(value, 'contradiction').code).toBe('contradiction')
  })

  test.each([
    ['5', '"5"'],
    [Number.NaN, 'NaN'],
    [undefined, 'undefined'],
    [null, 'null'],
    [true, 'true'],
    [5n, '5'],
    [Symbol('x'), 'Symbol(x)'],
    [[1, 2], 'object'],
    [Object.create(null), 'object'],
    [() => 1, 'function'],
  ])('shows what was given, whatever it is: %#', (value, shown) => {
    expect(thrown(value).message).toBe(`"areaMm2" is ${shown}; allowed: above 0`)
  })
})
