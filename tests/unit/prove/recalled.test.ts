import { expect, test } from 'vitest'
import { movesOf } from '../../prove/recalled/moves.ts'
import { type RecalledNumber, recalledNumbers } from '../../prove/recalled/recalledNumbers.ts'
import { sample } from '../../repository/tree.ts'

const found = (text: string): readonly RecalledNumber[] => recalledNumbers(sample({ 'packages/core/src/room/data.ts': text }))
const named = (text: string): Readonly<Record<string, readonly number[]>> =>
  Object.fromEntries(found(text).map(({ name, numbers }) => [name, numbers.map(({ value }) => value)]))

test('a record of low, nominal and high is one value; a neighbour with a provenance of its own is none of it', () => {
  const text = `export const solders = { tin: {
    shearMPa: { low: 20, nominal: 25, high: 30, provenance: { status: 'from memory', source: 'a book' } },
    densityKgPerM3: { low: 7300, nominal: 7300, high: 7300, provenance: { status: 'published', source: 'a sheet' } } } } as const`
  expect(named(text)).toEqual({ 'solders.tin.shearMPa': [20, 25, 30] })
})

test('recalled rows are one value a column, without the field that they are found by; read rows stay out', () => {
  const text = `export const table = { rows: [
    { areaMm2: 1, forceN: 10, status: 'from memory' }, { areaMm2: 2, forceN: 20, status: 'from memory' }, { areaMm2: 3, forceN: 30, status: 'published' } ] }`
  expect(named(text)).toEqual({ 'table.rows.forceN': [10, 20] })
})

test('defaults under one provenance stand alone, zero is left out; a provenance by field, by prefix or by name claims its own field', () => {
  expect(named(`export const d = { emissivity: 0.9, offset: 0, provenance: { status: 'from memory', source: 'x' } }`)).toEqual({ 'd.emissivity': [0.9] })
  expect(
    named(`export const d = { one: 3, two: 4, provenance: { one: { status: 'from memory', source: 'x' }, two: { status: 'published', source: 'y' } } }`),
  ).toEqual({ 'd.one': [3] })
  expect(named(`export const d = { drops: [{ v: 1 }], other: 2, dropsProvenance: { status: 'from memory', source: 'x' } }`)).toEqual({ 'd.drops.v': [1] })
  expect(named(`export const d = { metal: { kFactor: 41, betaC: 230, kStatus: 'from memory' } }`)).toEqual({ 'd.metal.kFactor': [41] })
  expect(named(`const provenance = { status: 'from memory', source: 'x' } as const\nexport const d = { tin: { softeningV: 0.07, provenance } }`)).toEqual({
    'd.tin.softeningV': [0.07],
  })
})

test('a band is moved to its ends, a bare number by a factor, a guess by more, a temperature by kelvins, a share to 1 at most', () => {
  const labels = (text: string) => found(text).flatMap((value) => movesOf(value).map(({ label, edits }) => [label, ...edits.map((edit) => edit.text)]))
  expect(labels(`export const d = { a: { value: 2, low: 1, high: 5, provenance: { status: 'from memory', source: 'x' } } }`)).toEqual([
    ['2 to 1', '1', '1', '1'],
    ['2 to 5', '5', '5', '5'],
  ])
  expect(labels(`export const d = { a: { value: 4, provenance: { status: 'from memory', source: 'x' } } }`)).toEqual([
    ['up by a factor 2', '8'],
    ['down by a factor 2', '2'],
  ])
  expect(labels(`export const d = { a: { value: 3, provenance: { status: 'from memory', source: 'a guess' } } }`).map(([, to]) => to)).toEqual(['9', '1'])
  expect(labels(`export const d = { emissivity: 0.9, meltingC: 100, provenance: { status: 'from memory', source: 'x' } }`).map(([, to]) => to)).toEqual([
    '1',
    '0.45',
    '120',
    '80',
  ])
})

test('an edit replaces exactly the number that it was read from', () => {
  const text = `export const d = { ductilityExponent: -0.6, provenance: { status: 'from memory', source: 'x' } }`
  const [value] = found(text)
  const [number] = value?.numbers ?? []
  expect(text.slice(number?.start, number?.end)).toBe('-0.6')
})
