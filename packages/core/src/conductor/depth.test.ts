import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type MetalName, metals } from '../materials/index.ts'
import { layFactor, layFactorOfClass } from './layFactor.ts'
import { massKgPerM } from './mass.ts'
import { resistanceOhmPerM } from './resistance.ts'
import { resistanceAtTemperatureOhm } from './resistanceAtTemperature.ts'
import { resistivityOhmM } from './resistivity.ts'
import { skinDepthMm } from './skinDepth.ts'

const refused = (parameter: string) => expect.objectContaining({ name: 'DomainError', parameter })
const bad = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, undefined as unknown as number]
const positive = fc.double({ min: 0.001, max: 1000, noNaN: true })

describe('lay factor', () => {
  test('the straight core is as long as the wire; a pitch of pi diameters makes it sqrt 2', () => {
    expect(layFactor({ layerDiameterMm: 0, pitchMm: 10 })).toBe(1)
    expect(layFactor({ layerDiameterMm: 2, pitchMm: 2 * Math.PI })).toBeCloseTo(Math.SQRT2, 14)
  })

  test('only the ratio of pitch to diameter counts; a longer pitch lies straighter; never below 1', () => {
    fc.assert(
      fc.property(positive, positive, fc.double({ min: 1.01, max: 100, noNaN: true }), (layerDiameterMm, pitchMm, k) => {
        const one = layFactor({ layerDiameterMm, pitchMm })
        expect(layFactor({ layerDiameterMm: k * layerDiameterMm, pitchMm: k * pitchMm }) / one).toBeCloseTo(1, 12)
        expect(layFactor({ layerDiameterMm, pitchMm: k * pitchMm })).toBeLessThanOrEqual(one)
        expect(one).toBeGreaterThanOrEqual(1)
      }),
    )
  })

  test('ASTM B496: 2 % for a whole 19-strand conductor lies between its layers at pitches of 16 and 8 outside diameters', () => {
    // One straight strand, six on a helix of 2 strands, twelve on one of 4; five strands across.
    const whole = (pitchInDiameters: number) => {
      const pitchMm = pitchInDiameters * 5
      return (1 + 6 * layFactor({ layerDiameterMm: 2, pitchMm }) + 12 * layFactor({ layerDiameterMm: 4, pitchMm })) / 19
    }
    expect(whole(16)).toBeLessThan(1.02)
    expect(whole(8)).toBeGreaterThan(1.02)
  })

  test('by class: solid exactly 1, the finer the class the more, ranges in order, other classes refused', () => {
    expect(layFactorOfClass(1)).toMatchObject({ low: 1, nominal: 1, high: 1 })
    expect([1, 2, 5, 6].map((one) => layFactorOfClass(one as 1).nominal)).toEqual([1, 1.02, 1.03, 1.04])
    for (const odd of [0, 3, 4, 7, 1.5, ...bad]) expect(() => layFactorOfClass(odd as 1)).toThrow(refused('conductorClass'))
  })

  test.each(bad)('%d is refused by name', (value) => {
    expect(() => layFactor({ layerDiameterMm: value, pitchMm: 1 })).toThrow(refused('layerDiameterMm'))
    expect(() => layFactor({ layerDiameterMm: 1, pitchMm: value })).toThrow(refused('pitchMm'))
    expect(() => layFactor({ layerDiameterMm: 1, pitchMm: 0 })).toThrow(refused('pitchMm'))
    expect(() => layFactor({ layerDiameterMm: -0.001, pitchMm: 1 })).toThrow(refused('layerDiameterMm'))
  })
})

describe('mass', () => {
  test('a square metre of cross-section weighs its density per metre', () => {
    for (const name of Object.keys(metals) as MetalName[])
      expect(massKgPerM({ areaMm2: 1e6, material: name })).toBeCloseTo(metals[name].densityKgPerM3.nominal, 8)
  })

  test('mass times resistance is density times resistivity whatever the area: the test that tells the metal', () => {
    fc.assert(
      fc.property(positive, fc.constantFrom(...(Object.keys(metals) as MetalName[])), (areaMm2, material) => {
        const product = massKgPerM({ areaMm2, material }) * resistanceOhmPerM({ areaMm2, material, temperatureC: 20 })
        expect(product / (metals[material].densityKgPerM3.nominal * metals[material].resistivity20OhmM.nominal)).toBeCloseTo(1, 12)
      }),
    )
  })

  test('the lay lengthens it; area and lay are refused at and past their edges', () => {
    const wire = { areaMm2: 1, material: 'annealed-copper' } as const
    expect(massKgPerM({ ...wire, layFactor: 1.05 })).toBeCloseTo(1.05 * massKgPerM(wire), 14)
    for (const areaMm2 of [0, -1, ...bad]) expect(() => massKgPerM({ ...wire, areaMm2 })).toThrow(refused('areaMm2'))
    for (const factor of [0.99, 0, Number.NaN, Number.POSITIVE_INFINITY]) expect(() => massKgPerM({ ...wire, layFactor: factor })).toThrow(refused('layFactor'))
    expect(() => massKgPerM({ areaMm2: 1, material: 'gold' as MetalName })).toThrow(expect.objectContaining({ name: 'UnknownEntryError' }))
  })
})

