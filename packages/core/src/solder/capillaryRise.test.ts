import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { capillaryRiseMm } from './capillaryRise.ts'

const water = { densityKgPerM3: 1000, surfaceTensionNPerM: 0.0728, contactAngleRad: 0 }

describe('capillary rise', () => {
  test('water in a glass tube of 1 mm climbs 29.7 mm; in a slit half as high', () => {
    const round = capillaryRiseMm({ gapMm: 1, ...water, shape: 'round' })
    expect(round).toBeCloseTo(29.694, 2)
    expect(capillaryRiseMm({ gapMm: 1, ...water, shape: 'slit' })).toBeCloseTo(round / 2, 12)
  })

  test('inverse to the gap, and below none where it does not wet', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 5, noNaN: true }), fc.double({ min: 0, max: Math.PI, noNaN: true }), (gapMm, contactAngleRad) => {
        const one = capillaryRiseMm({ gapMm, densityKgPerM3: 8400, contactAngleRad })
        expect(capillaryRiseMm({ gapMm: 2 * gapMm, densityKgPerM3: 8400, contactAngleRad }) * 2).toBeCloseTo(one, 6)
        expect(Math.sign(Math.round(one * 1e6))).toBe(Math.sign(Math.round(Math.cos(contactAngleRad) * one * 1e6)) * Math.sign(Math.cos(contactAngleRad)))
      }),
    )
    expect(capillaryRiseMm({ gapMm: 0.1, densityKgPerM3: 8400, contactAngleRad: 2 })).toBeLessThan(0)
  })

  test('defaults: well wetted solder in a slit', () => {
    const spelt = { surfaceTensionNPerM: 0.45, contactAngleRad: Math.PI / 6, shape: 'slit' } as const
    expect(capillaryRiseMm({ gapMm: 0.1, densityKgPerM3: 8400 })).toBe(capillaryRiseMm({ gapMm: 0.1, densityKgPerM3: 8400, ...spelt }))
  })

  test.each([
    [{ gapMm: 0 }, 'gapMm'],
    [{ densityKgPerM3: -1 }, 'densityKgPerM3'],
    [{ surfaceTensionNPerM: 0 }, 'surfaceTensionNPerM'],
    [{ contactAngleRad: 3.2 }, 'contactAngleRad'],
    [{ shape: 'oval' }, 'shape'],
    [{ gapMm: 1e-310 }, 'gapMm'],
  ])('%j is refused as %s', (change, parameter) => {
    expect(() => capillaryRiseMm({ gapMm: 0.1, densityKgPerM3: 8400, ...(change as object) })).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter }),
    )
  })
})
