import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { continuityProof } from './continuityProof.ts'

const base = Object.freeze({ toneBelowOhm: Object.freeze({ low: 20, high: 50 }), toned: true, currentA: 4.2, allowedDropV: 0.05 })
const refused = (parameter: string) => expect.objectContaining({ name: 'DomainError', parameter })

describe('continuityProof', () => {
  test('a tone at 4.2 A leaves 0 to 210 V open: it proves nothing of a joint', () => {
    expect(continuityProof(base)).toEqual({ verdict: 'cannot tell', dropLowV: 0, dropHighV: 210 })
  })

  test('a tone passes only a circuit that may have the whole threshold resistance', () => {
    expect(continuityProof({ ...base, currentA: 0.001, allowedDropV: 0.05 }).verdict).toBe('passes')
    expect(continuityProof({ ...base, currentA: 0.00101, allowedDropV: 0.05 }).verdict).toBe('cannot tell')
  })

  test('silence fails where the sure end of the threshold breaks the limit, and has no upper end', () => {
    expect(continuityProof({ ...base, toned: false })).toEqual({ verdict: 'fails', dropLowV: 84, dropHighV: null })
  })

  test('silence never passes, a tone never fails', () => {
    const some = fc.double({ min: 0, max: 100, noNaN: true })
    fc.assert(
      fc.property(some, some, fc.boolean(), some, some, (low, width, toned, currentA, allowedDropV) => {
        const { verdict, dropLowV, dropHighV } = continuityProof({ toneBelowOhm: { low, high: low + width }, toned, currentA, allowedDropV })
        expect(verdict).not.toBe(toned ? 'fails' : 'passes')
        expect(dropLowV).toBeLessThanOrEqual(dropHighV ?? Infinity)
      }),
    )
  })

  test('a threshold upside down, a missing one and a tone that is neither heard nor not are refused by name', () => {
    expect(() => continuityProof({ ...base, toneBelowOhm: { low: 50, high: 20 } })).toThrow(refused('toneBelowOhm.high'))
    expect(() => continuityProof({ ...base, toneBelowOhm: undefined } as never)).toThrow(refused('toneBelowOhm.low'))
    expect(() => continuityProof({ ...base, toned: 'yes' } as never)).toThrow(refused('toned'))
  })

  test('a negative, missing or infinite number is refused by name', () => {
    for (const value of [-1, undefined, Number.NaN, Infinity]) {
      expect(() => continuityProof({ ...base, currentA: value } as never)).toThrow(refused('currentA'))
      expect(() => continuityProof({ ...base, allowedDropV: value } as never)).toThrow(refused('allowedDropV'))
      expect(() => continuityProof({ ...base, toneBelowOhm: { low: value, high: 50 } } as never)).toThrow(refused('toneBelowOhm.low'))
      expect(() => continuityProof({ ...base, toneBelowOhm: { low: 20, high: value } } as never)).toThrow(refused('toneBelowOhm.high'))
    }
  })
})
