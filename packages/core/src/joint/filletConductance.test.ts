import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { breakEvenOverlapMm } from './breakEvenOverlap.ts'
import { filletConductanceSPerM } from './filletConductance.ts'
import { interfaceConductanceSPerM } from './interfaceConductance.ts'
import { transferLengthMm } from './transferLength.ts'
import { wettedStrandsResistivityOhmM, wireSpreadingOhmM } from './wireSpreading.ts'

const copperOhmM = 1.7241e-8
const wire = Object.freeze({ diameterMm: 1.13, resistivityOhmM: copperOhmM, gapMm: 0.1, bondWidthMm: 0.565, solderOhmM: 1.5e-7 })
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const refused = (parameter: string) => expect.objectContaining({ name: 'DomainError', parameter })

describe('wireSpreadingOhmM', () => {
  test('a bond all round leaves 1/(8 pi); it scales with the resistivity and falls with the width', () => {
    expect(wireSpreadingOhmM({ resistivityOhmM: 1, diameterMm: 2, bondWidthMm: 2 * Math.PI })).toBeCloseTo(1 / (8 * Math.PI), 14)
    fc.assert(
      fc.property(within(1e-9, 1e-6), within(0.1, 10), within(0.01, 1.5), within(1.001, 2), (resistivityOhmM, diameterMm, share, wider) => {
        const at = (rho: number, width: number) => wireSpreadingOhmM({ resistivityOhmM: rho, diameterMm, bondWidthMm: width * diameterMm })
        expect(at(2 * resistivityOhmM, share) / at(resistivityOhmM, share)).toBeCloseTo(2, 12)
        expect(at(resistivityOhmM, share * wider)).toBeLessThan(at(resistivityOhmM, share))
      }),
    )
  })

  test('a bond wider than the circumference is refused', () => {
    expect(() => wireSpreadingOhmM({ resistivityOhmM: 1, diameterMm: 1, bondWidthMm: 3.15 })).toThrow(refused('bondWidthMm'))
  })
})

describe('wettedStrandsResistivityOhmM', () => {
  test('all copper is copper; the bound lies between copper and solder, about 2.2 times copper at a share of 0.75', () => {
    expect(wettedStrandsResistivityOhmM({ resistivityOhmM: copperOhmM, solderOhmM: 1.5e-7, copperShare: 1 }) / copperOhmM).toBeCloseTo(1, 12)
    expect(wettedStrandsResistivityOhmM({ resistivityOhmM: copperOhmM, solderOhmM: 1.5e-7, copperShare: 0.75 }) / copperOhmM).toBeCloseTo(2.2, 1)
    expect(wettedStrandsResistivityOhmM({ resistivityOhmM: copperOhmM, solderOhmM: 3.67e-7, copperShare: 0.75 }) / copperOhmM).toBeCloseTo(4, 0)
    expect(() => wettedStrandsResistivityOhmM({ resistivityOhmM: 2e-7, solderOhmM: 1.5e-7, copperShare: 0.75 })).toThrow(refused('solderOhmM'))
    expect(() => wettedStrandsResistivityOhmM({ resistivityOhmM: 1e-8, solderOhmM: 1.5e-7, copperShare: 1.01 })).toThrow(refused('copperShare'))
  })
})

describe('filletConductanceSPerM', () => {
  test('a narrow fillet in wires that conduct perfectly is an even strip', () => {
    const narrow = { ...wire, bondWidthMm: 1e-3, resistivityOhmM: 1e-20 }
    const strip = interfaceConductanceSPerM({ bondWidthMm: 1e-3, layerMm: 0.1, layerOhmM: 1.5e-7 })
    expect(filletConductanceSPerM(narrow) / strip).toBeCloseTo(1, 4)
  })

  test('never as much as an even strip of its width; more with a wider fillet, less with a larger gap, poorer solder, poorer wire and a film', () => {
    fc.assert(
      fc.property(within(0.3, 5), within(0.02, 0.4), within(0.15, 0.9), within(1.2e-7, 3.7e-7), within(1.01, 1.1), (d, gap, width, solderOhmM, more) => {
        const it = { diameterMm: d, resistivityOhmM: copperOhmM, gapMm: gap * d, bondWidthMm: width * d, solderOhmM }
        const g = filletConductanceSPerM(it)
        expect(g).toBeLessThan(interfaceConductanceSPerM({ bondWidthMm: it.bondWidthMm, layerMm: it.gapMm, layerOhmM: solderOhmM }))
        expect(filletConductanceSPerM({ ...it, bondWidthMm: it.bondWidthMm * more })).toBeGreaterThan(g)
        expect(filletConductanceSPerM({ ...it, gapMm: it.gapMm * more })).toBeLessThan(g)
        expect(filletConductanceSPerM({ ...it, solderOhmM: solderOhmM * more })).toBeLessThan(g)
        expect(filletConductanceSPerM({ ...it, resistivityOhmM: copperOhmM * more })).toBeLessThan(g)
        expect(filletConductanceSPerM({ ...it, filmOhmM2: 1e-12 })).toBeLessThan(g)
        // Only ratios of lengths matter.
        expect(filletConductanceSPerM({ ...it, diameterMm: 2 * d, gapMm: 2 * it.gapMm, bondWidthMm: 2 * it.bondWidthMm }) / g).toBeCloseTo(1, 12)
      }),
    )
  })

  test('1 mm² wires 0.1 mm apart, fillets half and one diameter wide: transfer length 1.26 to 1.08 mm, break-even overlap 3.02 to 2.60 mm', () => {
    const ohmPerM = (copperOhmM * 4e6) / (Math.PI * 1.13 ** 2)
    const at = (bondWidthMm: number) => ({ conductorsOhmPerM: [ohmPerM, ohmPerM] as const, interfaceSPerM: filletConductanceSPerM({ ...wire, bondWidthMm }) })
    expect(transferLengthMm(at(0.565))).toBeCloseTo(1.26, 2)
    expect(transferLengthMm(at(1.13))).toBeCloseTo(1.08, 2)
    expect(breakEvenOverlapMm(at(0.565))).toBeCloseTo(3.02, 2)
    expect(breakEvenOverlapMm(at(1.13))).toBeCloseTo(2.6, 2)
  })

  test('a fillet wider and a gap larger than the wire are refused', () => {
    expect(() => filletConductanceSPerM({ ...wire, bondWidthMm: 1.14 })).toThrow(refused('bondWidthMm'))
    expect(() => filletConductanceSPerM({ ...wire, gapMm: 1.14 })).toThrow(refused('gapMm'))
  })
})
