import { describe, expect, test } from 'vitest'
import { DomainError, UnknownEntryError } from '../errors/index.ts'
import { iec60228 } from './iec60228.ts'
import { iso6722 } from './iso6722.ts'
import { maximumResistanceOhmPerM } from './maximumResistance.ts'
import { minimumPullForceN } from './minimumPullForce.ts'
import { pullForce } from './pullForce.ts'

describe('largest resistance', () => {
  test('every row of IEC 60228 is found, and its missing values are not', () => {
    for (const { areaMm2, conductorClass, plainOhmPerKm, metalCoatedOhmPerKm } of iec60228.rows) {
      const size = Object.freeze({ standard: 'IEC 60228', areaMm2, conductorClass } as const)
      expect(maximumResistanceOhmPerM({ ...size, coating: 'plain' })).toBe(plainOhmPerKm / 1000)
      if (metalCoatedOhmPerKm === null) expect(() => maximumResistanceOhmPerM({ ...size, coating: 'metal-coated' })).toThrow(UnknownEntryError)
      else expect(maximumResistanceOhmPerM({ ...size, coating: 'metal-coated' })).toBe(metalCoatedOhmPerKm / 1000)
    }
  })

  test('every row of ISO 6722-1 is found by its size', () => {
    for (const { areaMm2, plainOhmPerKm, metalCoatedOhmPerKm } of iso6722.rows) {
      expect(maximumResistanceOhmPerM({ standard: 'ISO 6722-1', areaMm2, coating: 'plain' })).toBe(plainOhmPerKm / 1000)
      const coated = () => maximumResistanceOhmPerM({ standard: 'ISO 6722-1', areaMm2, coating: 'metal-coated' })
      if (metalCoatedOhmPerKm === null) expect(coated).toThrow(UnknownEntryError)
      else expect(coated()).toBe(metalCoatedOhmPerKm / 1000)
    }
  })

  test('nothing is interpolated: 1.2 mm2 has no row, and the refusal lists those that have', () => {
    const call = () => maximumResistanceOhmPerM({ standard: 'IEC 60228', areaMm2: 1.2, conductorClass: 5, coating: 'plain' })
    expect(call).toThrow(UnknownEntryError)
    expect(call).toThrow(expect.objectContaining({ parameter: 'areaMm2', value: 1.2, known: expect.arrayContaining(['1', '1.5', '120']) }))
  })

  test('solid metal-coated wire ends at 16 mm2, so 25 is unknown and not among the known', () => {
    const call = () => maximumResistanceOhmPerM({ standard: 'IEC 60228', areaMm2: 25, conductorClass: 1, coating: 'metal-coated' })
    expect(call).toThrow(expect.objectContaining({ known: ['0.5', '0.75', '1', '1.5', '2.5', '4', '6', '10', '16'] }))
  })

  const good = { standard: 'IEC 60228', areaMm2: 1, conductorClass: 2, coating: 'plain' } as const
  test.each([
    [{ ...good, conductorClass: undefined }, 'conductorClass', 'missing'],
    [{ ...good, conductorClass: 3 }, 'conductorClass', 'wrong-choice'],
    [{ ...good, coating: 'tinned' }, 'coating', 'wrong-choice'],
    [{ ...good, coating: undefined }, 'coating', 'missing'],
    [{ ...good, areaMm2: 0 }, 'areaMm2', 'out-of-range'],
    [{ ...good, areaMm2: -1 }, 'areaMm2', 'out-of-range'],
    [{ ...good, areaMm2: Number.NaN }, 'areaMm2', 'not-a-number'],
    [{ ...good, areaMm2: Number.POSITIVE_INFINITY }, 'areaMm2', 'not-finite'],
    [{ ...good, standard: 'ISO 6722-1' }, 'conductorClass', 'contradiction'],
  ])('%j: "%s" is refused as %s', (input, parameter, code) => {
    expect(() => maximumResistanceOhmPerM(input as unknown as typeof good)).toThrow(expect.objectContaining({ name: 'DomainError', parameter, code }))
  })

  test('an unknown standard is refused with the known ones', () => {
    const call = () => maximumResistanceOhmPerM({ ...good, standard: 'toString' as 'IEC 60228' })
    expect(call).toThrow(expect.objectContaining({ name: 'UnknownEntryError', parameter: 'standard', known: ['IEC 60228', 'ISO 6722-1'] }))
  })
})

