import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError, UnknownEntryError } from '../errors/index.ts'
import { contactPeakC, contactVoltageV } from './contactVoltage.ts'
import { contactVoltages, contactVoltagesOf } from './contactVoltages.ts'

function parameterOf(run: () => unknown): string {
  try {
    run()
  } catch (error) {
    if (error instanceof DomainError || error instanceof UnknownEntryError) return error.parameter
    throw error
  }
  return 'nothing refused'
}

describe('contactVoltageV and contactPeakC', () => {
  test('hand case: V^2 = 4 x 2.45e-8 (T_m^2 - T_0^2) in kelvin', () => {
    expect(contactVoltageV({ peakC: 500 - 273.15, bulkC: 300 - 273.15 })).toBeCloseTo(Math.sqrt(4 * 2.45e-8 * 160000), 14)
    expect(contactPeakC({ contactV: Math.sqrt(4 * 2.45e-8 * 160000), bulkC: 26.85 })).toBeCloseTo(226.85, 10)
  })

  test('no voltage, no rise; at a peak of the bulk temperature nothing', () => {
    expect(contactVoltageV({ peakC: 40, bulkC: 40 })).toBe(0)
    expect(contactPeakC({ contactV: 0, bulkC: 40 })).toBeCloseTo(40, 12)
  })

  test('each undoes the other; hotter parts leave less voltage to the softening point', () => {
    fc.assert(
      fc.property(fc.double({ min: -200, max: 500, noNaN: true }), fc.double({ min: 1, max: 2000, noNaN: true }), (bulkC, rise) => {
        const contactV = contactVoltageV({ peakC: bulkC + rise, bulkC })
        return Math.abs(contactPeakC({ contactV, bulkC }) - bulkC - rise) < 1e-9 && contactVoltageV({ peakC: bulkC + rise, bulkC: bulkC + rise / 2 }) < contactV
      }),
    )
  })

  test('refuses by name', () => {
    expect(() => contactVoltageV({ peakC: 39.999, bulkC: 40 })).toThrow(expect.objectContaining({ parameter: 'peakC', code: 'contradiction' }))
    expect(parameterOf(() => contactVoltageV({ peakC: 300, bulkC: -273.15 }))).toBe('bulkC')
    expect(parameterOf(() => contactVoltageV({ peakC: Number.NaN, bulkC: 20 }))).toBe('peakC')
    expect(parameterOf(() => contactVoltageV({ peakC: 1e308, bulkC: 20 }))).toBe('peakC')
    expect(parameterOf(() => contactPeakC({ contactV: -0.1, bulkC: 20 }))).toBe('contactV')
    expect(parameterOf(() => contactPeakC({ contactV: 0.1, bulkC: -273.15 }))).toBe('bulkC')
    expect(parameterOf(() => contactPeakC({ contactV: 1e308, bulkC: 20 }))).toBe('contactV')
  })
})

describe('contactVoltages', () => {
  test('recalled from Holm: copper 0.12 and 0.43 V, tin 0.07 and 0.13 V, silver 0.09 and 0.37 V, aluminium 0.1 and 0.3 V', () => {
    const rows = Object.entries(contactVoltages).map(([metal, { softeningV, meltingV }]) => [metal, softeningV, meltingV])
    expect(rows).toEqual([
      ['annealed-copper', 0.12, 0.43],
      ['hard-drawn-copper', 0.12, 0.43],
      ['tinned-copper', 0.07, 0.13],
      ['tin', 0.07, 0.13],
      ['silver', 0.09, 0.37],
      ['aluminium-1350', 0.1, 0.3],
    ])
  })

  test('softens before it melts; every row says that it is from memory', () => {
    for (const { softeningV, meltingV, provenance } of Object.values(contactVoltages)) {
      expect(softeningV).toBeLessThan(meltingV)
      expect(provenance.status).toBe('from memory')
      expect(provenance.source).toContain('Holm')
    }
  })

  test('a row by name; what is not known is said with what is', () => {
    expect(contactVoltagesOf('silver')).toBe(contactVoltages.silver)
    expect(parameterOf(() => contactVoltagesOf('nickel'))).toBe('metal')
    expect(() => contactVoltagesOf('toString' as 'tin')).toThrow(UnknownEntryError)
    try {
      contactVoltagesOf('nickel')
    } catch (error) {
      expect((error as UnknownEntryError).known).toEqual(Object.keys(contactVoltages))
    }
  })
})
