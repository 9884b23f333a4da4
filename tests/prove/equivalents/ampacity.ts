import type { Equivalents } from '../equivalent.ts'

export const ampacity: Equivalents = {
  'core/ampacity/bundleBalance.ts': [
    ['if (outsideM < least', ['outsideM <='], 'differs only at one exact value, at which both ways give the same'],
    ['outsideM > largestOutsideM', ['outsideM >='], 'differs only at one exact value, beyond any bundle'],
  ],
  'core/ampacity/groupingFactor.ts': [
    ['return to === null ?', ['false', 'true'], 'no table has both gaps and rows of several: the words are those of single rows'],
  ],
}
