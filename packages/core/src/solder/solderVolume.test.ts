import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError } from '../errors/index.ts'
import { solderPartsMm3, solderVolumeMm3 } from './solderVolume.ts'
import { solderWireLengthMm } from './solderWireLength.ts'
import { strandVoidMm2 } from './strandVoid.ts'

const diameter = fc.double({ min: 0.05, max: 20, noNaN: true })

/** Area between two touching circles and a common tangent, by vertical slices: the larger circle is centred at 0, the smaller may overhang. */
function valleyBySlices(r1: number, r2: number): number {
  const [large, small] = r1 > r2 ? [r1, r2] : [r2, r1]
  const length = 2 * Math.sqrt(r1 * r2)
  const touching = (length * large) / (large + small)
  const n = 200_000
  let sum = 0
  for (let k = 0; k < n; k++) {
    const x = ((k + 0.5) * length) / n
    const half = small * small - (length - x) ** 2
    const chord = half > 0 ? Math.sqrt(half) : 0
    const under = large - Math.sqrt(Math.max(0, large * large - x * x))
    if (x > touching) sum += small - chord
    else sum += under - Math.max(0, Math.min(under, small + chord) - Math.min(under, small - chord))
  }
  return (sum * length) / n
}

describe('solder volume', () => {
  test('equal wires by hand: each valley (2 - pi/2) r^2', () => {
    expect(solderVolumeMm3({ overlapMm: 10, diametersMm: [2, 2] })).toBeCloseTo(20 * (2 - Math.PI / 2), 12)
  })

  test.each([
    [1, 1],
    [1, 2],
    [0.6, 3],
  ] as const)('diameters %s and %s mm against slices along the tangent', (d1, d2) => {
    expect(solderVolumeMm3({ overlapMm: 1, diametersMm: [d1, d2] }) / (2 * valleyBySlices(d1 / 2, d2 / 2))).toBeCloseTo(1, 4)
  })

  test('order does not matter, size scales, fill and voids are linear', () => {
    fc.assert(
      fc.property(
        diameter,
        diameter,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (d1, d2, valleyFill, strandVoidMm2Of) => {
          const full = solderVolumeMm3({ overlapMm: 7, diametersMm: [d1, d2] })
          expect(solderVolumeMm3({ overlapMm: 7, diametersMm: [d2, d1] }) / full).toBeCloseTo(1, 9)
          expect(solderVolumeMm3({ overlapMm: 7, diametersMm: [2 * d1, 2 * d2] }) / full).toBeCloseTo(4, 9)
          const some = solderVolumeMm3({ overlapMm: 7, diametersMm: [d1, d2], valleyFill, strandVoidMm2: strandVoidMm2Of })
          expect(some).toBeCloseTo(valleyFill * full + 7 * strandVoidMm2Of, 9)
        },
      ),
    )
  })

  test('parts: the skin follows the string round both wires', () => {
    const parts = solderPartsMm3({ overlapMm: 5, diametersMm: [2, 2], strandVoidMm2: 0.4, coatingMm: 0.1 })
    expect(parts.coatingMm3).toBeCloseTo(0.5 * (2 * Math.PI + 4), 12)
    expect(parts.strandMm3).toBe(2)
    expect(parts.totalMm3).toBeCloseTo(parts.filletMm3 + parts.strandMm3 + parts.coatingMm3, 12)
    // A thread beside a thick wire adds almost nothing to the girth.
    expect(solderPartsMm3({ overlapMm: 1, diametersMm: [2, 1e-6], coatingMm: 1 }).coatingMm3).toBeCloseTo(2 * Math.PI, 2)
    expect(solderPartsMm3({ overlapMm: 1, diametersMm: [1e-6, 2], coatingMm: 1 }).coatingMm3).toBeCloseTo(2 * Math.PI, 2)
    expect(solderPartsMm3({ overlapMm: 5, diametersMm: [2, 2] }).totalMm3).toBe(solderVolumeMm3({ overlapMm: 5, diametersMm: [2, 2] }))
  })

  test.each([
    [{ overlapMm: 0 }, 'overlapMm'],
    [{ diametersMm: [0, 1] }, 'diametersMm.0'],
    [{ diametersMm: [1, Number.NaN] }, 'diametersMm.1'],
    [{ diametersMm: [1] }, 'diametersMm'],
    [{ diametersMm: undefined }, 'diametersMm'],
    [{ valleyFill: 1.01 }, 'valleyFill'],
    [{ strandVoidMm2: -1 }, 'strandVoidMm2'],
    [{ coatingMm: -1 }, 'coatingMm'],
    [{ diametersMm: [1e200, 1e200] }, 'overlapMm'],
  ])('%j is refused as %s', (change, parameter) => {
    expect(() => solderPartsMm3({ overlapMm: 5, diametersMm: [1, 1], ...(change as object) })).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter }),
    )
  })
})

