import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { chooseSleeve } from './chooseSleeve.ts'
import { fitSleeve } from './fitSleeve.ts'
import { recoveryRatio } from './recoveryRatio.ts'
import type { Sleeve } from './sleeve.ts'

const mm = fc.double({ min: 0.1, max: 100, noNaN: true })

describe('recoveryRatio', () => {
  test('supplied over recovered; a tube that does not shrink has 1', () => {
    expect(recoveryRatio({ suppliedInsideMm: 12, recoveredInsideMm: 3 })).toBe(4)
    expect(recoveryRatio({ suppliedInsideMm: 3, recoveredInsideMm: 3 })).toBe(1)
  })

  test.each([
    [0, 1, 'suppliedInsideMm'],
    [Number.NaN, 1, 'suppliedInsideMm'],
    [Number.POSITIVE_INFINITY, 1, 'suppliedInsideMm'],
    [2, 0, 'recoveredInsideMm'],
    [2, Number.NEGATIVE_INFINITY, 'recoveredInsideMm'],
    [2, 2.01, 'recoveredInsideMm'],
    [1e300, 1e-300, 'recoveredInsideMm'],
  ])('supplied %d, recovered %d is refused by name', (suppliedInsideMm, recoveredInsideMm, parameter) => {
    expect(() => recoveryRatio({ suppliedInsideMm, recoveredInsideMm })).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
  })
})

describe('fitSleeve', () => {
  const tube = Object.freeze({ suppliedInsideMm: 6, recoveredInsideMm: 2, largestMm: 5, smallestMm: 2.5 })

  test('the two margins and both measures of unresolved shrink, by hand', () => {
    expect(fitSleeve(tube)).toEqual({
      slidesOver: true,
      grips: true,
      marginSupplied: expect.closeTo(0.2, 12),
      marginRecovered: 0.25,
      unresolvedOfRecovered: 0.25,
      unresolvedOfRange: 0.125,
    })
  })

  test('exactly as large is not larger: it neither slides over nor grips, with margins of 0', () => {
    expect(fitSleeve({ ...tube, largestMm: 6, smallestMm: 2 })).toEqual({
      slidesOver: false,
      grips: false,
      marginSupplied: 0,
      marginRecovered: 0,
      unresolvedOfRecovered: 0,
      unresolvedOfRange: 0,
    })
  })

  test('a negative margin says by what share it fails', () => {
    expect(fitSleeve({ ...tube, largestMm: 8 }).marginSupplied).toBe(-0.25)
    expect(fitSleeve({ ...tube, smallestMm: 1 }).marginRecovered).toBe(-0.5)
  })

  test('margins answer the verdicts, and all of it keeps its shape in another unit', () => {
    fc.assert(
      fc.property(mm, mm, mm, mm, (a, b, c, d) => {
        const [recoveredInsideMm, suppliedInsideMm] = a < b ? [a, b] : [b, a]
        // The values must differ in inches too: two neighbouring doubles in mm may round to one there.
        fc.pre(suppliedInsideMm / 25.4 > recoveredInsideMm / 25.4)
        const i = { suppliedInsideMm, recoveredInsideMm, largestMm: Math.max(c, d), smallestMm: Math.min(c, d) }
        const fit = fitSleeve(i)
        expect(fit.slidesOver).toBe(suppliedInsideMm > i.largestMm)
        if (Math.abs(fit.marginRecovered) > 1e-12) expect(fit.grips).toBe(fit.marginRecovered > 0)
        const inch = fitSleeve({
          suppliedInsideMm: suppliedInsideMm / 25.4,
          recoveredInsideMm: recoveredInsideMm / 25.4,
          largestMm: i.largestMm / 25.4,
          smallestMm: i.smallestMm / 25.4,
        })
        expect(Math.abs(inch.marginSupplied - fit.marginSupplied)).toBeLessThanOrEqual(1e-12 * (1 + Math.abs(fit.marginSupplied)))
        expect(Math.abs(inch.unresolvedOfRecovered - fit.unresolvedOfRecovered)).toBeLessThanOrEqual(1e-12 * (1 + Math.abs(fit.unresolvedOfRecovered)))
      }),
    )
  })

  test.each([
    [{ suppliedInsideMm: 2 }, 'recoveredInsideMm'],
    [{ suppliedInsideMm: -1 }, 'suppliedInsideMm'],
    [{ recoveredInsideMm: 0 }, 'recoveredInsideMm'],
    [{ largestMm: 2.4 }, 'smallestMm'],
    [{ largestMm: Number.NaN }, 'largestMm'],
    [{ smallestMm: 0 }, 'smallestMm'],
  ])('%o is refused by name', (change, parameter) => {
    expect(() => fitSleeve({ ...tube, ...change })).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
  })
})

