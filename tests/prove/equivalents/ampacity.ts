import type { Equivalents } from '../equivalent.ts'
import { atOneValue } from './reasons.ts'

export const ampacity: Equivalents = {
  'core/ampacity/bundleBalance.ts': [
    ['if (outsideM < least', ['outsideM <='], atOneValue],
    ['outsideM > largestOutsideM', ['outsideM >='], 'differs only at one exact value, beyond any bundle'],
  ],
  'core/ampacity/groupingFactor.ts': [
    ['return to === null ?', ['false', 'true'], 'no table has both gaps and rows of several: the words are those of single rows'],
  ],
  'core/ampacity/resolveWire.ts': [
    ['return value <= largestNumber', ['false', 'value < largestNumber'], 'what is handed on there is larger, or the one exact value beyond every wire'],
    [
      "return typeof value === 'number' &&",
      ['false', "typeof value !== 'number'", 'value < largestNumber', 'value > 0'],
      'the long way gives the same, slower',
    ],
    ['if (d < leastDiameterShare', ['d <='], 'differs only at one exact value, of rounding'],
    ['if (!(1 + al *', ['1 + al * (ambientC - referenceC) >= 0'], 'differs only at one exact value, at which the resistance is nothing'],
    ['if (!(requireFinite(parameter', ['requireFinite(parameter, temperatureC) > airLowestC'], 'differs only at one exact value, the coldest air'],
  ],
}
