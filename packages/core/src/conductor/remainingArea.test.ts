import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { remainingAreaMm2 } from './remainingArea.ts'
import { strandedAreaMm2 } from './stranding.ts'

const new19 = Object.freeze({ areaMm2: 1, strandCount: 19, brokenStrands: 0, corrodedDepthMm: 0 })

describe('area left of a damaged conductor', () => {
  test('an undamaged one keeps its area', () => {
    expect(remainingAreaMm2(new19)).toBe(1)
  })

  test('broken strands take their share; all broken leave nothing', () => {
    expect(remainingAreaMm2({ ...new19, brokenStrands: 3 })).toBeCloseTo(16 / 19, 14)
    expect(remainingAreaMm2({ ...new19, brokenStrands: 19 })).toBe(0)
  })

  test('corrosion: what is left is the area of strands thinner by twice the depth', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 300 }),
        fc.double({ min: 0.05, max: 2, noNaN: true }),
        fc.double({ min: 0.01, max: 0.49, noNaN: true }),
        (strandCount, strandDiameterMm, depthShare) => {
          const corrodedDepthMm = depthShare * strandDiameterMm
          const areaMm2 = strandedAreaMm2({ strandCount, strandDiameterMm })
          const left = strandedAreaMm2({ strandCount, strandDiameterMm: strandDiameterMm - 2 * corrodedDepthMm })
          expect(remainingAreaMm2({ areaMm2, strandCount, brokenStrands: 0, corrodedDepthMm }) / left).toBeCloseTo(1, 9)
        },
      ),
    )
  })

  test('a strand eaten through counts nothing, at its radius and past it', () => {
    const strand = { areaMm2: Math.PI / 4, strandCount: 1, brokenStrands: 0 }
    expect(remainingAreaMm2({ ...strand, corrodedDepthMm: 0.499 })).toBeGreaterThan(0)
    for (const corrodedDepthMm of [0.5, 0.6, 1e308]) expect(remainingAreaMm2({ ...strand, corrodedDepthMm })).toBe(0)
  })

  test('more damage never leaves more, and never less than nothing', () => {
    const depth = fc.double({ min: 0, max: 0.3, noNaN: true })
    const broken = fc.integer({ min: 0, max: 19 })
    fc.assert(
      fc.property(depth, depth, broken, broken, (c1, c2, b1, b2) => {
        const less = remainingAreaMm2({ ...new19, brokenStrands: Math.min(b1, b2), corrodedDepthMm: Math.min(c1, c2) })
        const more = remainingAreaMm2({ ...new19, brokenStrands: Math.max(b1, b2), corrodedDepthMm: Math.max(c1, c2) })
        expect(more).toBeLessThanOrEqual(less)
        expect(more).toBeGreaterThanOrEqual(0)
      }),
    )
  })

  test.each([
    ['areaMm2', [0, -1, Number.NaN, Number.POSITIVE_INFINITY]],
    ['strandCount', [0, 1.5, Number.NaN, Number.POSITIVE_INFINITY]],
    ['brokenStrands', [-1, 0.5, 20, Number.NaN, Number.POSITIVE_INFINITY]],
    ['corrodedDepthMm', [-0.001, Number.NaN, Number.POSITIVE_INFINITY]],
  ] as const)('%s is refused by name at and past its edge', (parameter, values) => {
    for (const value of values)
      expect(() => remainingAreaMm2({ ...new19, [parameter]: value })).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
  })

  test('the smallest area there is still gives a number', () => {
    expect(remainingAreaMm2({ ...new19, areaMm2: Number.MIN_VALUE })).toBeGreaterThanOrEqual(0)
  })
})
