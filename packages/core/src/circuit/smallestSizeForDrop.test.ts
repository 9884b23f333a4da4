import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { awgToAreaMm2, formatAwg } from '../conductor/index.ts'
import { areaForDropMm2 } from './areaForDrop.ts'
import { smallestSizeForDrop } from './smallestSizeForDrop.ts'

const refused = (parameter: string) => expect.objectContaining({ name: 'DomainError', parameter })
const base = Object.freeze({
  series: 'AWG' as const,
  currentA: 4.2,
  outLengthM: 3,
  returnLengthM: 3,
  allowedDropV: 0.36,
  material: 'annealed-copper' as const,
  temperatureC: 20,
})
const series = fc.constantFrom('AWG' as const, 'IEC 60228' as const)

describe('smallestSizeForDrop', () => {
  test('by hand: 1.21 mm2 of copper are wanted, so AWG 16 or 1.5 mm2', () => {
    expect(smallestSizeForDrop(base)).toMatchObject({ size: '16', areaMm2: awgToAreaMm2(16) })
    const metric = smallestSizeForDrop({ ...base, series: 'IEC 60228' })
    expect(metric).toMatchObject({ size: '1.5', areaMm2: 1.5 })
    expect(metric?.dropV).toBeCloseTo((0.017241 * 4.2 * 6) / 1.5, 12)
  })

  test('the next thinner size would lose more', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 40, noNaN: true }), fc.double({ min: 0.05, max: 3, noNaN: true }), (outLengthM, allowedDropV) => {
        const got = smallestSizeForDrop({ ...base, outLengthM, allowedDropV })
        if (got === null || got.size === '40') return
        expect(got.dropV).toBeLessThanOrEqual(allowedDropV * (1 + 1e-12))
        expect(got.dropV * 92 ** (2 / 39)).toBeGreaterThan(allowedDropV)
      }),
    )
  })

  test('a size asked for its own drop is given back, in both series', () => {
    for (let gauge = -3; gauge <= 40; gauge += 1) {
      const allowedDropV = (0.017241 * 4.2 * 6) / awgToAreaMm2(gauge)
      expect(smallestSizeForDrop({ ...base, allowedDropV })?.size).toBe(formatAwg(gauge))
    }
    for (const areaMm2 of [0.5, 0.75, 2.5, 120]) {
      expect(smallestSizeForDrop({ ...base, series: 'IEC 60228', allowedDropV: (0.017241 * 4.2 * 6) / areaMm2 })?.size).toBe(String(areaMm2))
    }
  })

  test('is at least the exact area, and never shrinks with current or length', () => {
    const metre = fc.double({ min: 0, max: 30, noNaN: true })
    fc.assert(
      fc.property(series, metre, metre, fc.double({ min: 0, max: 60, noNaN: true }), (name, outLengthM, returnLengthM, currentA) => {
        const input = { ...base, series: name, outLengthM, returnLengthM, currentA }
        const got = smallestSizeForDrop(input)
        const more = smallestSizeForDrop({ ...input, currentA: currentA * 1.5, outLengthM: outLengthM + 1 })
        if (got === null) expect(more).toBeNull()
        else {
          expect(got.areaMm2).toBeGreaterThanOrEqual(areaForDropMm2(input) * (1 - 1e-12))
          expect(more?.areaMm2 ?? Infinity).toBeGreaterThanOrEqual(got.areaMm2)
        }
      }),
    )
  })

  test('null where the thickest size still loses more; the thinnest where nothing is lost', () => {
    expect(smallestSizeForDrop({ ...base, currentA: 5000 })).toBeNull()
    expect(smallestSizeForDrop({ ...base, series: 'IEC 60228', currentA: 5000 })).toBeNull()
    expect(smallestSizeForDrop({ ...base, currentA: 0 })).toEqual({ size: '40', areaMm2: awgToAreaMm2(40), dropV: 0 })
    expect(smallestSizeForDrop({ ...base, series: 'IEC 60228', currentA: 0 })?.size).toBe('0.5')
  })

  test('an unknown series or metal, and each number past its edge, are refused by name', () => {
    expect(() => smallestSizeForDrop({ ...base, series: 'SWG' as never })).toThrow(
      expect.objectContaining({ name: 'UnknownEntryError', known: ['AWG', 'IEC 60228'] }),
    )
    expect(() => smallestSizeForDrop({ ...base, material: 'gold' as never })).toThrow(expect.objectContaining({ name: 'UnknownEntryError' }))
    for (const value of [-1e-9, Number.NaN, Infinity, undefined]) {
      for (const parameter of ['currentA', 'outLengthM', 'returnLengthM', 'allowedDropV']) {
        expect(() => smallestSizeForDrop({ ...base, [parameter]: value })).toThrow(refused(parameter))
      }
    }
    expect(() => smallestSizeForDrop({ ...base, allowedDropV: 0 })).toThrow(refused('allowedDropV'))
    expect(() => smallestSizeForDrop({ ...base, temperatureC: 301 })).toThrow(refused('temperatureC'))
  })
})
