import { fuseBands } from '@strandwise/core/tables'
import { figures } from '../../lesson/say.ts'
import type { Sheets } from '../../lesson/sheets.ts'
import { oneOf } from '../../random.ts'

const ratings = [5, 10, 15, 20] as const
const shares = [0.7, 0.8, 0.9] as const
const multiples = [1.2, 1.5, 1.9, 2.4] as const
/** Multiple of its rating from which a blade fuse is sure to open. */
const sureAt = fuseBands['ISO 8820-3'].band.find(({ longestS }) => longestS !== null)?.multiple ?? Number.NaN

export const sheets: Sheets = {
  title: 'Fuse against wire',
  problem(stream, form) {
    const ratedA = oneOf(ratings, stream)
    const wireA = Number((ratedA * oneOf(shares, stream)).toFixed(1))
    const faultA = Number((ratedA * oneOf(multiples, stream)).toFixed(1))
    const sureA = sureAt * ratedA
    const fault = form === 'C' ? `${figures(1000 * faultA, 5)} mA` : `${faultA} A`
    return {
      given: `A blade fuse of ${ratedA} A guards a wire that may carry ${wireA} A. The fuse is sure to open only from ${sureAt} times its rating on. A jammed motor draws ${fault}.`,
      tasks: [
        {
          ask: 'How many times the rating does the jammed motor draw?',
          unit: 'times',
          answer: faultA / ratedA,
          box: 'multiple = current ÷ rating',
          usual: [
            { value: ratedA / faultA, says: 'divided the other way round', marks: 0 },
            { value: faultA / wireA, says: 'took the wire for the fuse', marks: 1 },
            ...(form === 'C' ? [{ value: (1000 * faultA) / ratedA, says: 'took milliamperes for amperes', marks: 1 }] : []),
          ],
        },
        {
          ask: 'From which current on is the fuse sure to open?',
          unit: 'A',
          answer: sureA,
          box: `current = ${sureAt} × rating`,
          usual: [
            { value: ratedA, says: 'took the rating for the current that opens it', marks: 0 },
            { value: sureAt * wireA, says: 'took the wire for the fuse', marks: 1 },
          ],
        },
        {
          ask: 'How many amperes wide is the zone in which the wire is too hot and the fuse may stay closed?',
          unit: 'A',
          answer: sureA - wireA,
          box: 'zone = sure to open − what the wire may carry',
          usual: [
            { value: ratedA - wireA, says: 'took the rating for the current that opens it', marks: 1 },
            { value: sureA - ratedA, says: 'took the rating for the wire', marks: 1 },
          ],
        },
      ],
    }
  },
  trap: 'the motor’s current stands in milliamperes',
  why: {
    ask: 'the fuse opens at once in a short circuit. Why is the wire not safe with it?',
    points: [
      'the fuse carries its rating, and somewhat more, without ever opening',
      'a jammed motor draws a current just above that',
      'the wire is too hot there, and nothing stops it',
    ],
  },
}
