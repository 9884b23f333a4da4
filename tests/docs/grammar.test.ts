import { describe, expect, test } from 'vitest'
import { lacks, withShared } from './complete.ts'
import type { Entry } from './extract.ts'
import { parseDocstring, parseDomain } from './grammar.ts'

const complete = `/**
 * Tells the resistance of a run of wire,
 * warm or cold.
 *
 * A remark that is no part of the sentence.
 *
 * @equation R = rho L K/A
 * @symbol rho - resistivityOhmM - ohm m - of the metal - at the temperature
 * @symbol R - result - ohm - resistance
 * @domain areaMm2: above 0
 * @domain optional layFactor: at least 1
 * @throws DomainError outside the domain
 * @example
 * resistanceOhm({
 *   areaMm2: 1,
 *   layFactor: 1,
 * }) // 0.17241
 * @source IEC 60028, temperature rule
 */`

const entry = (comment: string, more: Partial<Entry> = {}): Entry => ({
  package: 'core',
  room: 'conductor',
  name: 'resistanceOhm',
  kind: 'function',
  place: 'packages/core/src/conductor/resistance.ts:1',
  doc: parseDocstring(comment),
  results: [{ path: '', kind: 'number', optional: false }],
  parameters: [
    {
      name: 'i',
      optional: false,
      leaves: [
        { path: 'areaMm2', kind: 'number', optional: false },
        { path: 'layFactor', kind: 'number', optional: true },
        { path: 'material', kind: 'string', optional: false, choices: ['tin'] },
        { path: 'conductorClass', kind: 'number', optional: true, choices: [1, 2] },
      ],
    },
  ],
  ...more,
})

describe('reading a docstring', () => {
  test('every part', () => {
    expect(parseDocstring(complete)).toMatchObject({
      sentence: 'Tells the resistance of a run of wire, warm or cold.',
      equations: ['R = rho L K/A'],
      symbols: [{ symbol: 'rho', path: 'resistivityOhmM', unit: 'ohm m', meaning: 'of the metal - at the temperature' }, { path: 'result' }],
      domains: [
        { path: 'areaMm2', optional: false, domain: { low: 0, lowIncluded: false } },
        { path: 'layFactor', optional: true, domain: { low: 1, lowIncluded: true } },
      ],
      throws: ['DomainError outside the domain'],
      examples: ['resistanceOhm({\n  areaMm2: 1,\n  layFactor: 1,\n}) // 0.17241'],
      sources: ['IEC 60028, temperature rule'],
      problems: [],
    })
  })

  test('one line, with a tag in it', () => {
    expect(parseDocstring('/** The row of a metal. @throws UnknownEntryError with the known names */')).toMatchObject({
      sentence: 'The row of a metal.',
      throws: ['UnknownEntryError with the known names'],
    })
  })

  test.each([
    ['@equation', '@equation says nothing'],
    ['@equation R = ρ L', 'not in plain ASCII'],
    ['@symbol rho, ohm m', 'is not "symbol - parameter - unit - meaning"'],
    ['@domain areaMm2 above 0', 'is not "[optional ]parameter'],
    ['@domain areaMm2: more than 0', 'is not "[optional ]parameter'],
    ['@remark x', '@remark is no tag of ours'],
  ])('"%s" is told', (line, problem) => {
    expect(parseDocstring(`/**\n * A sentence.\n * ${line}\n */`).problems.join()).toContain(problem)
  })
})

describe('domains', () => {
  test.each([
    ['above 0', { low: 0, lowIncluded: false, whole: false }],
    ['at least -273.15', { low: -273.15, lowIncluded: true, whole: false }],
    ['below 1e3', { high: 1000, highIncluded: false, whole: false }],
    ['at most 2', { high: 2, highIncluded: true, whole: false }],
    ['from -60 to 300', { low: -60, lowIncluded: true, high: 300, highIncluded: true, whole: false }],
    ['above 0 up to 1', { low: 0, lowIncluded: false, high: 1, highIncluded: true, whole: false }],
    ['from 0 below 1', { low: 0, lowIncluded: true, high: 1, highIncluded: false, whole: false }],
    ['above 0 below 1', { low: 0, lowIncluded: false, high: 1, highIncluded: false, whole: false }],
    ['finite', { whole: false }],
    ['whole', { whole: true }],
    ['whole from 1 to 4', { low: 1, lowIncluded: true, high: 4, highIncluded: true, whole: true }],
    ['whole at least 1', { low: 1, lowIncluded: true, whole: true }],
  ])('%s', (text, domain) => {
    expect(parseDomain(text)).toEqual({ text, ...domain })
  })

  test.each(['', 'above', 'above x', 'over 0', 'from 0', 'above 0 and below 1', '0 to 1'])('"%s" is none', (text) => {
    expect(parseDomain(text)).toBeUndefined()
  })
})

