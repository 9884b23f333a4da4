import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { astmB33, maximumTinnedResistivityOhmM } from '../tables/index.ts'
import { resistanceOhmPerM } from './resistance.ts'
import { strandedAreaMm2 } from './stranding.ts'
import { tinAreaMm2, tinnedResistanceOhmPerM } from './tin.ts'

const refused = (parameter: string) => expect.objectContaining({ name: 'DomainError', parameter })
const strand = fc.double({ min: 0.05, max: 3, noNaN: true })

describe('tin by area', () => {
  test('copper inside and tin outside add to the whole strand', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), strand, fc.double({ min: 0, max: 0.49, noNaN: true }), (strandCount, strandDiameterMm, share) => {
        const tinThicknessMm = share * strandDiameterMm
        const inside = strandedAreaMm2({ strandCount, strandDiameterMm: strandDiameterMm - 2 * tinThicknessMm })
        const whole = strandedAreaMm2({ strandCount, strandDiameterMm })
        expect((inside + tinAreaMm2({ strandCount, strandDiameterMm, tinThicknessMm })) / whole).toBeCloseTo(1, 11)
      }),
    )
  })

  test('no tin, no area; tin to the centre is all of the strand; beyond it is refused', () => {
    expect(tinAreaMm2({ strandCount: 7, strandDiameterMm: 0.3, tinThicknessMm: 0 })).toBe(0)
    expect(tinAreaMm2({ strandCount: 1, strandDiameterMm: 2, tinThicknessMm: 1 })).toBeCloseTo(Math.PI, 14)
    for (const tinThicknessMm of [1.001, -0.001, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => tinAreaMm2({ strandCount: 1, strandDiameterMm: 2, tinThicknessMm })).toThrow(refused('tinThicknessMm'))
    for (const strandCount of [0, 1.5, Number.NaN])
      expect(() => tinAreaMm2({ strandCount, strandDiameterMm: 2, tinThicknessMm: 0 })).toThrow(refused('strandCount'))
    for (const strandDiameterMm of [0, -1, Number.NaN])
      expect(() => tinAreaMm2({ strandCount: 1, strandDiameterMm, tinThicknessMm: 0 })).toThrow(refused('strandDiameterMm'))
  })
})

describe('tinned copper as two metals side by side', () => {
  const wire = { copperAreaMm2: 1, tinAreaMm2: 0.05, temperatureC: 20 }

  test('without tin it is plain copper; tin helps, but less than a seventh of what copper of its area would', () => {
    expect(tinnedResistanceOhmPerM({ ...wire, tinAreaMm2: 0 })).toBeCloseTo(
      resistanceOhmPerM({ areaMm2: 1, material: 'annealed-copper', temperatureC: 20 }),
      15,
    )
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 1, noNaN: true }), (tinAreaMm2) => {
        const helped = 1 / tinnedResistanceOhmPerM({ ...wire, tinAreaMm2 }) - 1 / tinnedResistanceOhmPerM({ ...wire, tinAreaMm2: 0 })
        const asCopper = 1 / resistanceOhmPerM({ areaMm2: tinAreaMm2, material: 'annealed-copper', temperatureC: 20 })
        expect(helped / asCopper).toBeGreaterThan(1 / 7)
        expect(helped / asCopper).toBeLessThan(1 / 6)
      }),
    )
  })

  test('ASTM B33 strands by their whole area: 1 micrometre of tin stays within the limit of its span, and finer strands lose more', () => {
    const excess = [0.1, 0.3, 1, 5].map((strandDiameterMm) => {
      const whole = { strandCount: 1, strandDiameterMm }
      const tin = tinAreaMm2({ ...whole, tinThicknessMm: 0.001 })
      const apparent =
        tinnedResistanceOhmPerM({ copperAreaMm2: strandedAreaMm2(whole) - tin, tinAreaMm2: tin, temperatureC: 20 }) * strandedAreaMm2(whole) * 1e-6
      expect(apparent).toBeLessThan(maximumTinnedResistivityOhmM(strandDiameterMm))
      return apparent / 1.7241e-8 - 1
    })
    for (const [i, value] of excess.entries()) if (i > 0) expect(value).toBeLessThan(excess[i - 1] ?? 0)
  })

  test('edges are refused by name; the tin melts at 231.93 °C', () => {
    for (const copperAreaMm2 of [0, -1, Number.NaN]) expect(() => tinnedResistanceOhmPerM({ ...wire, copperAreaMm2 })).toThrow(refused('copperAreaMm2'))
    for (const tinAreaMm2 of [-0.01, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => tinnedResistanceOhmPerM({ ...wire, tinAreaMm2 })).toThrow(refused('tinAreaMm2'))
    for (const temperatureC of [-61, 232, Number.NaN]) expect(() => tinnedResistanceOhmPerM({ ...wire, temperatureC })).toThrow(refused('temperatureC'))
    expect(() => tinnedResistanceOhmPerM({ ...wire, layFactor: 0.9 })).toThrow(refused('layFactor'))
  })
})

describe('largest resistivity of tinned wire by strand', () => {
  test('every span gives its row, and a bound belongs to the thicker wire', () => {
    for (const { thinnestMm, thickestMm, resistivity20OhmM } of astmB33.rows) {
      expect(maximumTinnedResistivityOhmM((thinnestMm + thickestMm) / 2)).toBe(resistivity20OhmM)
      expect(maximumTinnedResistivityOhmM(thinnestMm)).toBe(resistivity20OhmM)
    }
    expect(maximumTinnedResistivityOhmM(11.7)).toBe(astmB33.rows.at(-1)?.resistivity20OhmM)
  })

  test.each([0, -1, 0.0759, 11.71, Number.NaN, Number.POSITIVE_INFINITY])('%d mm is refused', (d) => {
    expect(() => maximumTinnedResistivityOhmM(d)).toThrow(refused('strandDiameterMm'))
  })
})
