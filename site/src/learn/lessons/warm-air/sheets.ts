import { ambientFactor } from '@strandwise/core/ampacity'
import type { Sheets } from '../../lesson/sheets.ts'
import { oneOf } from '../../random.ts'

const limits = [70, 90, 105] as const
const airs = [40, 45, 50, 55] as const
const currents = [8, 11, 14, 18, 24] as const
const referenceC = 30

export const sheets: Sheets = {
  title: 'Current in warm air',
  problem(stream, form) {
    const limitC = oneOf(limits, stream)
    const ambientC = oneOf(airs, stream)
    const tableA = oneOf(currents, stream)
    const factor = ambientFactor({ limitC, ambientC, referenceAmbientC: referenceC })
    const share = (limitC - ambientC) / (limitC - referenceC)
    const air = form === 'C' ? `${(ambientC * 9) / 5 + 32} °F` : `${ambientC} °C`
    return {
      given: `A wire may become ${limitC} °C. In air of ${referenceC} °C the table gives it ${tableA} A. It is laid in air of ${air}.`,
      tasks: [
        {
          ask: 'How many kelvin are left between the air and the limit?',
          unit: 'K',
          answer: limitC - ambientC,
          box: 'left = limit − air',
          usual: [
            { value: ambientC - referenceC, says: 'took the air above the table’s air', marks: 0 },
            { value: limitC - referenceC, says: 'took the table’s air', marks: 1 },
          ],
        },
        {
          ask: 'How much of the table’s current is left, in percent?',
          unit: '%',
          answer: 100 * factor,
          box: 'share = √(kelvin left ÷ kelvin in the table’s air)',
          usual: [
            { value: 100 * share, says: 'in proportion: forgot the root', marks: 1 },
            { value: (100 * referenceC) / ambientC, says: 'divided one air by the other', marks: 0 },
            { value: 100 * (1 - factor), says: 'gave what is lost', marks: 1 },
          ],
        },
        {
          ask: 'How many amperes may the wire carry there?',
          unit: 'A',
          answer: tableA * factor,
          box: 'current = table × share',
          usual: [
            { value: tableA * share, says: 'in proportion: forgot the root', marks: 1 },
            { value: tableA / factor, says: 'divided by the share', marks: 0 },
          ],
        },
      ],
    }
  },
  trap: 'the air stands in degrees Fahrenheit',
  why: {
    ask: 'a quarter of the kelvin is left. Why may the wire still carry half of its current, and not a quarter?',
    points: [
      'a wire gives off heat in proportion to its kelvin above the air, roughly',
      'it makes heat with the square of the current',
      'a quarter of the heat is made by half of the current',
    ],
  },
}
