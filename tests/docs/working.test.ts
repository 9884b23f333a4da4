import { describe, expect, test } from 'vitest'
import type { Entry } from './extract.ts'
import { parseDocstring } from './grammar.ts'
import { coherentFactor, printedUnit, texOfName, workingOf } from './working.ts'

const number = { kind: 'number', optional: false } as const

function entryOf(lines: readonly string[], leaves: Entry['parameters'][number]['leaves'], results: Entry['results'] = [{ path: '', ...number }]): Entry {
  const doc = parseDocstring(`/**\n * A sentence.\n${lines.map((line) => ` * ${line}`).join('\n')}\n */`)
  return { package: 'core', room: 'heat', name: 'f', kind: 'function', place: 'f.ts:1', doc, parameters: [{ name: 'i', optional: false, leaves }], results }
}

const sag = ['@equation s = m g L^2/(8 T)', '@symbol L - spanMm - mm - span', '@symbol m - massKgPerM - kg/m - mass', '@symbol g - gravity - m/s2 - gravity']
const leaves = [
  { path: 'spanMm', ...number },
  { path: 'massKgPerM', ...number },
  { path: 'pullN', ...number },
]
const whole = [...sag, '@symbol T - pullN - N - pull', '@symbol s - result - mm - sag']

describe('the working that a docstring gives', () => {
  test('factors between coherent units and those of the fields are gathered where they can be', () => {
    const working = workingOf(entryOf(whole, leaves), new Set(['gravity']))
    expect(working?.results.map(({ expression, unit }) => [expression, unit])).toEqual([['m * g * L^2/(8 * T)/1000', 'mm']])
    expect(working?.symbols.map(({ name, input, constant }) => [name, input ?? constant])).toEqual([
      ['L', 'spanMm'],
      ['m', 'massKgPerM'],
      ['g', 'gravity'],
      ['T', 'pullN'],
    ])
  })

  test('where the factors depend on the values, they stand at the names', () => {
    const mixed = [
      '@equation g = w/(rho s + c)',
      '@symbol w - w - mm - a',
      '@symbol rho - rho - ohm m - b',
      '@symbol s - s - mm - c',
      '@symbol c - c - ohm m2 - d',
    ]
    const working = workingOf(
      entryOf(
        [...mixed, '@symbol g - result - S/m - e'],
        [...'w rho s c'.split(' ')].map((path) => ({ path, ...number })),
      ),
      new Set(),
    )
    expect(working?.results[0]?.expression).toBe('(w/1000)/(rho * (s/1000) + c)')
  })

  test('a step, a default, a field of the result', () => {
    const lines = [
      '@equation y = 2 d',
      '@equation d = a^2',
      '@symbol a - a else defaults.a - m - in',
      '@symbol d - step - m2 - between',
      '@symbol y - result.y - m2 - out',
    ]
    const working = workingOf(entryOf(lines, [{ path: 'a', kind: 'number', optional: true }], [{ path: 'y', ...number }]), new Set(['defaults']))
    expect(working?.symbols[0]).toMatchObject({ input: 'a', constant: 'defaults.a' })
    expect(working?.steps.map(({ name, expression }) => [name, expression])).toEqual([['d', 'a^2']])
    expect(working?.results[0]).toMatchObject({ of: 'y', expression: '2 * d' })
  })

  test.each([
    ['a symbol that is no field', whole.map((line) => line.replace('pullN', 'somewhere'))],
    ['a symbol without a line', whole.filter((line) => !line.includes('pullN'))],
    ['a unit that is not known', whole.map((line) => line.replace('- N -', '- bushel -'))],
    ['a case in the equation', whole.map((line) => line.replace('(8 T)', '(8 T) or 0'))],
    ['no result', whole.slice(0, -1)],
    ['a list', whole.map((line) => line.replace('= m g', '= [m] g'))],
  ])('%s: the docstring gives none', (_title, lines) => {
    expect(workingOf(entryOf(lines, leaves), new Set(['gravity']))).toBeUndefined()
  })

  test('an input that may be absent needs its default', () => {
    const optional = leaves.map((leaf) => ({ ...leaf, optional: leaf.path === 'pullN' }))
    expect(workingOf(entryOf(whole, optional), new Set(['gravity']))).toBeUndefined()
  })
})

test('units and names as pages set them', () => {
  expect([coherentFactor('N mm2'), coherentFactor('W/(m2 K)'), coherentFactor('1/mm'), coherentFactor('bushel')]).toEqual([1e-6, 1, 1000, undefined])
  expect([printedUnit('W/(m2 K)'), printedUnit('ohm m'), printedUnit('C'), printedUnit('kg/m3')]).toEqual(['W/(m² K)', 'Ω m', '°C', 'kg/m³'])
  expect([texOfName('rho20'), texOfName("m'"), texOfName('T_2'), texOfName('ID_e')]).toEqual(['\\rho_{20}', "m'", 'T_{2}', 'I_{D\\,e}'])
})
