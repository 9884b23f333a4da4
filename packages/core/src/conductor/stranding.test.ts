import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError } from '../errors/index.ts'
import { strandedAreaMm2, strandedDiameterMm } from './stranding.ts'

const count = fc.integer({ min: 1, max: 5000 })
const diameter = fc.double({ min: 0.01, max: 10, noNaN: true })

describe('stranded conductors', () => {
  test('one strand is the whole wire', () => {
    const one = Object.freeze({ strandCount: 1, strandDiameterMm: 2 })
    expect(strandedAreaMm2(one)).toBeCloseTo(Math.PI, 14)
    expect(strandedDiameterMm(one)).toBe(2)
  })

  test.each([
    [7, 3],
    [19, 5],
    [37, 7],
  ])('%d strands lie in full layers: %d across', (strandCount, across) => {
    expect(strandedDiameterMm({ strandCount, strandDiameterMm: 0.5 })).toBe(across * 0.5)
  })

  test('16 strands of 0.2 mm by hand: 0.5027 mm2 and 0.924 mm across', () => {
    expect(strandedAreaMm2({ strandCount: 16, strandDiameterMm: 0.2 })).toBeCloseTo(0.502655, 6)
    expect(strandedDiameterMm({ strandCount: 16, strandDiameterMm: 0.2 })).toBeCloseTo(0.924, 12)
  })

  test('area grows as the square of the strand, diameter as the strand', () => {
    fc.assert(
      fc.property(count, diameter, fc.double({ min: 0.1, max: 10, noNaN: true }), (strandCount, strandDiameterMm, k) => {
        const thin = { strandCount, strandDiameterMm }
        const thick = { strandCount, strandDiameterMm: k * strandDiameterMm }
        expect(strandedAreaMm2(thick) / strandedAreaMm2(thin) / k ** 2).toBeCloseTo(1, 12)
        expect(strandedDiameterMm(thick) / strandedDiameterMm(thin) / k).toBeCloseTo(1, 12)
      }),
    )
  })

  test('the strands fill 70 to 100 % of their circle, from two on never all of it', () => {
    fc.assert(
      fc.property(count, diameter, (strandCount, strandDiameterMm) => {
        const fill = strandedAreaMm2({ strandCount, strandDiameterMm }) / ((Math.PI / 4) * strandedDiameterMm({ strandCount, strandDiameterMm }) ** 2)
        expect(fill).toBeGreaterThan(0.7)
        expect(fill).toBeLessThan(strandCount === 1 ? 1 + 1e-12 : 0.8)
      }),
    )
  })

  test.each([
    [0, 'out-of-range'],
    [-7, 'out-of-range'],
    [1.5, 'not-whole'],
    [Number.NaN, 'not-a-number'],
    [Number.POSITIVE_INFINITY, 'not-finite'],
  ])('%d strands: refused as %s', (strandCount, code) => {
    for (const formula of [strandedAreaMm2, strandedDiameterMm])
      expect(() => formula({ strandCount, strandDiameterMm: 0.2 })).toThrow(expect.objectContaining({ name: 'DomainError', parameter: 'strandCount', code }))
  })

  test.each([0, -0.2, Number.NaN, Number.POSITIVE_INFINITY, 1e200])('strands of %d mm are refused', (strandDiameterMm) => {
    expect(() => strandedAreaMm2({ strandCount: 7, strandDiameterMm })).toThrow(DomainError)
    if (strandDiameterMm !== 1e200) expect(() => strandedDiameterMm({ strandCount: 7, strandDiameterMm })).toThrow('"strandDiameterMm"')
  })
})
