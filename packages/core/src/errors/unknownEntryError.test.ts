import { describe, expect, test } from 'vitest'
import { entryAt } from './inner.ts'
import { UnknownEntryError } from './unknownEntryError.ts'

describe('an entry that a table lacks', () => {
  test('names the field, the value and the known entries', () => {
    const error = new UnknownEntryError('material', 'gold', ['tin', 'silver'])
    expect(error).toBeInstanceOf(RangeError)
    expect(error).toMatchObject({ name: 'UnknownEntryError', code: 'unknown-entry', parameter: 'material', value: 'gold', known: ['tin', 'silver'] })
    expect(error.message).toBe('"material" has no entry "gold"; known: tin, silver')
  })

  test('a number is printed without quotes; an empty table lists none', () => {
    expect(new UnknownEntryError('gauge', 99, []).message).toBe('"gauge" has no entry 99; known: none')
  })

  test('a long text is cut after 60 characters', () => {
    expect(new UnknownEntryError('material', 'x'.repeat(61), ['tin']).message).toBe(`"material" has no entry "${'x'.repeat(60)}"; known: tin`)
  })
})

describe('entryAt', () => {
  test('gives what the look-up gives', () => {
    expect(entryAt('conductors.0.material', () => 7)).toBe(7)
  })

  test("names the caller's field in place of the table's", () => {
    const refused = () =>
      entryAt('conductors.0.material', () => {
        throw new UnknownEntryError('material', 'gold', ['tin'])
      })
    expect(refused).toThrow(expect.objectContaining({ name: 'UnknownEntryError', parameter: 'conductors.0.material', value: 'gold', known: ['tin'] }))
  })

  test('passes any other error on as it is', () => {
    const other = new Error('another')
    expect(() =>
      entryAt('material', () => {
        throw other
      }),
    ).toThrow(other)
  })
})
