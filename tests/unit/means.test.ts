import { describe, expect, test } from 'vitest'
import { keeps, table } from '../bench/report.ts'
import type { Entry } from '../docs/extract.ts'
import { parseDocstring } from '../docs/grammar.ts'
import { placesOf, randomInputs } from '../prove/inputs.ts'
import { Random, seedOf } from '../random/random.ts'

describe('the bench', () => {
  test('a limit is kept at it and missed past it', () => {
    const figure = { what: 'x', unit: 'times' }
    expect([keeps({ ...figure, value: 1.5, atMost: 1.5 }), keeps({ ...figure, value: 1.51, atMost: 1.5 })]).toEqual([true, false])
    expect([
      keeps({ ...figure, value: 15, atLeast: 15 }),
      keeps({ ...figure, value: 14.9, atLeast: 15 }),
      keeps({ ...figure, value: Number.NaN, atMost: 1 }),
    ]).toEqual([true, false, false])
    expect(table('t', [{ ...figure, value: 2, atMost: 1 }])).toMatch(/x {2}2\.00 times {2}at most 1\.00 {2}MISSED/)
  })
})

describe('random calls', () => {
  const entry: Entry = {
    package: 'core',
    room: 'conductor',
    name: 'f',
    kind: 'function',
    place: 'f.ts:1',
    doc: parseDocstring('/**\n * A sentence.\n * @domain areaMm2: above 0\n * @domain optional turns: whole from 1 to 9\n */'),
    results: [],
    parameters: [
      {
        name: 'i',
        optional: false,
        leaves: [
          { path: 'areaMm2', kind: 'number', optional: false },
          { path: 'turns', kind: 'number', optional: true },
          { path: 'material', kind: 'string', optional: false, choices: ['tin', 'nickel'] },
          { path: 'list.0', kind: 'number', optional: false },
        ],
      },
    ],
  }
  const base = [{ areaMm2: 1, turns: 3, material: 'tin', list: [1, 2] }]
  const made = (seed: number, count: number) =>
    Array.from({ length: count }, (_, index) => randomInputs(new Random(seedOf(seed, 'f', index)), entry, [base], placesOf(entry))[0] as (typeof base)[0])

  test('the same seed makes the same calls, another makes others, and the example stays as it is', () => {
    expect(made(1, 50)).toEqual(made(1, 50))
    expect(made(1, 50)).not.toEqual(made(2, 50))
    expect(base).toEqual([{ areaMm2: 1, turns: 3, material: 'tin', list: [1, 2] }])
  })

  test('they reach inside and outside of the domains, leave out what may be absent, and change words and lists', () => {
    const inputs = made(1, 3000)
    const some = (test: (input: (typeof base)[0]) => boolean) => inputs.filter(test).length
    expect(some(({ areaMm2 }) => areaMm2 > 0 && areaMm2 < Number.POSITIVE_INFINITY)).toBeGreaterThan(2000)
    expect(some(({ areaMm2 }) => areaMm2 <= 0)).toBeGreaterThan(20)
    expect(some(({ areaMm2 }) => Number.isNaN(areaMm2))).toBeGreaterThan(3)
    expect(some(({ turns }) => turns === undefined)).toBeGreaterThan(50)
    expect(some(({ turns }) => turns > 9)).toBeGreaterThan(10)
    expect(some(({ material }) => material === 'nickel')).toBeGreaterThan(300)
    expect(some(({ material }) => (material as string) === '__proto__')).toBeGreaterThan(0)
    expect(some(({ list }) => list.length !== 2)).toBeGreaterThan(10)
  })

  test('numbers are even and near their mean', () => {
    const random = new Random(7)
    const numbers = Array.from({ length: 10_000 }, () => random.next())
    expect(numbers.reduce((sum, x) => sum + x, 0) / numbers.length).toBeCloseTo(0.5, 1)
    expect(numbers.every((x) => x >= 0 && x < 1)).toBe(true)
    expect(new Set(numbers).size).toBeGreaterThan(9990)
  })
})
