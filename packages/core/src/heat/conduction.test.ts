import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { criticalRadiusMm } from './criticalRadius.ts'
import { finConductanceWPerK } from './finConductance.ts'
import { insulationResistanceMKPerW } from './insulationResistance.ts'

describe('criticalRadiusMm', () => {
  test('is where the sum of wall and film resistance is least', () => {
    const [k, h] = [0.17, 15]
    const rc = criticalRadiusMm({ insulationConductivityWPerMK: k, filmWPerM2K: h })
    const total = (r: number) => Math.log(r) / (2 * Math.PI * k) + 1000 / (2 * Math.PI * r * h)
    expect(rc).toBeCloseTo(11.3333, 4)
    expect(total(rc)).toBeLessThan(total(rc * 0.99))
    expect(total(rc)).toBeLessThan(total(rc * 1.01))
  })

  test('refuses 0 and what overflows, by name', () => {
    expect(() => criticalRadiusMm({ insulationConductivityWPerMK: 0, filmWPerM2K: 1 })).toThrow(
      expect.objectContaining({ parameter: 'insulationConductivityWPerMK' }),
    )
    for (const h of [0, 1e-320, Number.NaN]) {
      expect(() => criticalRadiusMm({ insulationConductivityWPerMK: 0.2, filmWPerM2K: h })).toThrow(expect.objectContaining({ parameter: 'filmWPerM2K' }))
    }
  })
})

describe('insulationResistanceMKPerW', () => {
  test('no wall: 0; a wall e times the conductor: 1/(2 pi k)', () => {
    expect(insulationResistanceMKPerW({ conductorDiameterMm: 2, outsideDiameterMm: 2, conductivityWPerMK: 0.17 })).toBe(0)
    expect(insulationResistanceMKPerW({ conductorDiameterMm: 1, outsideDiameterMm: Math.E, conductivityWPerMK: 0.5 })).toBeCloseTo(1 / Math.PI, 14)
  })

  test('two walls in series add up, and only the ratio of the diameters counts', () => {
    const d = fc.double({ min: 0.1, max: 10, noNaN: true })
    const ratio = fc.double({ min: 1, max: 5, noNaN: true })
    fc.assert(
      fc.property(d, ratio, ratio, (d1, a, b) => {
        const R = (from: number, to: number) => insulationResistanceMKPerW({ conductorDiameterMm: from, outsideDiameterMm: to, conductivityWPerMK: 0.2 })
        expect(R(d1, d1 * a) + R(d1 * a, d1 * a * b)).toBeCloseTo(R(d1, d1 * a * b), 12)
        expect(R(7, 7 * a)).toBeCloseTo(R(d1, d1 * a), 12)
      }),
    )
  })

  test('an outside below the inside contradicts; 0 and NaN are refused by name', () => {
    const good = { conductorDiameterMm: 1, outsideDiameterMm: 2, conductivityWPerMK: 0.17 }
    expect(() => insulationResistanceMKPerW({ ...good, outsideDiameterMm: 0.99 })).toThrow(
      expect.objectContaining({ parameter: 'outsideDiameterMm', code: 'contradiction' }),
    )
    for (const parameter of ['conductorDiameterMm', 'outsideDiameterMm', 'conductivityWPerMK'] as const) {
      for (const value of [0, -1, Number.NaN, Infinity]) {
        expect(() => insulationResistanceMKPerW({ ...good, [parameter]: value })).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
      }
    }
  })
})

describe('finConductanceWPerK', () => {
  const fin = Object.freeze({ conductivityWPerMK: 391, areaMm2: 1, lossWPerMK: 0.1 })

  test('an infinitely long fin: sqrt(k A G); a long one with either end agrees', () => {
    const endless = finConductanceWPerK(fin)
    expect(endless).toBeCloseTo(Math.sqrt(391e-6 * 0.1), 15)
    expect(finConductanceWPerK({ ...fin, lengthMm: 2000 })).toBeCloseTo(endless, 14)
    expect(finConductanceWPerK({ ...fin, lengthMm: 2000, end: 'held' })).toBeCloseTo(endless, 14)
  })

  test('a fin of 2.65/m is infinitely long to within 1 %', () => {
    const m = Math.sqrt(0.1 / 391e-6)
    expect(finConductanceWPerK({ ...fin, lengthMm: 2650 / m }) / finConductanceWPerK(fin)).toBeCloseTo(0.99, 3)
  })

  test('without loss: an insulated end draws nothing, a held one k A/L', () => {
    expect(finConductanceWPerK({ ...fin, lossWPerMK: 0, lengthMm: 50 })).toBe(0)
    expect(finConductanceWPerK({ ...fin, lossWPerMK: 0 })).toBe(0)
    expect(finConductanceWPerK({ ...fin, lossWPerMK: 0, lengthMm: 50, end: 'held' })).toBeCloseTo(391e-6 / 0.05, 15)
  })

  test('insulated-end times held-end conductance is that of the infinite fin squared; longer draws more from an insulated end, less from a held one', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 300, noNaN: true }), fc.double({ min: 0.01, max: 1, noNaN: true }), (lengthMm, lossWPerMK) => {
        const Y = (length: number, end: 'insulated' | 'held') => finConductanceWPerK({ ...fin, lossWPerMK, lengthMm: length, end })
        const endless = finConductanceWPerK({ ...fin, lossWPerMK })
        expect(Math.abs((Y(lengthMm, 'insulated') * Y(lengthMm, 'held')) / endless ** 2 - 1)).toBeLessThan(1e-12)
        expect(Y(lengthMm * 1.1, 'insulated')).toBeGreaterThanOrEqual(Y(lengthMm, 'insulated'))
        expect(Y(lengthMm * 1.1, 'held')).toBeLessThanOrEqual(Y(lengthMm, 'held'))
      }),
    )
  })

  test('refuses each parameter by name', () => {
    for (const [parameter, value] of [
      ['conductivityWPerMK', 0],
      ['areaMm2', 0],
      ['lossWPerMK', -1],
      ['lengthMm', 0],
      ['areaMm2', Infinity],
      ['lengthMm', Infinity],
    ] as const) {
      expect(() => finConductanceWPerK({ ...fin, [parameter]: value })).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
    }
    expect(() => finConductanceWPerK({ ...fin, lengthMm: 1e-320, end: 'held' })).toThrow(expect.objectContaining({ parameter: 'lengthMm' }))
    expect(() => finConductanceWPerK({ ...fin, end: 'open' as 'held' })).toThrow(expect.objectContaining({ parameter: 'end' }))
  })
})
