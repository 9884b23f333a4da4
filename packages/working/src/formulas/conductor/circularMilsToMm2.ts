import { circularMilsToMm2 } from '@strandwise/core/conductor'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of circularMilsToMm2. */
export const circularMilsToMm2Formula = closed<{ readonly circularMils: number }>({
  id: 'circularMilsToMm2',
  call: ({ circularMils }) => circularMilsToMm2(circularMils),
  symbols: {
    M: { tex: 'M', unit: 'cmil', of: 'circularMils', meaning: 'area in circular mils' },
  },
  results: [{ name: 'A', tex: 'A', unit: 'mm²', meaning: 'area', expression: 'M * pi/4 * 0.0254^2' }],
  source: derived('definition: a circular mil is a circle 0.001 in across'),
  validity: ['every area above 0'],
})
