import fc from 'fast-check'
import { describe, expect, test, vi } from 'vitest'
import { bundleDiameterMm } from './bundleDiameter.ts'
import { packBundle } from './packBundle.ts'
import { searchPacking } from './packingSearch.ts'

vi.mock('./packingSearch.ts', { spy: true })

const equal = (count: number, diameterMm = 1) => Array.from({ length: count }, () => diameterMm)
const someWires = (most: number) => fc.array(fc.double({ min: 0.3, max: 6, noNaN: true }), { minLength: 1, maxLength: most })

/** The largest overlap of two wires, or of a wire with the edge. */
function worstOverlapMm(diametersMm: readonly number[]): number {
  const { diameterMm, centresMm } = packBundle(diametersMm)
  expect(centresMm.length).toBe(diametersMm.length)
  let worst = Number.NEGATIVE_INFINITY
  centresMm.forEach((one, i) => {
    worst = Math.max(worst, Math.hypot(one.xMm, one.yMm) + (diametersMm[i] ?? 0) / 2 - diameterMm / 2)
    centresMm.slice(0, i).forEach((other, j) => {
      worst = Math.max(worst, ((diametersMm[i] ?? 0) + (diametersMm[j] ?? 0)) / 2 - Math.hypot(one.xMm - other.xMm, one.yMm - other.yMm))
    })
  })
  return worst
}

describe('packBundle: a real arrangement', () => {
  test('no wire overlaps another or sticks out of the bundle, in the order of the input', () => {
    fc.assert(
      fc.property(someWires(14), (diametersMm) => {
        expect(worstOverlapMm(Object.freeze(diametersMm) as number[])).toBeLessThan(1e-13 * 6)
      }),
      { numRuns: 60 },
    )
  })

  test.each([25, 61, 100])('%i wires of mixed sizes: none overlaps, and the bundle is filled at least as well as loose strands', (count) => {
    const diametersMm = Array.from({ length: count }, (_one, wire) => 0.8 + ((wire * 7) % 10) / 5)
    expect(worstOverlapMm(diametersMm)).toBeLessThan(1e-12)
    const filled = diametersMm.reduce((sum, diameter) => sum + diameter * diameter, 0)
    expect(filled / bundleDiameterMm(diametersMm) ** 2).toBeGreaterThan(0.75)
  })

  test('the same input is packed the same way; another order of it makes the same bundle', () => {
    fc.assert(
      fc.property(someWires(9), (diametersMm) => {
        const packed = packBundle(diametersMm)
        expect(packBundle([...diametersMm])).toEqual(packed)
        expect(packBundle([...diametersMm].reverse()).diameterMm).toBe(packed.diameterMm)
      }),
      { numRuns: 30 },
    )
  })

  test('never thinner than the two thickest side by side, nor than all metal without a gap; never thicker than all in a row', () => {
    fc.assert(
      fc.property(someWires(12), (diametersMm) => {
        const bundle = bundleDiameterMm(diametersMm)
        const [d1 = 0, d2 = 0] = [...diametersMm].sort((a, b) => b - a)
        const rounding = 1e-12 * bundle
        expect(bundle).toBeGreaterThanOrEqual(d1 + d2 - rounding)
        expect(bundle).toBeGreaterThanOrEqual(Math.hypot(...diametersMm) - rounding)
        expect(bundle).toBeLessThanOrEqual(diametersMm.reduce((sum, one) => sum + one, 0) + rounding)
      }),
      { numRuns: 40 },
    )
  })

  test('in another unit it is the same bundle', () => {
    fc.assert(
      fc.property(someWires(10), fc.constantFrom(1 / 25.4, 25.4, 2, 1e-3, 1e6), (diametersMm, factor) => {
        const bundle = bundleDiameterMm(diametersMm)
        expect(Math.abs(bundleDiameterMm(diametersMm.map((one) => factor * one)) / (factor * bundle) - 1)).toBeLessThan(1e-10)
      }),
      { numRuns: 40 },
    )
  })

  test('wires a thousand times thinner than the thickest lie in its shadow', () => {
    expect(bundleDiameterMm([5, 0.004, 0.003, 0.002, 4])).toBeCloseTo(9, 9)
    expect(bundleDiameterMm([5, 0.001, 0.001, 0.001])).toBeLessThan(5.0021)
    expect(worstOverlapMm([5, 0.004, 0.003, 0.002, 4])).toBeLessThan(1e-12)
    expect(worstOverlapMm([1e300, 1, 1e-300, 2, 3])).toBeLessThan(1e288)
  })
})

