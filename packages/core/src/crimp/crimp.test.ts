import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { barrelFill } from './barrelFill.ts'
import { compressionFraction } from './compressionFraction.ts'
import { barrelFillLimits } from './crimpDefaults.ts'
import { crimpHeightMm } from './crimpHeight.ts'

const refused = (parameter: string) => expect.objectContaining({ name: 'DomainError', parameter })
const notFinite = [Number.NaN, Infinity, -Infinity, undefined]
const area = fc.double({ min: 0.05, max: 50, noNaN: true })
const crimp = Object.freeze({ conductorAreaMm2: 1, barrelMetalAreaMm2: 1.6, compressionFraction: 0.2, crimpWidthMm: 2 })

describe('compressionFraction', () => {
  test('by hand: 1 mm2 down to 0.82 mm2 is 18 %', () => {
    expect(compressionFraction(Object.freeze({ looseAreaMm2: 1, crimpedAreaMm2: 0.82 }))).toBeCloseTo(0.18, 12)
  })

  test('a loose crimp removes nothing; the scale does not matter', () => {
    expect(compressionFraction({ looseAreaMm2: 2.5, crimpedAreaMm2: 2.5 })).toBe(0)
    fc.assert(
      fc.property(area, fc.double({ min: 0.01, max: 1, noNaN: true }), (looseAreaMm2, left) => {
        expect(compressionFraction({ looseAreaMm2, crimpedAreaMm2: left * looseAreaMm2 })).toBeCloseTo(1 - left, 12)
      }),
    )
  })

  test('more metal after the crimp than before, none at all, and what is not finite are refused by name', () => {
    for (const value of [1.0001, 0, -1, ...notFinite]) {
      expect(() => compressionFraction({ looseAreaMm2: 1, crimpedAreaMm2: value as number })).toThrow(refused('crimpedAreaMm2'))
    }
    for (const value of [0, -1, ...notFinite]) {
      expect(() => compressionFraction({ looseAreaMm2: value as number, crimpedAreaMm2: 0.8 })).toThrow(refused('looseAreaMm2'))
    }
  })
})

describe('barrelFill', () => {
  test('by hand: a solid wire of the bore fills it, one of half the bore a quarter', () => {
    expect(barrelFill({ conductorAreasMm2: [Math.PI / 4], barrelInsideMm: 1 })).toBeCloseTo(1, 12)
    expect(barrelFill({ conductorAreasMm2: [Math.PI / 16], barrelInsideMm: 1 })).toBeCloseTo(0.25, 12)
  })

  test('seven strands that touch the bore fill seven ninths', () => {
    expect(barrelFill({ conductorAreasMm2: Array.from({ length: 7 }, () => (Math.PI / 4) * 0.3 ** 2), barrelInsideMm: 0.9 })).toBeCloseTo(7 / 9, 12)
  })

  test('fills add and fall with the square of the bore; an overfull barrel is reported, not clipped', () => {
    fc.assert(
      fc.property(area, area, fc.double({ min: 0.5, max: 10, noNaN: true }), (a, b, barrelInsideMm) => {
        const both = barrelFill({ conductorAreasMm2: Object.freeze([a, b]), barrelInsideMm })
        const each = barrelFill({ conductorAreasMm2: [a], barrelInsideMm }) + barrelFill({ conductorAreasMm2: [b], barrelInsideMm })
        expect(both / each).toBeCloseTo(1, 10)
        expect((4 * barrelFill({ conductorAreasMm2: [a, b], barrelInsideMm: 2 * barrelInsideMm })) / both).toBeCloseTo(1, 10)
      }),
    )
    expect(barrelFill({ conductorAreasMm2: [2], barrelInsideMm: 1 })).toBeGreaterThan(2)
  })

  test('an empty or missing list, a wire without area and a bore of 0 are refused by path', () => {
    for (const list of [[], undefined, 1])
      expect(() => barrelFill({ conductorAreasMm2: list, barrelInsideMm: 2 } as never)).toThrow(refused('conductorAreasMm2'))
    for (const value of [0, -1, ...notFinite]) {
      expect(() => barrelFill({ conductorAreasMm2: [1, value as number], barrelInsideMm: 2 })).toThrow(refused('conductorAreasMm2.1'))
      expect(() => barrelFill({ conductorAreasMm2: [1], barrelInsideMm: value as number })).toThrow(refused('barrelInsideMm'))
    }
  })
})

