import { mm2ToCircularMils } from '@strandwise/core/conductor'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of mm2ToCircularMils. */
export const mm2ToCircularMilsFormula = closed<{ readonly areaMm2: number }>({
  id: 'mm2ToCircularMils',
  call: ({ areaMm2 }) => mm2ToCircularMils(areaMm2),
  symbols: {
    A: { tex: 'A', unit: 'mm²', of: 'areaMm2', meaning: 'area' },
  },
  results: [{ name: 'M', tex: 'M', unit: 'cmil', meaning: 'area in circular mils', expression: 'A/(pi/4 * 0.0254^2)' }],
  source: derived('definition: a circular mil is a circle 0.001 in across'),
  validity: ['every area above 0'],
})
