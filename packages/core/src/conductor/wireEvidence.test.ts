import { describe, expect, test } from 'vitest'
import { metal } from '../materials/index.ts'
import { type WireReadings, wireEvidence } from './wireEvidence.ts'

const areaOf = (readings: WireReadings) => {
  const [evidence] = wireEvidence(readings)
  if (evidence === undefined) throw new Error('no evidence')
  return evidence.areaMm2('annealed-copper')
}
const close = (found: { readonly low: number; readonly likely: number; readonly high: number }, wanted: readonly [number, number, number]) => {
  expect(found.low).toBeCloseTo(wanted[0], 9)
  expect(found.likely).toBeCloseTo(wanted[1], 9)
  expect(found.high).toBeCloseTo(wanted[2], 9)
}
const copper = metal('annealed-copper')

describe('what one reading says of the area of metal, by hand', () => {
  test('a solid wire of 1 to 1.21 mm is the circles of both, likely the one of their geometric mean', () => {
    close(areaOf({ strandCount: 1, conductorDiameterMm: { low: 1, high: 1.21 } }), [Math.PI / 4, (Math.PI / 4) * 1.21, (Math.PI / 4) * 1.21 ** 2])
  })

  test('of an uncounted strand of 2 mm between 68 and 100 % of the circle is metal', () => {
    close(areaOf({ conductorDiameterMm: { low: 2, high: 2 } }), [0.68 * Math.PI, 0.77 * Math.PI, Math.PI])
  })

  test('two to six strands pack by no one rule, seven fill seven ninths of their circle', () => {
    close(areaOf({ strandCount: 6, conductorDiameterMm: { low: 2, high: 2 } }), [0.5 * Math.PI, 0.65 * Math.PI, 0.85 * Math.PI])
    const seven = (7 / 9) * Math.PI
    close(areaOf({ strandCount: 7, conductorDiameterMm: { low: 2, high: 2 } }), [0.9 * seven, seven, 1.12 * seven])
  })

  test('no fill is above the whole circle', () => {
    for (const strandCount of [7, 19, 37, 61, 127]) expect(areaOf({ strandCount, conductorDiameterMm: { low: 2, high: 2 } }).high).toBeLessThanOrEqual(Math.PI)
  })

  test('19 strands of 0.2 to 0.242 mm are 19 circles', () => {
    const circle = (Math.PI / 4) * 0.2 ** 2
    close(areaOf({ strandCount: 19, strandDiameterMm: { low: 0.2, high: 0.242 } }), [19 * circle, 19 * circle * 1.21, 19 * circle * 1.21 ** 2])
  })

  test('a solid wire of 8.89 g a metre has a square millimetre of copper', () => {
    const { low, nominal, high } = copper.densityKgPerM3
    close(areaOf({ strandCount: 1, massKgPerM: { low: 0.00889, high: 0.00889 } }), [8890 / high, 8890 / nominal, 8890 / low])
  })

  test('strands run longer than their wire: the same mass is less area, the same resistance more', () => {
    const solidMass = areaOf({ strandCount: 1, massKgPerM: { low: 0.009, high: 0.01 } })
    const strandedMass = areaOf({ massKgPerM: { low: 0.009, high: 0.01 } })
    expect([strandedMass.likely / solidMass.likely, strandedMass.low / solidMass.low].every((ratio) => ratio > 0.9 && ratio < 1)).toBe(true)
    const solidOhms = areaOf({ strandCount: 1, resistanceOhmPerM: { low: 0.017, high: 0.018 } })
    const strandedOhms = areaOf({ resistanceOhmPerM: { low: 0.017, high: 0.018 } })
    expect([strandedOhms.likely / solidOhms.likely, strandedOhms.high / solidOhms.high].every((ratio) => ratio > 1 && ratio < 1.1)).toBe(true)
    // Mass and resistance of one wire give the same area once the lay is taken into account.
    expect(strandedMass.likely * strandedOhms.likely).toBeCloseTo(solidMass.likely * solidOhms.likely, 9)
  })

  test('17.241 mΩ per metre at 20 °C is 1 mm² of copper; on a warmer wire the same resistance means a larger area', () => {
    const ohms = { low: 0.017241, high: 0.017241 }
    const at20 = areaOf({ strandCount: 1, resistanceOhmPerM: ohms, temperatureC: 20 })
    expect(at20.likely).toBeCloseTo((copper.resistivity20OhmM.nominal * 1e6) / 0.017241, 9)
    expect(at20.low).toBeCloseTo((copper.resistivity20OhmM.low * 1e6) / 0.017241, 9)
    expect(at20.high).toBeCloseTo((copper.resistivity20OhmM.high * 1e6) / 0.017241, 9)
    const at70 = areaOf({ strandCount: 1, resistanceOhmPerM: ohms, temperatureC: 70 })
    expect(at70.likely / at20.likely).toBeCloseTo(1 + 50 * copper.temperatureCoefficient20PerK.nominal, 6)
  })
})
