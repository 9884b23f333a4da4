import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError } from '../errors/index.ts'
import { formatAwg, parseAwg } from './awgText.ts'

describe('a gauge in text', () => {
  test.each([
    ['18', 18],
    ['18 AWG', 18],
    ['AWG 18', 18],
    ['awg18', 18],
    ['18awg', 18],
    ['AWG-18', 18],
    ['#18', 18],
    ['No. 18', 18],
    ['AWG #18', 18],
    [' 40 ', 40],
    ['1', 1],
    ['0', 0],
    ['1/0', 0],
    ['1 / 0 AWG', 0],
    ['2/0', -1],
    ['AWG 2/0', -1],
    ['00', -1],
    ['000', -2],
    ['0000', -3],
    ['0000 AWG', -3],
    ['000000', -5],
    ['6/0', -5],
  ])('%j is %d', (text, gauge) => {
    expect(Object.is(parseAwg(text), gauge)).toBe(true)
  })

  test.each([
    '',
    'AWG',
    '41',
    '99',
    '018',
    '18.5',
    '-1',
    '+18',
    '7/0',
    '0/0',
    '10/0',
    '2/1',
    '0000000',
    '18 AWG 20',
    'AWG 18 AWG 18',
    '1.5 mm2',
    'eighteen',
    'NaN',
  ])('%j is refused with what would do', (text) => {
    expect(() => parseAwg(text)).toThrow(DomainError)
    expect(() => parseAwg(text)).toThrow(expect.objectContaining({ parameter: 'text', value: text }))
    expect(() => parseAwg(text)).toThrow('from 40 to 6/0')
  })

  test('what is no text is refused', () => {
    for (const odd of [18, null, {}, []]) expect(() => parseAwg(odd as unknown as string)).toThrow(DomainError)
    expect(() => parseAwg(undefined as unknown as string)).toThrow(expect.objectContaining({ code: 'missing' }))
  })
})

describe('a gauge written out', () => {
  test.each([
    [40, '40'],
    [18, '18'],
    [1, '1'],
    [0, '1/0'],
    [-0, '1/0'],
    [-1, '2/0'],
    [-3, '4/0'],
    [-5, '6/0'],
  ])('%d is %j', (gauge, text) => {
    expect(formatAwg(gauge)).toBe(text)
  })

  test('reading what was written returns the gauge', () => {
    fc.assert(
      fc.property(fc.integer({ min: -5, max: 40 }), (n) => {
        expect(parseAwg(formatAwg(n))).toBe(n)
      }),
    )
  })

  test.each([-6, 41, Number.NaN, Number.POSITIVE_INFINITY])('%d is refused by name', (gauge) => {
    expect(() => formatAwg(gauge)).toThrow(DomainError)
    expect(() => formatAwg(gauge)).toThrow('"gauge"')
  })

  test('half a gauge has no name', () => {
    expect(() => formatAwg(17.5)).toThrow(expect.objectContaining({ code: 'not-whole' }))
  })
})