describe('what a docstring lacks', () => {
  test('a complete one lacks nothing', () => {
    expect(lacks(entry(complete))).toEqual([])
  })

  test.each(['@equation', '@throws', '@example', '@source'])('without %s', (tag) => {
    const without = complete.replace(new RegExp(`^ \\* ${tag}[\\s\\S]*?(?=^ \\* @|^ \\*/)`, 'm'), '')
    expect(lacks(entry(without))).toContain(tag)
  })

  test.each([
    [complete.replaceAll('@symbol', '@source'), '@symbol'],
    [complete.replace('@domain areaMm2: above 0', '@source x'), '@domain areaMm2'],
    [complete.replace('@domain optional layFactor', '@domain optional lay'), '@domain layFactor'],
    [complete.replace('@domain optional layFactor', '@domain optional lay'), '@domain lay belongs to no numeric parameter'],
    [complete.replace('or cold.', 'or cold'), 'a sentence with a full stop, not "Tells the resistance of a run of wire, warm or cold"'],
    [complete.replace('DomainError outside', 'an error outside'), '@throws DomainError'],
    ['', 'a sentence'],
  ])('case %#', (comment, lack) => {
    expect(lacks(entry(comment))).toContain(lack)
  })

  test('a list stands for its elements, a star for every name', () => {
    const leaves = [{ path: 'conductors.0.areaMm2', kind: 'number', optional: false } as const]
    const withDomain = (path: string) =>
      entry(complete.replace('@domain areaMm2', `@domain ${path}`).replace('@domain optional layFactor: at least 1', '@source x'), {
        parameters: [{ name: 'i', optional: false, leaves }],
      })
    expect(lacks(withDomain('conductors.1.areaMm2'))).toEqual([])
    expect(lacks(withDomain('conductors.*.areaMm2'))).toEqual([])
    expect(lacks(withDomain('areaMm2'))).toContain('@domain conductors.0.areaMm2')
  })

  test('positional parameters go by their names', () => {
    const parameters = [
      { name: 'material', optional: false, leaves: [{ path: '', kind: 'string', optional: false } as const] },
      { name: 'areaMm2', optional: false, leaves: [{ path: '', kind: 'number', optional: false } as const] },
    ]
    expect(lacks(entry(complete.replace('@domain optional layFactor: at least 1', '@source x'), { parameters }))).toEqual([])
  })

  test('domains of another function hold for the parameters that both take', () => {
    const other = entry(complete, { name: 'other' })
    const shares = entry(complete.replace('@domain areaMm2: above 0', '@domain as other').replace('layFactor: at least 1', 'layFactor: at least 2'))
    expect(lacks(shares)).toContain('@domain areaMm2')
    const whole = withShared(shares, [other, shares])
    expect(lacks(whole)).toEqual([])
    expect(whole.doc.domains.map(({ path, domain }) => `${path} ${domain.text}`)).toEqual(['layFactor at least 2', 'areaMm2 above 0'])
    expect(lacks(withShared(shares, [shares]))).toContain('@domain as other: no function is called so')
  })

  test('what the planner does with a job has no equation, but an example and its errors', () => {
    expect(lacks(entry('/** Plans the repair of a joint. */', { package: 'planner' }))).toEqual(['@throws', '@example'])
  })

  test('a type needs its sentence, a table its source too', () => {
    expect(lacks(entry('', { kind: 'type', parameters: [] }))).toEqual(['a sentence'])
    expect(lacks(entry('/** The sizes of a standard. */', { kind: 'type', parameters: [] }))).toEqual([])
    expect(lacks(entry('/** The sizes of a standard. */', { kind: 'value', room: 'tables', parameters: [] }))).toEqual(['@source'])
  })
})