describe('packBundle: wires a thousand times thinner', () => {
  /** The radii of each search, scaled to a thickest of 1. */
  const searched = (diametersMm: readonly number[]): readonly (readonly number[])[] => {
    vi.mocked(searchPacking).mockClear()
    packBundle(diametersMm)
    return vi.mocked(searchPacking).mock.calls.map(([radii]) => [...radii])
  }

  test('are not searched for: the thick ones lie as they do alone', () => {
    expect(searched([8, 0.004, 4, 6, 0.002, 2])).toEqual([[1, 0.75, 0.5, 0.25]])
    expect(searched([8, 4, 0.004, 6])).toEqual([])
    const alone = packBundle([8, 4, 6, 2])
    const { diameterMm, centresMm } = packBundle([8, 0.004, 4, 6, 0.002, 2])
    expect(diameterMm).toBeCloseTo(alone.diameterMm, 11)
    alone.centresMm.forEach(({ xMm, yMm }, wire) => {
      const there = centresMm[[0, 2, 3, 5][wire] ?? 0]
      expect([there?.xMm, there?.yMm]).toEqual([expect.closeTo(xMm, 11), expect.closeTo(yMm, 11)])
    })
    expect(worstOverlapMm([8, 0.004, 4, 6, 0.002, 2])).toBeLessThan(1e-12)
  })

  test('the bundle grows by those that find no gap, and by them alone', () => {
    // Two equal wires leave a gap beside them, which holds the thin wires.
    expect(bundleDiameterMm([4, 4, 0.003, 0.002, 0.001])).toBeCloseTo(8, 11)
    // Beside one thick wire there is no gap: the thin ones widen the bundle, by at most the thickest of them on either side.
    expect(bundleDiameterMm([4, 0.003, 0.002, 0.001])).toBeGreaterThanOrEqual(4.003)
    expect(bundleDiameterMm([4, 0.003, 0.002, 0.001])).toBeLessThan(4.0060001)
  })
})

