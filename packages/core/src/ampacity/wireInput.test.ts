import { describe, expect, test } from 'vitest'
import { UnknownEntryError } from '../errors/index.ts'
import { conductorTemperatureBandC, steadyCurrentBandA } from './bands.ts'
import { bundleTemperatureC } from './bundleTemperature.ts'
import { conductorTemperatureC } from './conductorTemperature.ts'
import { steadyCurrentA } from './steadyCurrent.ts'
import { temperatureAfterC } from './temperatureAfter.ts'
import { temperatureOverStepsC } from './temperatureOverSteps.ts'
import { thermalTimeConstantS } from './thermalTimeConstant.ts'
import { timeToTemperatureS } from './timeToTemperature.ts'
import { type WireHeat, wireDefaults } from './wire.ts'
import { wireState } from './wireState.ts'

const base = Object.freeze({ areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 30 })
const heat: Readonly<Record<string, (wire: WireHeat) => unknown>> = {
  conductorTemperatureC: (wire) => conductorTemperatureC({ ...wire, currentA: 10 }),
  steadyCurrentA: (wire) => steadyCurrentA({ ...wire, limitC: 70 }),
  conductorTemperatureBandC: (wire) => conductorTemperatureBandC({ ...wire, currentA: 10 }),
  steadyCurrentBandA: (wire) => steadyCurrentBandA({ ...wire, limitC: 70 }),
  wireState: (wire) => wireState({ ...wire, currentA: 10 }),
  bundleTemperatureC: (wire) => bundleTemperatureC({ ...wire, currentA: 10, loadedWires: 2, bundleOutsideMm: 5 }),
}
const store: Readonly<Record<string, (wire: WireHeat) => unknown>> = {
  thermalTimeConstantS: (wire) => thermalTimeConstantS(wire),
  temperatureAfterC: (wire) => temperatureAfterC({ ...wire, currentA: 10, timeS: 5 }),
  timeToTemperatureS: (wire) => timeToTemperatureS({ ...wire, currentA: 10, wantedC: 35 }),
  temperatureOverStepsC: (wire) => temperatureOverStepsC({ ...wire, steps: [{ currentA: 10, timeS: 5 }] }),
}
const never = [Number.NaN, Infinity, -Infinity]
const heatFields: readonly (readonly [string, readonly number[]])[] = [
  ['areaMm2', [0, -1]],
  ['conductorDiameterMm', [0, 0.9, -1]],
  ['layFactor', [0.999]],
  ['resistivity20OhmM', [0]],
  ['temperatureCoefficient20PerK', [-1e-9]],
  ['insulationThicknessMm', [-1e-9]],
  ['insulationConductivityWPerMK', [0]],
  ['emissivity', [-0.001, 1.001]],
  ['ambientC', [-173.16, 1626.86]],
  ['airSpeedMPerS', [-1e-9]],
  ['pressurePa', [0]],
  ['solarAbsorbedWPerM', [-1e-9]],
  ['filmWPerM2K', [0]],
]
const storeFields: readonly (readonly [string, readonly number[]])[] = [
  ['conductorDensityKgPerM3', [0]],
  ['conductorSpecificHeatJPerKgK', [0]],
  ['insulationDensityKgPerM3', [-1]],
  ['insulationSpecificHeatJPerKgK', [-1]],
  ['insulationShare', [-0.001, 1.001]],
]

describe.each(Object.entries({ ...heat, ...store }))('%s', (name, call) => {
  test.each(name in store ? [...heatFields, ...storeFields] : heatFields)('refuses %s by name', (parameter, values) => {
    // A number written as text is refused.
    for (const value of [...values, ...never, '1' as unknown as number]) {
      expect(() => call({ ...base, [parameter]: value } as WireHeat)).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
    }
  })

  test('refuses a missing field, an unknown correlation and an unknown metal', () => {
    for (const parameter of ['areaMm2', 'insulationThicknessMm', 'insulationConductivityWPerMK', 'ambientC']) {
      expect(() => call({ ...base, [parameter]: undefined } as never)).toThrow(expect.objectContaining({ parameter, code: 'missing' }))
    }
    expect(() => call({ ...base, material: 'unobtainium' as never })).toThrow(UnknownEntryError)
    if (!name.includes('Band')) {
      expect(() => call({ ...base, correlation: 'nusselt' as never })).toThrow(expect.objectContaining({ parameter: 'correlation', code: 'wrong-choice' }))
    }
  })

  test('a missing field takes its default from wireDefaults', () => {
    const { material, layFactor, emissivity, airSpeedMPerS, pressurePa, solarAbsorbedWPerM, correlation } = wireDefaults
    const written = { ...base, material, layFactor, emissivity, airSpeedMPerS, pressurePa, solarAbsorbedWPerM, correlation }
    expect(call(base)).toEqual(call(written))
    expect(call({ ...base, unknownLabel: 'ignored' } as WireHeat)).toEqual(call(base))
  })
})

