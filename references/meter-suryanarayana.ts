import { readingInterval } from '../packages/core/src/meter/index.ts'
import type { Reference } from './compare.ts'

/** 10 V within 0.2 V over 20 mA within 1 mA is 500 ohm within 2 % and 5 %; the ammeter in series is 50 ohm within 5 ohm. */
const interval = () => readingInterval({ reading: 10 / 0.02, percentOfReading: 2 + 5, counts: 0, resolution: 1, leadOhm: 50, leadUncertaintyOhm: 5 })

export const reference: Reference = {
  source: 'Suryanarayana, Electrical Measurements and Measuring Instruments',
  clause: 'Example 1.19, p. 47: resistance from volts and amperes with the meter in series taken off',
  status: 'derived',
  notes: 'The answers were read in a public companion that works the example; the printed page was not seen.',
  cases: [
    { title: 'resistance: 10 V over 20 mA less 50 ohm', printed: '450', unit: 'ohm', got: () => (interval().low + interval().high) / 2 },
    { title: 'limiting error: 7 % of 500 ohm and 5 ohm', printed: '40', unit: 'ohm', got: () => (interval().high - interval().low) / 2 },
  ],
}