describe('skin depth', () => {
  const copper = { material: 'annealed-copper', temperatureC: 20, frequencyHz: 50 } as const

  test('four times the frequency halves it; it grows as the root of the resistivity', () => {
    fc.assert(
      fc.property(positive, fc.double({ min: -60, max: 300, noNaN: true }), (frequencyHz, temperatureC) => {
        const one = skinDepthMm({ ...copper, frequencyHz, temperatureC })
        expect(skinDepthMm({ ...copper, frequencyHz: 4 * frequencyHz, temperatureC }) / one).toBeCloseTo(0.5, 12)
        expect((one / skinDepthMm({ ...copper, frequencyHz })) ** 2).toBeCloseTo(resistivityOhmM('annealed-copper', temperatureC) / 1.7241e-8, 10)
      }),
    )
  })

  test('steel and nickel have no single permeability: refused with those that have', () => {
    for (const material of ['low-carbon-steel', 'nickel'] as const)
      expect(() => skinDepthMm({ ...copper, material })).toThrow(
        expect.objectContaining({ name: 'UnknownEntryError', parameter: 'material', known: expect.arrayContaining(['silver']) }),
      )
    expect(() => skinDepthMm({ ...copper, material: 'gold' as MetalName })).toThrow(expect.objectContaining({ name: 'UnknownEntryError' }))
  })

  test('direct current has no skin: 0 Hz is refused, and what is no number', () => {
    for (const frequencyHz of [0, -50, ...bad]) expect(() => skinDepthMm({ ...copper, frequencyHz })).toThrow(refused('frequencyHz'))
    for (const temperatureC of [-61, 301, ...bad]) expect(() => skinDepthMm({ ...copper, temperatureC })).toThrow(refused('temperatureC'))
  })
})

describe('a resistance at another temperature', () => {
  const coefficient = fc.double({ min: 0, max: 0.006, noNaN: true })
  const celsius = fc.double({ min: -60, max: 300, noNaN: true })

  test('with the coefficient of annealed copper it is what the metal does', () => {
    fc.assert(
      fc.property(celsius, celsius, (atC, wantedC) => {
        const ratio = resistivityOhmM('annealed-copper', wantedC) / resistivityOhmM('annealed-copper', atC)
        expect(resistanceAtTemperatureOhm({ resistanceOhm: 1, atC, wantedC, coefficientPerK: 0.00393 })).toBeCloseTo(ratio, 12)
      }),
    )
  })

  test('there and back returns the reading; the same temperature changes nothing; no coefficient, no change', () => {
    fc.assert(
      fc.property(coefficient, celsius, celsius, (coefficientPerK, atC, wantedC) => {
        const there = resistanceAtTemperatureOhm({ resistanceOhm: 3, atC, wantedC, coefficientPerK })
        expect(resistanceAtTemperatureOhm({ resistanceOhm: there, atC: wantedC, wantedC: atC, coefficientPerK })).toBeCloseTo(3, 11)
        expect(resistanceAtTemperatureOhm({ resistanceOhm: 3, atC, wantedC: atC, coefficientPerK })).toBe(3)
        expect(resistanceAtTemperatureOhm({ resistanceOhm: 3, atC, wantedC, coefficientPerK: 0 })).toBe(3)
      }),
    )
  })

  test('a base moved with its coefficient, alpha_b = 1/(1/alpha20 + b - 20), gives the same', () => {
    fc.assert(
      fc.property(celsius, celsius, fc.double({ min: -60, max: 300, noNaN: true }), (atC, wantedC, base) => {
        const reading = { resistanceOhm: 1, atC, wantedC }
        const at20 = resistanceAtTemperatureOhm({ ...reading, coefficientPerK: 0.00393 })
        const moved = 1 / (1 / 0.00393 + base - 20)
        expect(resistanceAtTemperatureOhm({ ...reading, coefficientPerK: moved, coefficientAtC: base })).toBeCloseTo(at20, 11)
      }),
    )
  })

  test('edges are refused by name; a coefficient that leaves no resistance too', () => {
    const good = { resistanceOhm: 1, atC: 20, wantedC: 60, coefficientPerK: 0.004, coefficientAtC: 20 }
    for (const [parameter, past] of [
      ['resistanceOhm', [-1]],
      ['atC', [-60.1, 300.1]],
      ['wantedC', [-60.1, 300.1]],
      ['coefficientPerK', [-0.001]],
      ['coefficientAtC', [-60.1, 300.1]],
    ] as const)
      for (const value of [...past, Number.NaN, Number.POSITIVE_INFINITY])
        expect(() => resistanceAtTemperatureOhm({ ...good, [parameter]: value })).toThrow(refused(parameter))
    expect(() => resistanceAtTemperatureOhm({ ...good, wantedC: -60, coefficientPerK: 0.02 })).toThrow(refused('coefficientPerK'))
  })
})