describe('chooseSleeve', () => {
  const tube = (suppliedInsideMm: number, recoveredInsideMm: number, recoveredWallMm: number, name?: string): Sleeve =>
    Object.freeze({
      material: 'polyolefin',
      suppliedInsideMm,
      recoveredInsideMm,
      recoveredWallMm,
      longitudinalChange: { low: -0.1, high: 0.05 },
      ...(name === undefined ? {} : { name }),
    })
  const joint = { largestMm: 4, smallestMm: 2.5 }

  test('what fits first, then the slimmest, then by name, one without a name before', () => {
    const thin = tube(6, 2, 0.4, 'b')
    const alike = tube(6, 2, 0.4, 'a')
    const unnamed = tube(6, 2, 0.4)
    const thick = tube(6, 2, 1.2, 'a')
    const narrow = tube(4, 1, 0.1, 'a')
    const stock = Object.freeze([thick, thin, narrow, alike, unnamed])
    expect(chooseSleeve({ ...joint, stock }).map((choice) => choice.sleeve)).toEqual([unnamed, alike, thin, thick, narrow])
  })

  test('each reason is a code with the value and the limit that it misses', () => {
    const [choice] = chooseSleeve({ ...joint, outsideLimitMm: 4.5, stock: [tube(3.9, 2.6, 1)] })
    expect(choice?.fits).toBe(false)
    expect(choice?.reasons).toEqual([
      { code: 'does-not-slide-over', parameter: 'suppliedInsideMm', value: 3.9, limit: 4 },
      { code: 'does-not-grip', parameter: 'recoveredInsideMm', value: 2.6, limit: 2.5 },
      { code: 'outside-too-large', parameter: 'outsideMm', value: choice?.outsideMm, limit: 4.5 },
    ])
  })

  test('an outside exactly at the limit fits', () => {
    const [choice] = chooseSleeve({ ...joint, stock: [tube(6, 2, 1)] })
    expect(chooseSleeve({ ...joint, outsideLimitMm: choice?.outsideMm ?? 0, stock: [tube(6, 2, 1)] })[0]?.fits).toBe(true)
  })

  test('a tube that hangs loose on the largest diameter has its freely recovered size', () => {
    expect(chooseSleeve({ ...joint, stock: [tube(12, 5, 1)] })[0]?.outsideMm).toBe(7)
  })

  test('an empty stock gives nothing, and the stock is left as it was', () => {
    expect(chooseSleeve({ ...joint, stock: [] })).toEqual([])
  })

  test.each([
    [{ largestMm: 0 }, 'largestMm'],
    [{ smallestMm: 5 }, 'smallestMm'],
    [{ outsideLimitMm: Number.NaN }, 'outsideLimitMm'],
    [{ stock: undefined }, 'stock'],
    [{ stock: [undefined] }, 'stock.0'],
    [{ stock: [tube(6, 2, 0)] }, 'stock.0.recoveredWallMm'],
    [{ stock: [{ ...tube(6, 2, 1), adhesiveWallMm: 1.1 }] }, 'stock.0.adhesiveWallMm'],
    [{ stock: [{ ...tube(6, 2, 1), longitudinalChange: undefined }] }, 'stock.0.longitudinalChange'],
    [{ stock: [{ ...tube(6, 2, 1), longitudinalChange: { low: 0.1, high: 0 } }] }, 'stock.0.longitudinalChange.low'],
  ])('%o is refused by path', (change, parameter) => {
    const i = { ...joint, stock: [], ...change } as unknown as Parameters<typeof chooseSleeve>[0]
    expect(() => chooseSleeve(i)).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
  })

  test('an unknown sleeve material is refused; the error lists the known ones', () => {
    const stock = [{ ...tube(6, 2, 1), material: 'rubber' as 'PVC' }]
    expect(() => chooseSleeve({ ...joint, stock })).toThrow(expect.objectContaining({ name: 'UnknownEntryError' }))
  })
})
