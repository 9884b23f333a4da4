import { strandVoidMm2 } from '@strandwise/core/solder'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of strandVoidMm2. */
export const strandVoidMm2Formula = closed<Parameters<typeof strandVoidMm2>[0]>({
  id: 'strandVoidMm2',
  call: strandVoidMm2,
  symbols: {
    d: { tex: 'd', unit: 'mm', of: 'diameterMm', meaning: 'across the bare conductor' },
    A: { tex: 'A', unit: 'mm²', of: 'areaMm2', meaning: 'area of its metal' },
  },
  results: [{ name: 'A_v', tex: 'A_v', unit: 'mm²', meaning: 'area of the gaps', expression: 'pi/4 * d^2 - A' }],
  source: derived('plane geometry'),
  validity: ['a round conductor'],
})