describe('crimpHeightMm', () => {
  test('by hand: 1.6 mm2 of barrel and 0.8 mm2 of strands 2 mm wide are 1.2 mm high', () => {
    expect(crimpHeightMm(crimp)).toBeCloseTo(1.2, 12)
    expect(crimpHeightMm({ ...crimp, shapeFactor: 0.8 })).toBeCloseTo(1.5, 12)
  })

  test('without a barrel and without compression it is area over width', () => {
    expect(crimpHeightMm({ conductorAreaMm2: 3, barrelMetalAreaMm2: 0, compressionFraction: 0, crimpWidthMm: 2 })).toBe(1.5)
  })

  test('the section at that height holds the barrel and the squeezed strands: inverse of compressionFraction', () => {
    const share = fc.double({ min: 0, max: 0.6, noNaN: true })
    fc.assert(
      fc.property(
        area,
        area,
        share,
        fc.double({ min: 0.5, max: 20, noNaN: true }),
        fc.double({ min: 0.3, max: 1, noNaN: true }),
        (conductorAreaMm2, barrelMetalAreaMm2, wanted, crimpWidthMm, shapeFactor) => {
          const heightMm = crimpHeightMm({ conductorAreaMm2, barrelMetalAreaMm2, compressionFraction: wanted, crimpWidthMm, shapeFactor })
          const strandsMm2 = Math.min(conductorAreaMm2, heightMm * crimpWidthMm * shapeFactor - barrelMetalAreaMm2)
          expect(compressionFraction({ looseAreaMm2: conductorAreaMm2, crimpedAreaMm2: strandsMm2 })).toBeCloseTo(wanted, 8)
        },
      ),
    )
  })

  test('a harder crimp is lower', () => {
    expect(crimpHeightMm({ ...crimp, compressionFraction: 0.25 })).toBeLessThan(crimpHeightMm(crimp))
  })

  test('each number past its edge is refused by name', () => {
    for (const value of [-1e-9, ...notFinite]) {
      for (const parameter of ['conductorAreaMm2', 'barrelMetalAreaMm2', 'compressionFraction', 'crimpWidthMm']) {
        expect(() => crimpHeightMm({ ...crimp, [parameter]: value })).toThrow(refused(parameter))
      }
    }
    for (const parameter of ['conductorAreaMm2', 'crimpWidthMm']) expect(() => crimpHeightMm({ ...crimp, [parameter]: 0 })).toThrow(refused(parameter))
    expect(() => crimpHeightMm({ ...crimp, compressionFraction: 1 })).toThrow(refused('compressionFraction'))
    for (const shapeFactor of [0, 1.001, Number.NaN]) expect(() => crimpHeightMm({ ...crimp, shapeFactor })).toThrow(refused('shapeFactor'))
  })
})

test('a full barrel: seven like strands in the smallest round bore fill 7/9, close packing would fill pi/sqrt(12)', () => {
  expect(barrelFill({ conductorAreasMm2: Array.from({ length: 7 }, () => Math.PI / 4), barrelInsideMm: 3 })).toBeCloseTo(7 / 9, 12)
  expect(barrelFillLimits.high).toBeGreaterThan(7 / 9)
  expect(barrelFillLimits.high).toBeLessThan(Math.PI / Math.sqrt(12))
  expect(barrelFillLimits.low).toBeLessThan(barrelFillLimits.high)
})