describe('the fields that tell the metal', () => {
  test('a smooth nominal conductor may be a little thinner than the circle of its area', () => {
    expect(conductorTemperatureC({ ...base, conductorDiameterMm: 1.1, currentA: 10 })).toBeGreaterThan(30)
  })

  test('aluminium is hotter than copper by its resistance, or as resistivity20OhmM says', () => {
    const aluminium = conductorTemperatureC({ ...base, material: 'aluminium-1350', currentA: 10 })
    expect(aluminium).toBeGreaterThan(conductorTemperatureC({ ...base, currentA: 10 }) + 5)
    expect(conductorTemperatureC({ ...base, resistivity20OhmM: 2.8264e-8, temperatureCoefficient20PerK: 0.00403, currentA: 10 })).toBeCloseTo(aluminium, 0)
  })

  test('a coefficient so large that the line of resistance falls below 0 in that air is refused', () => {
    const call = () => conductorTemperatureC({ ...base, ambientC: -150, temperatureCoefficient20PerK: 0.006, currentA: 1 })
    expect(call).toThrow(expect.objectContaining({ parameter: 'ambientC' }))
    // 20 °C - 1/0.006 K.
    expect(call).toThrow('above -146.7')
  })

  test('the lay raises the resistance, not the store', () => {
    expect(thermalTimeConstantS({ ...base, layFactor: 1.2 })).toBe(thermalTimeConstantS(base))
    expect(temperatureAfterC({ ...base, layFactor: 1.2, currentA: 100, timeS: 0.1 })).toBeGreaterThan(temperatureAfterC({ ...base, currentA: 100, timeS: 0.1 }))
  })

  test.each([
    ['currentA', [-1e-9, ...never]],
    ['ceilingC', [1083.01, -174, ...never]],
  ] as const)('conductorTemperatureC refuses %s by name', (parameter, values) => {
    for (const value of values) {
      expect(() => conductorTemperatureC({ ...base, currentA: 1, [parameter]: value })).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
    }
  })

  test.each([1083.01, -174, ...never])('steadyCurrentA refuses a limit of %s', (limitC) => {
    expect(() => steadyCurrentA({ ...base, limitC })).toThrow(expect.objectContaining({ name: 'DomainError', parameter: 'limitC' }))
    expect(() => steadyCurrentBandA({ ...base, limitC })).toThrow(expect.objectContaining({ parameter: 'limitC' }))
  })

  test('times and temperatures of the transients are refused by name', () => {
    for (const timeS of [-1, ...never]) {
      expect(() => temperatureAfterC({ ...base, currentA: 1, timeS })).toThrow(expect.objectContaining({ parameter: 'timeS' }))
    }
    for (const T of [1084, -174, ...never]) {
      expect(() => timeToTemperatureS({ ...base, currentA: 1, wantedC: T })).toThrow(expect.objectContaining({ parameter: 'wantedC' }))
      expect(() => timeToTemperatureS({ ...base, currentA: 1, wantedC: 50, initialC: T })).toThrow(expect.objectContaining({ parameter: 'initialC' }))
      expect(() => thermalTimeConstantS({ ...base, atC: T })).toThrow(expect.objectContaining({ parameter: 'atC' }))
    }
  })

  test('heat beyond all numbers is refused, not returned', () => {
    for (const currentA of [1e160, Number.MAX_VALUE]) {
      expect(() => conductorTemperatureC({ ...base, currentA })).toThrow(RangeError)
      expect(() => temperatureAfterC({ ...base, currentA, timeS: 1 })).toThrow(RangeError)
    }
    expect(conductorTemperatureC({ ...base, currentA: 1e-170 })).toBeCloseTo(30, 12)
    expect(conductorTemperatureC({ ...base, areaMm2: 1e-20, currentA: 0 })).toBe(30)
    expect(() => conductorTemperatureC({ ...base, areaMm2: 1e40, currentA: 0 })).toThrow(expect.objectContaining({ parameter: 'areaMm2' }))
  })
})
