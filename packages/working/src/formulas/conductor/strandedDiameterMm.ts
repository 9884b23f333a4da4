import { strandedDiameterMm } from '@strandwise/core/conductor'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** Overall diameter of full layers round a centre strand. */
const concentric: Readonly<Record<number, string>> = { 1: 'd', 7: '3 * d', 19: '5 * d', 37: '7 * d' }

/** The working of strandedDiameterMm. */
export const strandedDiameterMmFormula = closed<Parameters<typeof strandedDiameterMm>[0]>({
  id: 'strandedDiameterMm',
  call: strandedDiameterMm,
  symbols: {
    n: { tex: 'n', unit: '1', of: 'strandCount', meaning: 'number of strands' },
    d: { tex: 'd', unit: 'mm', of: 'strandDiameterMm', meaning: 'diameter of one strand' },
  },
  results: (i) => [{ name: 'D', tex: 'D', unit: 'mm', meaning: 'diameter over all strands', expression: concentric[i.strandCount] ?? '1.155 * d * sqrt(n)' }],
  source: derived('geometry of full layers round a centre strand; bunched strands fill three quarters of their circle'),
  validity: ['1, 7, 19 and 37 strands lie in layers, others in a bunch', 'for two to six strands only rough'],
})
