import type { Equivalents } from '../equivalent.ts'
import { atOneValue } from './reasons.ts'

export const joint: Equivalents = {
  'core/joint/transferLength.ts': [
    ['if (made === Array', ['false', '{}'], 'the long way gives the same, slower'],
    ["if (typeof r1 === 'number'", ['false', '{}', 'r1 > 0', 'r2 > 0'], 'the long way gives the same, slower'],
    ['if (coupling >= smallestNormal', ['false', 'coupling > smallestNormal'], 'the long way gives the same, slower'],
  ],
  'core/joint/lapCurrents.ts': [['u < shortestCoupling', ['u <= shortestCoupling'], atOneValue]],
}
