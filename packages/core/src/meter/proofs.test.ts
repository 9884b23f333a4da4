import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { dropTestVerdict } from './dropTestVerdict.ts'
import { readingInterval } from './readingInterval.ts'
import { twoWireProof } from './twoWireProof.ts'

const meter = Object.freeze({ percentOfReading: 0.5, counts: 3, resolutionOhm: 0.1, leadOhm: 0.2, leadUncertaintyOhm: 0.1 })
const proof = Object.freeze({ readingOhm: 0.3, meter, currentA: 4.2, allowedDropV: 0.05 })
const drop = Object.freeze({ measuredV: 0.012, uncertaintyV: 0.001, testA: 2, workingA: 4.2, allowedDropV: 0.05 })
const refused = (parameter: string) => expect.objectContaining({ name: 'DomainError', parameter })

describe('twoWireProof', () => {
  test('by hand: 0.3 ohm less 0.2 ohm of leads on a 0.1 ohm meter is -0.30 to 0.50 ohm, which settles nothing at 4.2 A', () => {
    const { verdict, dropLowV, dropHighV } = twoWireProof(proof)
    expect(verdict).toBe('cannot tell')
    expect(dropLowV).toBeCloseTo(4.2 * (0.1 - 0.4015), 12)
    expect(dropHighV).toBeCloseTo(4.2 * (0.1 + 0.4015), 12)
  })

  test('fails where even the low end breaks the limit', () => {
    expect(twoWireProof({ ...proof, readingOhm: 5 }).verdict).toBe('fails')
  })

  test('a high end exactly at the limit passes; a low end exactly at it does not fail', () => {
    const exact = { percentOfReading: 0, counts: 1, resolutionOhm: 0.25 }
    expect(twoWireProof({ readingOhm: 0.75, meter: exact, currentA: 2, allowedDropV: 2 }).verdict).toBe('passes')
    expect(twoWireProof({ readingOhm: 1.25, meter: exact, currentA: 2, allowedDropV: 2 }).verdict).toBe('cannot tell')
    expect(twoWireProof({ readingOhm: 1.5, meter: exact, currentA: 2, allowedDropV: 2 }).verdict).toBe('fails')
  })

  test('a current of 0 drops 0 V, without a negative zero', () => {
    expect(twoWireProof({ ...proof, currentA: 0 })).toEqual({ verdict: 'passes', dropLowV: 0, dropHighV: 0 })
  })

  test('is the reading interval times the current, and its verdict follows from the two ends', () => {
    const ohm = fc.double({ min: 0, max: 100, noNaN: true })
    fc.assert(
      fc.property(ohm, ohm, ohm, fc.double({ min: 0, max: 50, noNaN: true }), ohm, (readingOhm, counts, leadOhm, currentA, allowedDropV) => {
        const { low, high } = readingInterval({ reading: readingOhm, percentOfReading: 0.8, counts, resolution: 0.01, leadOhm })
        const got = twoWireProof({ readingOhm, meter: { percentOfReading: 0.8, counts, resolutionOhm: 0.01, leadOhm }, currentA, allowedDropV })
        expect(got.dropLowV).toBeCloseTo(low * currentA, 9)
        expect(got.dropHighV).toBeCloseTo(high * currentA, 9)
        expect(got.verdict).toBe(got.dropHighV <= allowedDropV ? 'passes' : got.dropLowV > allowedDropV ? 'fails' : 'cannot tell')
      }),
    )
  })

  test.each(['percentOfReading', 'counts', 'resolutionOhm', 'leadOhm', 'leadUncertaintyOhm'])('meter.%s is refused below 0 and where not finite', (field) => {
    for (const value of [-1e-9, Number.NaN, Infinity, null]) {
      expect(() => twoWireProof({ ...proof, meter: { ...meter, [field]: value } })).toThrow(refused(`meter.${field}`))
    }
  })

  test.each(['readingOhm', 'currentA', 'allowedDropV'])('%s is refused where missing or not finite', (parameter) => {
    for (const value of [undefined, Number.NaN, Infinity]) expect(() => twoWireProof({ ...proof, [parameter]: value })).toThrow(refused(parameter))
  })

  test('a missing meter is refused by its first field; negative current and limit by name', () => {
    expect(() => twoWireProof({ readingOhm: 1, currentA: 1, allowedDropV: 1 } as never)).toThrow(refused('meter.percentOfReading'))
    expect(() => twoWireProof({ ...proof, currentA: -1 })).toThrow(refused('currentA'))
    expect(() => twoWireProof({ ...proof, allowedDropV: -1 })).toThrow(refused('allowedDropV'))
  })
})

describe('dropTestVerdict', () => {
  test('by hand: 12 +/- 1 mV at 2 A is 23.1 to 27.3 mV at 4.2 A', () => {
    const { verdict, dropLowV, dropHighV } = dropTestVerdict(drop)
    expect(verdict).toBe('passes')
    expect(dropLowV).toBeCloseTo(0.0231, 15)
    expect(dropHighV).toBeCloseTo(0.0273, 15)
  })

  test('cannot tell where the limit lies within, fails where it lies below', () => {
    expect(dropTestVerdict({ ...drop, allowedDropV: 0.025 }).verdict).toBe('cannot tell')
    expect(dropTestVerdict({ ...drop, allowedDropV: 0.02 }).verdict).toBe('fails')
  })

  test('a reading lost in its uncertainty keeps its negative low end', () => {
    expect(dropTestVerdict({ ...drop, measuredV: 0.0005 }).dropLowV).toBeCloseTo(-0.00105, 15)
  })

  test('a reading at the working current is not scaled; the drop is proportional to the working current', () => {
    fc.assert(
      fc.property(fc.double({ min: -10, max: 10, noNaN: true }), fc.double({ min: 0.01, max: 100, noNaN: true }), (measuredV, testA) => {
        const same = dropTestVerdict({ measuredV, uncertaintyV: 0, testA, workingA: testA, allowedDropV: 1 })
        expect(same.dropLowV).toBeCloseTo(measuredV, 12)
        const twice = dropTestVerdict({ measuredV, uncertaintyV: 0.1, testA, workingA: 2 * testA, allowedDropV: 1 })
        expect(twice.dropHighV - twice.dropLowV).toBeCloseTo(0.4, 9)
      }),
    )
  })

  test('a test current of 0 is refused; a working current of 0 drops 0 V', () => {
    expect(() => dropTestVerdict({ ...drop, testA: 0 })).toThrow(refused('testA'))
    expect(dropTestVerdict({ ...drop, measuredV: -1, workingA: 0 })).toEqual({ verdict: 'passes', dropLowV: 0, dropHighV: 0 })
  })

  test.each(['measuredV', 'uncertaintyV', 'testA', 'workingA', 'allowedDropV'])('%s is refused where missing or not finite', (parameter) => {
    for (const value of [undefined, Number.NaN, Infinity, -Infinity]) expect(() => dropTestVerdict({ ...drop, [parameter]: value })).toThrow(refused(parameter))
  })

  test.each(['uncertaintyV', 'workingA', 'allowedDropV'])('%s is refused below 0', (parameter) => {
    expect(() => dropTestVerdict({ ...drop, [parameter]: -1e-12 })).toThrow(refused(parameter))
  })
})
