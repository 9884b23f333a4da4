import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Correlation, heatFlowWPerM } from '../heat/index.ts'
import { conductorTemperatureC } from './conductorTemperature.ts'
import { steadyCurrentA } from './steadyCurrent.ts'
import { temperatureAfterC } from './temperatureAfter.ts'
import { thermalTimeConstantS } from './thermalTimeConstant.ts'
import { timeToTemperatureS } from './timeToTemperature.ts'

const wire = Object.freeze({ areaMm2: 1, conductorDiameterMm: 1.28, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 23 })
/** By hand, for the wire above: 1e-6 x 8890 x 385 + 0.85 x 1350 x 1050 x pi x 0.6 x 1.88e-6 = 3.42265 + 4.26974 J/(m K). */
const storedJPerMK = 7.69239

/** Fourth-order Runge-Kutta on the wire's heat balance, its surface by bisection: an independent method. */
function stepped(currentA: number, timeS: number, initialC: number, steps: number, correlation: Correlation): number {
  const wall = Math.log(2.48 / 1.28) / (2 * Math.PI * 0.17)
  const shed = (T: number) => {
    let [low, high] = [Math.min(T, 23), Math.max(T, 23)]
    const total = (surfaceC: number) => heatFlowWPerM({ surfaceC, ambientC: 23, diameterMm: 2.48, emissivity: 0.9, correlation }).totalWPerM
    for (let n = 0; n < 60; n += 1) {
      const middle = 0.5 * (low + high)
      if (middle + wall * total(middle) < T) low = middle
      else high = middle
    }
    return total(0.5 * (low + high))
  }
  const rate = (T: number) => (currentA ** 2 * 0.017241 * (1 + 0.00393 * (T - 20)) - shed(T)) / storedJPerMK
  const h = timeS / steps
  let T = initialC
  for (let n = 0; n < steps; n += 1) {
    const a = rate(T)
    const b = rate(T + 0.5 * h * a)
    const c = rate(T + 0.5 * h * b)
    T += (h / 6) * (a + 2 * b + 2 * c + rate(T + h * c))
  }
  return T
}

describe('temperatureAfterC', () => {
  test.each([
    [30, 40, 23, 'churchill-chu'],
    [30, 40, 23, 'morgan'],
    [0, 60, 120, 'churchill-chu'],
    [60, 10, 23, 'churchill-chu'],
    [15, 90, -20, 'churchill-chu'],
  ] as const)('%s A for %s s from %s °C by %s: as Runge and Kutta step it', (currentA, timeS, initialC, correlation) => {
    const got = temperatureAfterC({ ...wire, currentA, timeS, initialC, correlation })
    expect(Math.abs(got - stepped(currentA, timeS, initialC, 200, correlation))).toBeLessThan(5e-4)
  })

  test('no time, no change; for ever, the steady temperature', () => {
    expect(temperatureAfterC({ ...wire, currentA: 20, timeS: 0, initialC: 50 })).toBe(50)
    expect(temperatureAfterC({ ...wire, currentA: 20, timeS: 0 })).toBe(23)
    expect(temperatureAfterC({ ...wire, currentA: 20, timeS: 1e9 })).toBeCloseTo(conductorTemperatureC({ ...wire, currentA: 20 }), 6)
    expect(temperatureAfterC({ ...wire, currentA: 0, timeS: 1e5, initialC: 23 })).toBe(23)
  })

  test('a short burst is the heat over the store: 200 A for 10 ms', () => {
    const burst = temperatureAfterC({ ...wire, currentA: 200, timeS: 0.01, insulationShare: 0 })
    expect(Math.abs(burst - 23 - (200 ** 2 * 0.017241 * 1.0118 * 0.01) / 3.42265)).toBeLessThan(0.02)
  })

  test('one stretch after another is the whole', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 200, noNaN: true }),
        fc.double({ min: 0, max: 200, noNaN: true }),
        fc.double({ min: -30, max: 150, noNaN: true }),
        fc.boolean(),
        (currentA, first, second, initialC, film) => {
          const it = { ...wire, currentA: film ? currentA / 3 : currentA / 2, ...(film ? { filmWPerM2K: 15 } : {}) }
          const half = temperatureAfterC({ ...it, timeS: first, initialC })
          const whole = temperatureAfterC({ ...it, timeS: first + second, initialC })
          expect(Math.abs(temperatureAfterC({ ...it, timeS: second, initialC: half }) - whole)).toBeLessThan(2e-3)
        },
      ),
      { numRuns: 300 },
    )
  })

  test('a film: the closed form, growing too, and exactly balanced', () => {
    const film = { ...wire, filmWPerM2K: 10 }
    const R = 1 / (10 * Math.PI * 0.00248) + Math.log(2.48 / 1.28) / (2 * Math.PI * 0.17)
    for (const currentA of [10, 45]) {
      const G = 1 / R - currentA ** 2 * 0.017241 * 0.00393
      const end = (23 / R + currentA ** 2 * 0.017241 * (1 - 0.0786)) / G
      const want = end + (23 - end) * Math.exp((-G * 30) / storedJPerMK)
      expect(Math.abs(temperatureAfterC({ ...film, currentA, timeS: 30 }) - want)).toBeLessThan(1e-3)
    }
    expect(temperatureAfterC({ ...film, currentA: 0, timeS: 1e6, initialC: 23 })).toBe(23)
  })

  test('an end past the melting point is refused, in runaway and out of it', () => {
    const refused = expect.objectContaining({ name: 'DomainError', parameter: 'timeS', message: expect.stringContaining('times before the conductor reaches') })
    expect(() => temperatureAfterC({ ...wire, currentA: 500, timeS: 60 })).toThrow(refused)
    expect(() => temperatureAfterC({ ...wire, currentA: 500, timeS: 60, filmWPerM2K: 10 })).toThrow(refused)
    expect(() => temperatureAfterC({ ...wire, currentA: 1e9, timeS: 60 })).toThrow(refused)
    expect(temperatureAfterC({ ...wire, currentA: 500, timeS: 0.1 })).toBeGreaterThan(70)
    expect(() => temperatureAfterC({ ...wire, currentA: 1, timeS: 1, initialC: 1084 })).toThrow(expect.objectContaining({ parameter: 'initialC' }))
  })
})