describe('least pull-out force', () => {
  const standards = ['UL 486A-486B', 'SAE AS7928', 'IEC 60352-2', 'NASA-STD-8739.4'] as const

  test.each(standards)('every row of %s is found by each of its keys', (standard) => {
    for (const row of pullForce[standard].rows as readonly { gauge?: number; areaMm2?: number; contactSize?: number; forceN: number }[]) {
      const contact = row.contactSize === undefined ? {} : { contactSize: row.contactSize }
      if (row.gauge !== undefined) expect(minimumPullForceN({ standard, gauge: row.gauge, ...contact })).toBe(row.forceN)
      if (row.areaMm2 !== undefined) expect(minimumPullForceN({ standard, areaMm2: row.areaMm2 })).toBe(row.forceN)
    }
  })

  test('the same gauge has another force as a grounding lead and in a contact', () => {
    expect(minimumPullForceN({ standard: 'NASA-STD-8739.4', gauge: 22 })).toBe(57)
    expect(minimumPullForceN({ standard: 'NASA-STD-8739.4', gauge: 22, contactSize: 20 })).toBe(53)
  })

  test.each([
    [{ standard: 'UL 486A-486B', gauge: 11 }, 'gauge'],
    [{ standard: 'UL 486A-486B', gauge: 17.5 }, 'gauge'],
    [{ standard: 'SAE AS7928', areaMm2: 1.5 }, 'areaMm2'],
    [{ standard: 'IEC 60352-2', areaMm2: 1.1 }, 'areaMm2'],
    [{ standard: 'NASA-STD-8739.4', gauge: 20 }, 'gauge'],
    [{ standard: 'NASA-STD-8739.4', gauge: 20, contactSize: 12 }, 'gauge'],
    [{ standard: 'NASA-STD-8739.4', gauge: 20, contactSize: 18 }, 'contactSize'],
    [{ standard: 'UL 486E', gauge: 18 }, 'standard'],
  ] as const)('%j has no row: "%s" is refused with the known ones', (input, parameter) => {
    const call = () => minimumPullForceN(input as unknown as { standard: 'SAE AS7928' })
    expect(call).toThrow(UnknownEntryError)
    expect(call).toThrow(expect.objectContaining({ parameter, known: expect.arrayContaining([expect.any(String)]) }))
  })

  test.each([
    [{ standard: 'UL 486A-486B' }, 'gauge', 'missing'],
    [{ standard: 'UL 486A-486B', gauge: 18, areaMm2: 0.82 }, 'areaMm2', 'contradiction'],
    [{ standard: 'UL 486A-486B', gauge: 18, contactSize: 16 }, 'contactSize', 'contradiction'],
    [{ standard: 'UL 486A-486B', gauge: Number.NaN }, 'gauge', 'not-a-number'],
    [{ standard: 'IEC 60352-2', areaMm2: 0 }, 'areaMm2', 'out-of-range'],
    [{ standard: 'IEC 60352-2', areaMm2: Number.POSITIVE_INFINITY }, 'areaMm2', 'not-finite'],
    [{ standard: 'NASA-STD-8739.4', gauge: 20, contactSize: Number.NaN }, 'contactSize', 'not-a-number'],
  ] as const)('%j: "%s" is refused as %s', (input, parameter, code) => {
    const call = () => minimumPullForceN(input as unknown as { standard: 'SAE AS7928' })
    expect(call).toThrow(DomainError)
    expect(call).toThrow(expect.objectContaining({ parameter, code }))
  })

  test('an error lists the known sizes in the unit asked for, or in the standard’s own if it has no such column', () => {
    const known = (input: object): unknown => {
      try {
        return minimumPullForceN(input as { standard: 'SAE AS7928' })
      } catch (error) {
        return (error as UnknownEntryError).known
      }
    }
    expect(known({ standard: 'NASA-STD-8739.4', gauge: 20 })).toEqual(['24', '22'])
    expect(known({ standard: 'NASA-STD-8739.4', areaMm2: 0.5 })).toEqual(['gauge 24', 'gauge 22'])
    expect(known({ standard: 'IEC 60352-2', gauge: 7 })).toEqual(expect.arrayContaining(['30', '8']))
    expect(known({ standard: 'IEC 60352-2', gauge: 7 })).not.toContain('undefined')
  })

  test('a size that is missing is asked for in either way', () => {
    expect(() => minimumPullForceN({ standard: 'SAE AS7928' } as unknown as { standard: 'SAE AS7928'; gauge: 1 })).toThrow(
      'exactly one of "gauge" and "areaMm2"',
    )
  })
})
