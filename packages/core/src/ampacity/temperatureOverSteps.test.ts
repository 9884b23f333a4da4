import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { conductorTemperatureC } from './conductorTemperature.ts'
import { dutyCurrentA } from './dutyCurrent.ts'
import { temperatureAfterC } from './temperatureAfter.ts'
import { temperatureOverStepsC } from './temperatureOverSteps.ts'
import { thermalTimeConstantS } from './thermalTimeConstant.ts'

const wire = Object.freeze({ areaMm2: 1.5, insulationThicknessMm: 0.7, insulationConductivityWPerMK: 0.17, ambientC: 25 })
const anySteps = fc.array(fc.record({ currentA: fc.double({ min: 0, max: 30, noNaN: true }), timeS: fc.double({ min: 0.1, max: 300, noNaN: true }) }), {
  minLength: 1,
  maxLength: 4,
})

describe('temperatureOverStepsC', () => {
  test('once: each step goes on where the last one ended, and the peak counts the start', () => {
    const steps = Object.freeze([
      { currentA: 0, timeS: 20 },
      { currentA: 40, timeS: 30 },
      { currentA: 5, timeS: 60 },
    ])
    const { endsC, peakC } = temperatureOverStepsC({ ...wire, steps, initialC: 90 })
    let T = 90
    for (const [index, step] of steps.entries()) {
      T = temperatureAfterC({ ...wire, ...step, initialC: T })
      expect(endsC[index]).toBeCloseTo(T, 9)
    }
    expect(peakC).toBe(Math.max(90, ...endsC))
    expect(temperatureOverStepsC({ ...wire, steps: [{ currentA: 0, timeS: 1 }], initialC: 90 }).peakC).toBe(90)
    expect(temperatureOverStepsC({ ...wire, steps: [{ currentA: 0, timeS: 1 }] }).endsC).toEqual([25])
  })

  test('repeated: the cycle ends where it starts, whatever initialC', () => {
    fc.assert(
      fc.property(anySteps, fc.double({ min: -40, max: 200, noNaN: true }), (steps, initialC) => {
        const cycle = temperatureOverStepsC({ ...wire, steps, repeated: true, initialC })
        const last = cycle.endsC.at(-1) as number
        const again = temperatureOverStepsC({ ...wire, steps, initialC: last })
        for (const [index, endC] of cycle.endsC.entries()) expect(Math.abs(endC - (again.endsC[index] as number))).toBeLessThan(1e-5)
        expect(cycle.peakC).toBe(Math.max(...cycle.endsC))
        expect(cycle).toEqual(temperatureOverStepsC({ ...wire, steps, repeated: true }))
      }),
    )
  })

  test('repeated: as a hundred cycles one after another', () => {
    const steps = [
      { currentA: 45, timeS: 10 },
      { currentA: 0, timeS: 30 },
    ]
    const many = temperatureOverStepsC({ ...wire, steps: Array.from({ length: 100 }, () => steps).flat() })
    const cycle = temperatureOverStepsC({ ...wire, steps, repeated: true })
    expect(cycle.endsC[0]).toBeCloseTo(many.endsC.at(-2) as number, 4)
    expect(cycle.endsC[1]).toBeCloseTo(many.endsC.at(-1) as number, 4)
  })

  test('one step repeated is the steady temperature; short cycles are the square mean', () => {
    expect(temperatureOverStepsC({ ...wire, steps: [{ currentA: 20, timeS: 7 }], repeated: true }).peakC).toBeCloseTo(
      conductorTemperatureC({ ...wire, currentA: 20 }),
      6,
    )
    const fast = [
      { currentA: 30, timeS: 1e-4 },
      { currentA: 10, timeS: 1e-4 },
    ]
    expect(temperatureOverStepsC({ ...wire, steps: fast, repeated: true }).peakC).toBeCloseTo(
      conductorTemperatureC({ ...wire, currentA: Math.sqrt((30 ** 2 + 10 ** 2) / 2) }),
      3,
    )
  })

  test('with a film and no rise of resistance it is dutyCurrentA: the same peak as the steady current', () => {
    const film = { ...wire, filmWPerM2K: 15, temperatureCoefficient20PerK: 0 }
    const timeConstantS = thermalTimeConstantS(film)
    const currentA = dutyCurrentA({ onS: 30, offS: 70, timeConstantS, steadyA: 16 })
    const steps = [
      { currentA, timeS: 30 },
      { currentA: 0, timeS: 70 },
    ]
    expect(temperatureOverStepsC({ ...film, steps, repeated: true }).peakC).toBeCloseTo(conductorTemperatureC({ ...film, currentA: 16 }), 6)
  })

  test('a burst that would melt the wire if it lasted may repeat; one that never settles is an error', () => {
    const burst = (offS: number) => [
      { currentA: 200, timeS: 0.2 },
      { currentA: 0, timeS: offS },
    ]
    expect(temperatureOverStepsC({ ...wire, steps: burst(60), repeated: true }).peakC).toBeLessThan(120)
    const none = expect.objectContaining({ name: 'NoSteadyStateError', cause: 'ceiling', ceilingC: 1083 })
    expect(() => temperatureOverStepsC({ ...wire, steps: burst(0.01), repeated: true })).toThrow(none)
    expect(() => temperatureOverStepsC({ ...wire, steps: [{ currentA: 1000, timeS: 60 }], repeated: true })).toThrow(none)
  })

  test('a cycle that keeps gaining heat is an error as well, however slowly it climbs', () => {
    const potted = { ...wire, areaMm2: 0.05, conductorDiameterMm: 0.25, insulationThicknessMm: 10 }
    const steps = [
      { currentA: 16, timeS: 0.02 },
      { currentA: 12, timeS: 0.02 },
    ]
    expect(() => temperatureOverStepsC({ ...potted, steps, repeated: true })).toThrow(expect.objectContaining({ name: 'NoSteadyStateError' }))
    const calm = steps.map(({ currentA, timeS }) => ({ currentA: currentA / 4, timeS }))
    expect(temperatureOverStepsC({ ...potted, steps: calm, repeated: true }).peakC).toBeCloseTo(
      conductorTemperatureC({ ...potted, currentA: Math.sqrt((16 + 9) / 2) }),
      1,
    )
  })

  test('once past the melting point, the step is named', () => {
    const steps = [
      { currentA: 1, timeS: 1 },
      { currentA: 1000, timeS: 60 },
      { currentA: 1, timeS: 1 },
    ]
    expect(() => temperatureOverStepsC({ ...wire, steps })).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter: 'steps.1.timeS', message: expect.stringContaining('before the conductor reaches') }),
    )
  })

  test('a wall that conducts almost nothing gives a number or an error that names the step', () => {
    const steps = [
      { currentA: 30, timeS: 20 },
      { currentA: 0, timeS: 40 },
    ]
    const { endsC } = temperatureOverStepsC({ ...wire, insulationConductivityWPerMK: 1e-12, steps })
    expect(endsC[1]).toBeCloseTo(endsC[0] as number, 6)
    expect(() => temperatureOverStepsC({ ...wire, insulationConductivityWPerMK: 1e-300, steps })).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter: 'steps.1.timeS' }),
    )
  })

  test('refuses an empty list, a cycle without time, and each bad step by its path', () => {
    const refused = (steps: readonly unknown[] | undefined, repeated: boolean, parameter: string) =>
      expect(() => temperatureOverStepsC({ ...wire, steps: steps as never, repeated })).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
    refused([], false, 'steps')
    refused(undefined, false, 'steps')
    refused([{ currentA: 5, timeS: 0 }], true, 'steps')
    refused(
      [
        { currentA: 5, timeS: 1 },
        { currentA: -1, timeS: 1 },
      ],
      false,
      'steps.1.currentA',
    )
    refused([{ currentA: 5, timeS: Number.NaN }], false, 'steps.0.timeS')
    refused([null], false, 'steps.0.currentA')
  })
})
