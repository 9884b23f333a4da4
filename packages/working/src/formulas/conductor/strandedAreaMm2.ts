import { strandedAreaMm2 } from '@strandwise/core/conductor'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of strandedAreaMm2. */
export const strandedAreaMm2Formula = closed<Parameters<typeof strandedAreaMm2>[0]>({
  id: 'strandedAreaMm2',
  call: strandedAreaMm2,
  symbols: {
    n: { tex: 'n', unit: '1', of: 'strandCount', meaning: 'number of strands' },
    d: { tex: 'd', unit: 'mm', of: 'strandDiameterMm', meaning: 'diameter of one strand' },
  },
  results: [{ name: 'A', tex: 'A', unit: 'mm²', meaning: 'metal area', expression: 'n * pi/4 * d^2' }],
  source: derived('geometry'),
  validity: ['area square to the strands'],
})
