import { nearestAwg } from '@strandwise/core/conductor'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of nearestAwg. */
export const nearestAwgFormula = closed<{ readonly areaMm2: number }>({
  id: 'nearestAwg',
  call: ({ areaMm2 }) => nearestAwg(areaMm2),
  symbols: {
    A: { tex: 'A', unit: 'mm²', of: 'areaMm2', meaning: 'area of the conductor' },
  },
  steps: [{ name: 'd', tex: 'd', unit: 'mm', meaning: 'diameter of a solid round of that area', expression: 'sqrt(4 * A/pi)' }],
  results: [{ name: 'n', tex: 'n', unit: '1', meaning: 'nearest whole gauge', expression: 'round(36 - 39 * log(d/0.127)/log(92))' }],
  source: published('ASTM B258', 'the series solved for the gauge'),
  validity: ['areas from 0.0045 to 191 mm²', 'nearest in gauge number, so by ratio of areas'],
})
