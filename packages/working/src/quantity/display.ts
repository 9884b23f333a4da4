import type { QuantityKind } from './kinds.ts'

/** The units a kind is printed in, each from a size (in the kind's own unit) upwards; the last takes all that is smaller. */
export interface Shown {
  readonly metric: readonly (readonly [from: number, symbol: string])[]
  /** Absent where inch countries use the same units. */
  readonly inch?: readonly (readonly [from: number, symbol: string])[]
}

const byThousands = (symbol: string, letters: string): readonly (readonly [number, string])[] =>
  [...letters].map((letter, at) => {
    const power = 'GMk mun'.indexOf(letter) * -3 + 9
    return [at === letters.length - 1 ? 0 : 10 ** power, letter === ' ' ? symbol : `${letter === 'u' ? 'µ' : letter}${symbol}`] as const
  })

/** Where printing changes from one unit to the next; workshop habit, so that a drawing's 1500 stays in mm and a wire's 0.35 in mm2. */
export const shownUnits: Readonly<Record<QuantityKind, Shown>> = {
  areaMm2: {
    metric: [[0, 'mm²']],
    inch: [
      [126, 'kcmil'],
      [0, 'cmil'],
    ],
  },
  lengthM: {
    metric: [
      [1000, 'km'],
      [1, 'm'],
      [0.001, 'mm'],
      [0, 'µm'],
    ],
    inch: [
      [30.48, 'ft'],
      [0.3048, 'ft in'],
      [0, 'in'],
    ],
  },
  lengthMm: {
    metric: [
      [10000, 'm'],
      [0.1, 'mm'],
      [0, 'µm'],
    ],
    inch: [
      [0.254, 'in'],
      [0, 'mil'],
    ],
  },
  temperatureC: { metric: [[0, '°C']], inch: [[0, '°F']] },
  temperatureDifferenceK: { metric: [[0, 'K']], inch: [[0, '°F']] },
  resistanceOhm: { metric: byThousands('Ω', 'GMk mun') },
  resistanceOhmPerM: {
    metric: byThousands('Ω/m', ' mu'),
    inch: [
      [0.003, 'Ω/1000 ft'],
      [0, 'mΩ/1000 ft'],
    ],
  },
  currentA: { metric: byThousands('A', 'k mun') },
  voltageV: { metric: byThousands('V', 'k mun') },
  powerW: { metric: byThousands('W', 'Mk mun') },
  forceN: { metric: byThousands('N', 'k m'), inch: [[0, 'lbf']] },
  massKg: {
    metric: [
      [1000, 't'],
      [1, 'kg'],
      [0.001, 'g'],
      [0, 'mg'],
    ],
    inch: [
      [0.45359237, 'lb'],
      [0, 'oz'],
    ],
  },
  timeS: {
    metric: [
      [86400, 'd'],
      [3600, 'h'],
      [120, 'min'],
      [1, 's'],
      [0.001, 'ms'],
      [0, 'µs'],
    ],
  },
  ratio: { metric: [[0, '']] },
  angleRad: { metric: [[0, '°']] },
  pressurePa: { metric: byThousands('Pa', 'GMk '), inch: [[0, 'psi']] },
  speedMPerS: { metric: [[0, 'm/s']], inch: [[0, 'ft/s']] },
  volumeMm3: {
    metric: [
      [1e6, 'l'],
      [1000, 'cm³'],
      [0, 'mm³'],
    ],
    inch: [[0, 'in³']],
  },
  stressMPa: {
    metric: [
      [1000, 'GPa'],
      [0.1, 'MPa'],
      [0, 'kPa'],
    ],
    inch: [
      [6.894757, 'ksi'],
      [0, 'psi'],
    ],
  },
  thermalResistanceKPerW: { metric: byThousands('K/W', ' m') },
  frequencyHz: { metric: byThousands('Hz', 'GMk ') },
}
