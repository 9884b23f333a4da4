import { groupingFactor } from '@strandwise/core/ampacity'
import type { Sheets } from '../../lesson/sheets.ts'
import { oneOf } from '../../random.ts'

const counts = [4, 5, 7, 10, 15] as const
const currents = [9, 12, 16, 21] as const
const loads = [3, 4, 5] as const

export const sheets: Sheets = {
  title: 'Wires in one tie',
  problem(stream, form) {
    const count = oneOf(counts, stream)
    const aloneA = oneOf(currents, stream)
    const loadA = oneOf(loads, stream)
    const factor = groupingFactor({ loadedConductors: count, table: 'as50881' })
    const load = form === 'C' ? `${1000 * loadA} mA` : `${loadA} A`
    return {
      given: `${count} equal wires lie in one tie, all loaded. Alone each may carry ${aloneA} A. The curve for bundles leaves ${factor} of it. Each is to carry ${load}.`,
      tasks: [
        {
          ask: 'What may each wire carry in the tie?',
          unit: 'A',
          answer: aloneA * factor,
          box: 'current in the tie = current alone × share left',
          usual: [
            { value: aloneA / count, says: 'shared one wire’s current among all', marks: 0 },
            { value: aloneA * (1 - factor), says: 'took off what is left', marks: 1 },
            { value: aloneA / factor, says: 'divided by the share', marks: 0 },
          ],
        },
        {
          ask: 'And all of them together?',
          unit: 'A',
          answer: count * aloneA * factor,
          box: 'together = count × current in the tie',
          usual: [
            { value: count * aloneA, says: 'forgot the tie', marks: 0 },
            { value: aloneA * factor, says: 'gave one wire', marks: 1 },
          ],
        },
        {
          ask: 'How much of what it may carry does each wire use, in percent?',
          unit: '%',
          answer: (100 * loadA) / (aloneA * factor),
          box: 'use = load ÷ current in the tie',
          usual: [
            { value: (100 * loadA) / aloneA, says: 'forgot the tie', marks: 1 },
            { value: (100 * aloneA * factor) / loadA, says: 'divided the other way round', marks: 0 },
            ...(form === 'C' ? [{ value: (1e5 * loadA) / (aloneA * factor), says: 'took milliamperes for amperes', marks: 1 }] : []),
          ],
        },
      ],
    }
  },
  trap: 'the load stands in milliamperes',
  why: {
    ask: 'seven wires have seven times the copper. Why may they not carry seven times the current of one?',
    points: [
      'seven wires make seven times the heat',
      'the bundle is only three wires across, so it has about three times the surface',
      'the wire in the middle can lose its heat only through the others',
    ],
  },
}
