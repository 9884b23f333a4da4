import { readingInterval } from '@strandwise/core/meter'
import { figures } from '../../lesson/say.ts'
import type { Sheets } from '../../lesson/sheets.ts'
import { oneOf } from '../../random.ts'

const currents = [2, 3, 4, 5] as const
const joints = [0.9, 1.4, 2.6, 3.8] as const
const spans = [15, 20, 25, 30] as const
const wires = [13.3, 17.1, 23, 34.5] as const
const counts = [2, 3, 5] as const
const digitMV = 0.1

export const sheets: Sheets = {
  title: 'Which joint is it?',
  problem(stream, form) {
    const currentA = oneOf(currents, stream)
    const jointMOhm = oneOf(joints, stream)
    const spanMm = oneOf(spans, stream)
    const mOhmPerM = oneOf(wires, stream)
    const digits = oneOf(counts, stream)
    const readMV = Number((jointMOhm * currentA).toFixed(1))
    const wireMV = (mOhmPerM * spanMm * currentA) / 1000
    const { low, high } = readingInterval({ reading: readMV, percentOfReading: 0, counts: digits, resolution: digitMV })
    const read = form === 'C' ? `${figures(1000 * readMV, 5)} µV` : `${readMV} mV`
    return {
      given: `${currentA} A flow through a joint. Needles ${spanMm} mm apart read ${read}; the meter may be off by ${digits} counts of ${digitMV} mV. One metre of the wire has ${mOhmPerM} mΩ.`,
      tasks: [
        {
          ask: 'What would plain wire of that length drop?',
          unit: 'mV',
          answer: wireMV,
          box: 'drop = mΩ of one metre × metres × current',
          usual: [
            { value: 1000 * wireMV, says: 'took millimetres for metres', marks: 1 },
            { value: wireMV / currentA, says: 'forgot the current', marks: 0 },
          ],
        },
        {
          ask: 'How many times plain wire does the joint read?',
          unit: 'times',
          answer: readMV / wireMV,
          box: 'ratio = reading ÷ plain wire',
          usual: [
            { value: wireMV / readMV, says: 'divided the other way round', marks: 0 },
            ...(form === 'C' ? [{ value: (1000 * readMV) / wireMV, says: 'took microvolts for millivolts', marks: 1 }] : []),
          ],
        },
        {
          ask: 'By how much is the ratio at least, once the meter’s error is taken off?',
          unit: 'times',
          answer: low / wireMV,
          box: 'least = (reading − counts × digit) ÷ plain wire',
          usual: [
            { value: high / wireMV, says: 'added the error', marks: 1 },
            { value: (readMV - digitMV) / wireMV, says: 'took one digit for the accuracy', marks: 1 },
          ],
        },
      ],
    }
  },
  trap: 'the reading stands in microvolts',
  why: {
    ask: 'a joint reads like plain wire. Why do you still look at it and pull at it?',
    points: [
      'a reading tells about the current now, not about the next months',
      'burnt insulation and cold edges read well: one has to look',
      'a joint that is not held reads well until it is pulled',
    ],
  },
}