describe('packBundle: exact bundles', () => {
  const root = Math.sqrt
  test.each([
    [1, 1],
    [2, 2],
    [3, 1 + 2 / root(3)],
    [4, 1 + root(2)],
    [5, 1 + root(2 * (1 + 1 / root(5)))],
    [6, 3],
    [7, 3],
    [8, 1 + 1 / Math.sin(Math.PI / 7)],
    [9, 1 + root(2 * (2 + root(2)))],
    [11, 1 + 1 / Math.sin(Math.PI / 9)],
    [13, 2 + root(5)],
    [15, 1 + root(6 + 2 / root(5) + 4 * root(1 + 2 / root(5)))],
    [18, 1 + root(2) + root(6)],
    [19, 1 + root(2) + root(6)],
  ])('%i equal wires by the closed form, within a millionth from above', (count, ratio) => {
    const got = bundleDiameterMm(equal(count))
    expect(got).toBeGreaterThanOrEqual(ratio * (1 - 1e-12))
    expect(got).toBeLessThan(ratio * (1 + 1e-6))
  })

  test('one wire lies in the middle, two side by side, to the last digit', () => {
    expect(packBundle([2.3])).toEqual({ diameterMm: 2.3, centresMm: [{ xMm: 0, yMm: 0 }] })
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e3, noNaN: true }), fc.double({ min: 1e-3, max: 1e3, noNaN: true }), (d1, d2) => {
        expect(bundleDiameterMm([d1, d2])).toBe(d1 + d2)
      }),
    )
  })

  test('three that all touch the edge: outer circle of Descartes', () => {
    fc.assert(
      fc.property(
        fc.tuple(fc.double({ min: 1, max: 1.5, noNaN: true }), fc.double({ min: 1, max: 1.5, noNaN: true }), fc.double({ min: 1, max: 1.5, noNaN: true })),
        (radii) => {
          const [k1, k2, k3] = radii.map((radius) => 1 / radius) as [number, number, number]
          const outer = 1 / (2 * root(k1 * k2 + k2 * k3 + k3 * k1) - (k1 + k2 + k3))
          expect(bundleDiameterMm(radii.map((radius) => 2 * radius)) / (2 * outer)).toBeCloseTo(1, 12)
        },
      ),
    )
  })

  test('a third wire that fits in the gap beside two leaves the bundle as wide as the two: up to two thirds of two equal ones', () => {
    expect(bundleDiameterMm([3, 3, 2])).toBeCloseTo(6, 12)
    expect(bundleDiameterMm([3, 3, 0.1])).toBe(6)
    expect(bundleDiameterMm([3, 3, 2.001])).toBeGreaterThan(6)
    expect(worstOverlapMm([3, 3, 2])).toBeLessThan(1e-12)
    expect(worstOverlapMm([3, 2, 0.5])).toBeLessThan(1e-12)
  })
})

describe('packBundle: what it refuses', () => {
  test.each([
    [undefined, 'diametersMm'],
    ['2 mm', 'diametersMm'],
    [[], 'diametersMm.length'],
    [equal(501), 'diametersMm.length'],
    [[1, 0], 'diametersMm.1'],
    [[1, 2, Number.NaN], 'diametersMm.2'],
    [[Number.POSITIVE_INFINITY], 'diametersMm.0'],
    [[1, undefined], 'diametersMm.1'],
    [equal(3, 1e308), 'diametersMm'],
  ])('%o names %s', (diametersMm, parameter) => {
    const i = diametersMm as unknown as readonly number[]
    expect(() => packBundle(i)).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
    if (!Array.isArray(diametersMm))
      expect(() => packBundle(i)).toThrow(expect.objectContaining({ code: diametersMm === undefined ? 'missing' : 'wrong-choice' }))
    expect(() => bundleDiameterMm(i)).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
  })

  test('five hundred wires are not too many', () => {
    vi.mocked(searchPacking).mockImplementationOnce((radii) => Float64Array.from({ length: 2 * radii.length + 1 }, (_, i) => (i < radii.length ? 2 * i : 0)))
    expect(packBundle(equal(500)).centresMm).toHaveLength(500)
  })
})

test('many equal wires lie on a lattice: none overlaps, all are inside, within 4 % of the best known 37, 61 and 91 and denser than loose strands', () => {
  for (const count of [41, 61, 91, 200, 500]) {
    const { diameterMm, centresMm } = packBundle(equal(count))
    expect(count / diameterMm ** 2).toBeGreaterThan(0.74)
    for (const [k, { xMm, yMm }] of centresMm.entries()) {
      expect(Math.hypot(xMm, yMm) + 0.5).toBeLessThanOrEqual((diameterMm / 2) * (1 + 1e-12))
      for (const other of centresMm.slice(k + 1)) expect(Math.hypot(xMm - other.xMm, yMm - other.yMm)).toBeGreaterThan(1 - 1e-12)
    }
  }
  // Best known packings of 61 and 91 circles: outer rings of 24 and 30 that touch.
  expect(bundleDiameterMm(equal(61)) / (1 + 1 / Math.sin(Math.PI / 24))).toBeLessThan(1.04)
  expect(bundleDiameterMm(equal(91)) / (1 + 1 / Math.sin(Math.PI / 30))).toBeLessThan(1.04)
})
