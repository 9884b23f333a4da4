import { describe, expect, test } from 'vitest'
import { deepFreeze, evaluate, parseExample } from './example.ts'
import { asDocumented, outcomeOf, refusesItself, unfinite } from './outcome.ts'
import { differences } from './printed.ts'
import { contains, insideOf, nextDown, nextUp, outsideOf, withValue } from './vary.ts'

describe('examples', () => {
  test('a call and its result, over several lines', () => {
    expect(parseExample('f({\n  a: 1,\n}, [2])\n// { b: 3,\n// c: 4 }')).toMatchObject({
      callee: 'f',
      argumentsText: '{\n  a: 1,\n}, [2]',
      printed: '{ b: 3,\nc: 4 }',
    })
    expect(parseExample('f(1)').printed).toBeUndefined()
  })

  test.each(['const a = f(1) // 2', 'f(1); g(2) // 3', 'a.f(1) // 2', '1 // 2', 'f(1) // 2\ng(3)'])('"%s" is no example', (code) => {
    expect(() => parseExample(code)).toThrow()
  })

  test('arguments see the scope', () => {
    expect(evaluate('{ a: b }, c(2)', { b: 1, c: (x: number) => 2 * x })).toEqual([{ a: 1 }, 4])
  })

  test.each([
    [0.172414, '0.17241'],
    [-1.25e-8, '-1.25e-8'],
    [119.6, '120'],
    [3, '3'],
    ['a', '"a"'],
    ['a', "'a'"],
    [null, 'null'],
    [undefined, 'undefined'],
    [true, 'true'],
    [[1, { a: 2, b: 3 }], '[1, { a: 2 }]'],
    [[1, 2], '[1]'],
    [[], '[]'],
    [{ a: { b: [0.5] }, c: 1 }, '{ a: { b: [0.50] } }'],
  ])('%j agrees with %s', (got, printed) => {
    expect(differences(got, printed)).toEqual([])
  })

  test.each([
    [0.17243, '0.17241'],
    [1, '2'],
    [2, '-2'],
    [Number.NaN, '1'],
    ['1', '1'],
    ['a', '"b"'],
    [0, 'null'],
    [null, '0'],
    [undefined, 'null'],
    [false, 'true'],
    [[1], '[1, 2]'],
    [[1], '[]'],
    [[2], '[1]'],
    [{ a: 1 }, '{ a: 2 }'],
    [{ a: 1 }, '{ b: 1 }'],
    [null, '{ a: 1 }'],
    [1, 'about 1'],
    [1, '1, 2'],
    [1, '{'],
    [1, 'f(1)'],
  ])('%j does not agree with %s', (got, printed) => {
    expect(differences(got, printed).length).toBe(1)
  })

  test('frozen to the last field', () => {
    const frozen = deepFreeze({ a: [{ b: 1 }] })
    expect(() => {
      ;(frozen.a[0] as { b: number }).b = 2
    }).toThrow(TypeError)
  })
})

describe('variations', () => {
  const domain = (text: Partial<Parameters<typeof contains>[0]>) => ({ text: '', whole: false, ...text })

  test('the next number is the next one', () => {
    for (const x of [1, -1, 0.1, 273.15, -273.15, 0, 1e300]) {
      expect(nextUp(x)).toBeGreaterThan(x)
      expect(nextDown(nextUp(x))).toBe(x)
      expect((x + nextUp(x)) / 2 === x || (x + nextUp(x)) / 2 === nextUp(x)).toBe(true)
    }
  })

  test.each([
    domain({ low: 0, lowIncluded: false }),
    domain({ low: 0, lowIncluded: true }),
    domain({ low: -60, lowIncluded: true, high: 300, highIncluded: true }),
    domain({ low: -60, lowIncluded: true, high: 300, highIncluded: false }),
    domain({ high: 2, highIncluded: false }),
    domain({ low: 1, lowIncluded: true, high: 4, highIncluded: true, whole: true }),
    domain({ low: 1, lowIncluded: true, whole: true }),
    domain({}),
  ])('inside is in and outside is out: %j', (one) => {
    for (const value of insideOf(one)) expect(contains(one, value), String(value)).toBe(true)
    for (const value of outsideOf(one)) expect(contains(one, value), String(value)).toBe(false)
    expect(outsideOf(one)).toEqual(expect.arrayContaining([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]))
  })

  test('one value is set, the rest stays', () => {
    const inputs = deepFreeze([{ a: 1, b: { c: [2, 3] } }])
    expect(withValue(inputs, ['i'], 'b.c.1', 9)).toEqual([{ a: 1, b: { c: [2, 9] } }])
    expect(withValue(inputs, ['i'], 'd', 9)).toEqual([{ a: 1, b: { c: [2, 3] }, d: 9 }])
    expect(withValue(inputs, ['i'], 'a', undefined)).toEqual([{ b: { c: [2, 3] } }])
    expect(withValue(inputs, ['i'], 'b.c.2', 9)).toBeUndefined()
    expect(withValue(inputs, ['i'], 'x.y', 9)).toBeUndefined()
    expect(withValue(['tin', 20], ['material', 'temperatureC'], 'temperatureC', 9)).toEqual(['tin', 9])
    expect(withValue([[1, 2]], ['list'], 'list.0', 9)).toEqual([[9, 2]])
  })
})

describe('outcomes', () => {
  const refusal = (message: string, code = 'out-of-range') => Object.assign(new RangeError(message), { name: 'DomainError', parameter: 'a', code })
  const thrown = (error: unknown) => () => {
    throw error
  }

  test('values, refusals, and what must not be', async () => {
    expect(await outcomeOf((x) => x, [1])).toEqual({ kind: 'value', value: 1 })
    expect(await outcomeOf(() => ({ a: [null, 1 / 0] }), [])).toEqual({ kind: 'wrong', why: 'result.a.1 is Infinity' })
    expect(await outcomeOf(thrown(new TypeError('x')), [])).toEqual({ kind: 'wrong', why: 'threw TypeError: x' })
    expect(await outcomeOf(thrown('x'), [])).toEqual({ kind: 'wrong', why: 'threw x' })
    expect(await outcomeOf(thrown(refusal('m')), [])).toEqual({ kind: 'refused', name: 'DomainError', parameter: 'a', code: 'out-of-range', message: 'm' })
    expect(unfinite([{ a: Number.NaN }])).toBe('result.0.a is NaN')
  })

  test('a named error is right only where the docstring names it', async () => {
    const refused = await outcomeOf(thrown(refusal('m')), [])
    expect(asDocumented(refused, ['UnknownEntryError for a metal', 'DomainError outside the domain'])).toBe(refused)
    for (const throws of [[], ['nothing'], ['UnknownEntryError, never a DomainError']])
      expect(asDocumented(refused, throws)).toEqual({ kind: 'wrong', why: 'threw DomainError, which no @throws line names: m' })
    expect(asDocumented({ kind: 'value', value: 1 }, [])).toEqual({ kind: 'value', value: 1 })
  })

  test.each([
    ['"a" is 1; allowed: above 2', 'out-of-range', true],
    ['"a" is 1; allowed: above b, 2', 'out-of-range', false],
    ['"a" is 1; allowed: above ab, 2', 'out-of-range', true],
    ['"a" is 1; allowed: values whose result is a finite number', 'out-of-range', false],
    ['"a" is 1; allowed: above 2', 'contradiction', false],
  ])('%s (%s): for its own sake %s', async (message, code, wanted) => {
    expect(refusesItself(await outcomeOf(thrown(refusal(message, code)), []), 'a', ['b'])).toBe(wanted)
  })
})