test.each([
  [undefined, 'missing'],
  [[1], 'wrong-choice'],
  ['1, 1', 'wrong-choice'],
])('diameters that are %j are %s', (diametersMm, code) => {
  expect(() => solderPartsMm3({ overlapMm: 5, diametersMm } as never)).toThrow(expect.objectContaining({ parameter: 'diametersMm', code }))
})

describe('strand voids and solder wire', () => {
  test('seven strands in their circle leave two ninths of it', () => {
    const d = 0.3
    const voids = strandVoidMm2({ areaMm2: (7 * Math.PI * d * d) / 4, diameterMm: 3 * d })
    expect(voids / ((Math.PI * (3 * d) ** 2) / 4)).toBeCloseTo(2 / 9, 12)
    expect(strandVoidMm2({ areaMm2: 1, diameterMm: Math.sqrt(4 / Math.PI) })).toBe(0)
    expect(() => strandVoidMm2({ areaMm2: 1, diameterMm: 1.1 })).toThrow(DomainError)
    expect(() => strandVoidMm2({ areaMm2: 0, diameterMm: 1.1 })).toThrow(expect.objectContaining({ parameter: 'areaMm2' }))
  })

  test('the wire fed holds the volume beside its flux', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 500, noNaN: true }),
        fc.double({ min: 0.3, max: 3, noNaN: true }),
        fc.double({ min: 0, max: 0.9, noNaN: true }),
        (volumeMm3, wireDiameterMm, fluxVolumeFraction) => {
          const length = solderWireLengthMm({ volumeMm3, wireDiameterMm, fluxVolumeFraction })
          expect((length * (1 - fluxVolumeFraction) * Math.PI * wireDiameterMm ** 2) / 4 / volumeMm3).toBeCloseTo(1, 12)
        },
      ),
    )
    expect(solderWireLengthMm({ volumeMm3: Math.PI, wireDiameterMm: 2 })).toBeCloseTo(1, 12)
  })

  test.each([
    [{ volumeMm3: 0 }, 'volumeMm3', 'out-of-range'],
    [{ wireDiameterMm: -1 }, 'wireDiameterMm', 'out-of-range'],
    [{ fluxVolumeFraction: 1 }, 'fluxVolumeFraction', 'out-of-range'],
    [{ fluxVolumeFraction: -0.1 }, 'fluxVolumeFraction', 'out-of-range'],
    [{ fluxVolumeFraction: Number.NaN }, 'fluxVolumeFraction', 'not-a-number'],
    [{ fluxVolumeFraction: '0.1' }, 'fluxVolumeFraction', 'not-a-number'],
    [{ fluxVolumeFraction: Infinity }, 'fluxVolumeFraction', 'not-finite'],
    [{ wireDiameterMm: 1e-200 }, 'wireDiameterMm', 'out-of-range'],
  ])('%j is refused as %s, %s', (change, parameter, code) => {
    expect(() => solderWireLengthMm({ volumeMm3: 5, wireDiameterMm: 1, ...(change as object) })).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter, code }),
    )
  })
})
