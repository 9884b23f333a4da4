import { cutLengthMm } from '@strandwise/core/sleeve'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of cutLengthMm. */
export const cutLengthMmFormula = closed<Parameters<typeof cutLengthMm>[0]>({
  id: 'cutLengthMm',
  call: cutLengthMm,
  symbols: {
    L_j: { tex: 'L_j', unit: 'mm', of: 'jointMm', meaning: 'length of the bare joint' },
    o: { tex: 'o', unit: 'mm', of: 'overlapEachSideMm', meaning: 'cover past each edge' },
    s: {
      tex: 's',
      unit: '1',
      of: (i) => (typeof i.longitudinalChange === 'number' ? i.longitudinalChange : i.longitudinalChange.low),
      meaning: 'change of length in shrinking, of a range the low end',
    },
  },
  results: [{ name: 'L', tex: 'L', unit: 'mm', meaning: 'length to cut', expression: '(L_j + 2 * o)/(1 + s)' }],
  source: derived('length after shrinking is length before times one plus the change'),
  validity: ['free recovery along the tube'],
})
