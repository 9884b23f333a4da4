import { readingInterval } from '@strandwise/core/meter'
import type { Sheets } from '../../lesson/sheets.ts'
import { oneOf } from '../../random.ts'

const readings = [0.5, 0.6, 0.7, 0.8, 0.9] as const
const leadsOhm = [0.1, 0.2, 0.3] as const
const counts = [2, 3, 5] as const
const currentsA = [0.3, 0.4, 0.6, 0.8, 1.2] as const
const resolution = 0.1
const spreadOhm = 0.1

export const sheets: Sheets = {
  title: 'A reading with two leads',
  problem(stream, form) {
    const reading = oneOf(readings, stream)
    const leadOhm = oneOf(leadsOhm, stream)
    const digits = oneOf(counts, stream)
    const currentA = oneOf(currentsA, stream)
    const { low, high } = readingInterval({ reading, percentOfReading: 0, counts: digits, resolution, leadOhm, leadUncertaintyOhm: spreadOhm })
    const middle = (low + high) / 2
    const half = (high - low) / 2
    const current = form === 'C' ? `${1000 * currentA} mA` : `${currentA} A`
    return {
      given: `A meter shows ${reading} Ω over a joint. Its accuracy is ${digits} counts of ${resolution} Ω. With the tips together it shows ${leadOhm} Ω, which changes by ${spreadOhm} Ω either way with the grip. The joint carries ${current}.`,
      tasks: [
        {
          ask: 'What is left for the joint in the middle, once the leads are taken off?',
          unit: 'Ω',
          answer: middle,
          box: 'joint = reading − leads',
          usual: [
            { value: reading, says: 'forgot the leads', marks: 0 },
            { value: reading + leadOhm, says: 'added the leads', marks: 1 },
          ],
        },
        {
          ask: 'By how much is that unknown either way?',
          unit: 'Ω',
          answer: half,
          box: 'unknown = counts × last digit + change of the leads',
          usual: [
            { value: digits * resolution, says: 'left out the change of the leads', marks: 1 },
            { value: resolution, says: 'took one digit for the accuracy', marks: 0 },
            { value: 2 * half, says: 'gave the whole width, not one side', marks: 1 },
          ],
        },
        {
          ask: 'What is the largest drop that the joint may have at its current, by this reading?',
          unit: 'mV',
          answer: 1000 * high * currentA,
          box: 'drop = (joint + unknown) × current',
          usual: [
            { value: 1000 * middle * currentA, says: 'took the middle, not the high end', marks: 1 },
            { value: high * currentA, says: 'gave volts as millivolts', marks: 1 },
            { value: 1000 * reading * currentA, says: 'took the reading as the joint', marks: 0 },
            ...(form === 'C' ? [{ value: 1e6 * high * currentA, says: 'took milliamperes for amperes', marks: 1 }] : []),
          ],
        },
      ],
    }
  },
  trap: 'the current stands in milliamperes',
  why: {
    ask: 'the meter shows 0.0 Ω over a joint that will carry 20 A. Is it good?',
    points: [
      'the last digit alone leaves tenths of an ohm open',
      'at 20 A a tenth of an ohm drops two volts',
      'so the reading proves nothing: read the drop under load',
    ],
  },
}
