import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError, UnknownEntryError } from '../errors/index.ts'
import { solder } from '../materials/index.ts'
import { lapLengthForStrengthMm, lapOverlapDiameters } from './lapLength.ts'
import { lapStrengthN, sustainedStrengthShares } from './lapStrength.ts'

const positive = fc.double({ min: 1e-3, max: 1e3, noNaN: true })

describe('lap length for strength', () => {
  test('a lap of that length holds what the conductor holds, times the safety', () => {
    fc.assert(
      fc.property(positive, positive, positive, positive, positive, (tensileMPa, areaMm2, shearMPa, safetyFactor, bondWidthMm) => {
        const overlapMm = lapLengthForStrengthMm({ tensileMPa, areaMm2, shearMPa, safetyFactor, bondWidthMm })
        const { shortTimeN } = lapStrengthN({ alloy: 'Sn63Pb37', overlapMm, bondWidthMm, shearMPa })
        expect(shortTimeN / (safetyFactor * tensileMPa * areaMm2)).toBeCloseTo(1, 12)
      }),
    )
  })

  test.each(['tensileMPa', 'areaMm2', 'shearMPa', 'safetyFactor', 'bondWidthMm'])('%s: 0, NaN and infinity are refused by name', (name) => {
    const good = { tensileMPa: 220, areaMm2: 1, shearMPa: 30, safetyFactor: 1, bondWidthMm: 1 }
    for (const value of [0, -1, Number.NaN, Infinity]) {
      expect(() => lapLengthForStrengthMm({ ...good, [name]: value })).toThrow(expect.objectContaining({ name: 'DomainError', parameter: name }))
    }
  })

  test('a result out of reach is refused', () => {
    expect(() => lapLengthForStrengthMm({ tensileMPa: 1e200, areaMm2: 1e200, shearMPa: 1, safetyFactor: 1, bondWidthMm: 1 })).toThrow(DomainError)
  })

  test('the workmanship rule spans three to six diameters', () => {
    expect([lapOverlapDiameters.low, lapOverlapDiameters.high]).toEqual([3, 6])
  })
})

describe('lap strength', () => {
  test('an eighteenth is left under a load that stays; only the tested alloy is no extrapolation', () => {
    const at = (alloy: 'Sn50Pb50' | 'SAC305') => lapStrengthN({ alloy, overlapMm: 6, bondWidthMm: 1.5, shearMPa: 20 })
    expect(at('Sn50Pb50')).toEqual({ shortTimeN: 180, sustainedN: 10, extrapolated: false })
    expect(at('SAC305')).toEqual({ shortTimeN: 180, sustainedN: 10, extrapolated: true })
    expect(sustainedStrengthShares.hours).toBe(10_000)
  })

  test("the shear strength is the alloy's unless given", () => {
    const shear = solder('Sn63Pb37').shearMPa
    expect(lapStrengthN({ alloy: 'Sn63Pb37', overlapMm: 2, bondWidthMm: 1 }).shortTimeN).toBeCloseTo(2 * (shear?.nominal ?? 0), 12)
  })

  test('refusals', () => {
    expect(() => lapStrengthN({ alloy: 'Sn1' as 'SAC305', overlapMm: 2, bondWidthMm: 1 })).toThrow(UnknownEntryError)
    for (const name of ['overlapMm', 'bondWidthMm', 'shearMPa']) {
      expect(() => lapStrengthN({ alloy: 'SAC305', overlapMm: 2, bondWidthMm: 1, shearMPa: 30, [name]: 0 })).toThrow(
        expect.objectContaining({ name: 'DomainError', parameter: name }),
      )
    }
    expect(() => lapStrengthN({ alloy: 'SAC305', overlapMm: 1e200, bondWidthMm: 1e200, shearMPa: 30 })).toThrow(DomainError)
  })
})