describe('timeToTemperatureS', () => {
  test('is the inverse of temperatureAfterC, heating and cooling', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 40, noNaN: true }),
        fc.double({ min: -20, max: 300, noNaN: true }),
        fc.double({ min: 0.1, max: 150, noNaN: true }),
        (currentA, initialC, timeS) => {
          const wantedC = temperatureAfterC({ ...wire, currentA, initialC, timeS })
          if (Math.abs(wantedC - initialC) < 0.01) return
          const back = timeToTemperatureS({ ...wire, currentA, initialC, wantedC }) as number
          expect(Math.abs(back / timeS - 1)).toBeLessThan(1e-3)
        },
      ),
      { numRuns: 300 },
    )
  })

  test('0 where it starts there; null where it only tends there or moves away', () => {
    const at20 = { ...wire, currentA: 20 }
    const steadyC = conductorTemperatureC(at20)
    expect(timeToTemperatureS({ ...at20, wantedC: 23 })).toBe(0)
    expect(timeToTemperatureS({ ...at20, wantedC: 60, initialC: 60 })).toBe(0)
    expect(timeToTemperatureS({ ...at20, wantedC: steadyC })).toBeNull()
    expect(timeToTemperatureS({ ...at20, wantedC: steadyC + 1 })).toBeNull()
    expect(timeToTemperatureS({ ...at20, wantedC: 10 })).toBeNull()
    expect(timeToTemperatureS({ ...at20, wantedC: 60, initialC: 200 })).toBeNull()
    expect(timeToTemperatureS({ ...at20, wantedC: 22, filmWPerM2K: 15 })).toBeNull()
    expect(timeToTemperatureS({ ...at20, wantedC: conductorTemperatureC({ ...at20, filmWPerM2K: 15 }), filmWPerM2K: 15 })).toBeNull()
    expect(timeToTemperatureS({ ...wire, currentA: 0, wantedC: 24 })).toBeNull()
    expect(timeToTemperatureS({ ...at20, wantedC: steadyC - 1 })).toBeGreaterThan(100)
  })

  test('runaway reaches every temperature up to melting', () => {
    const potted = { ...wire, areaMm2: 0.05, conductorDiameterMm: 0.25, insulationThicknessMm: 10, currentA: 16 }
    const times = [50, 200, 500, 1083].map((wantedC) => timeToTemperatureS({ ...potted, wantedC }) as number)
    expect(times).toEqual([...times].sort((a, b) => a - b))
    expect(temperatureAfterC({ ...potted, timeS: times[2] as number })).toBeCloseTo(500, 2)
    expect(() => timeToTemperatureS({ ...potted, wantedC: 1084 })).toThrow(expect.objectContaining({ parameter: 'wantedC' }))
  })
})

describe('thermalTimeConstantS', () => {
  test('with a film it is C R, and C/(1/R - I^2 R20 alpha) with a current', () => {
    const film = { ...wire, filmWPerM2K: 14 }
    const R = 1 / (14 * Math.PI * 0.00248) + Math.log(2.48 / 1.28) / (2 * Math.PI * 0.17)
    expect(thermalTimeConstantS(film) / (storedJPerMK * R)).toBeCloseTo(1, 5)
    expect(thermalTimeConstantS({ ...film, currentA: 20, atC: 80 }) / (storedJPerMK / (1 / R - 400 * 0.017241 * 0.00393))).toBeCloseTo(1, 5)
  })

  test('a hotter wire sheds more for each kelvin and settles sooner; the sun does not count; below the air it works too', () => {
    expect(thermalTimeConstantS({ ...wire, atC: 100 })).toBeLessThan(thermalTimeConstantS(wire))
    expect(thermalTimeConstantS({ ...wire, atC: 100, solarAbsorbedWPerM: 3 })).toBe(thermalTimeConstantS({ ...wire, atC: 100 }))
    expect(thermalTimeConstantS({ ...wire, atC: 13 })).toBeGreaterThan(30)
    expect(thermalTimeConstantS(wire)).toBe(thermalTimeConstantS({ ...wire, atC: 24, currentA: 0 }))
  })

  test('63 % of a small step takes about one time constant', () => {
    const currentA = steadyCurrentA({ ...wire, limitC: 25 }) as number
    const tau = thermalTimeConstantS({ ...wire, atC: 24.3, currentA })
    const t = timeToTemperatureS({ ...wire, currentA, wantedC: 23 + 2 * (1 - Math.exp(-1)) }) as number
    expect(Math.abs(t / tau - 1)).toBeLessThan(0.1)
  })

  test('nothing to divide by at the temperature of the air; runaway is an error that gives the melting current', () => {
    expect(() => thermalTimeConstantS({ ...wire, atC: 23 })).toThrow(expect.objectContaining({ name: 'DomainError', parameter: 'atC' }))
    const runaway = expect.objectContaining({ name: 'NoSteadyStateError', cause: 'runaway', largestCurrentA: steadyCurrentA({ ...wire, limitC: 1083 }) })
    expect(() => thermalTimeConstantS({ ...wire, currentA: 400 })).toThrow(runaway)
  })
})
