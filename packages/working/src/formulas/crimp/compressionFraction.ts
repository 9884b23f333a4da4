import { compressionFraction } from '@strandwise/core/crimp'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of compressionFraction. */
export const compressionFractionFormula = closed<Parameters<typeof compressionFraction>[0]>({
  id: 'compressionFraction',
  call: compressionFraction,
  symbols: {
    A_l: { tex: 'A_l', unit: 'mm²', of: 'looseAreaMm2', meaning: 'strands before the crimp' },
    A_c: { tex: 'A_c', unit: 'mm²', of: 'crimpedAreaMm2', meaning: 'strands in the crimped section' },
  },
  results: [{ name: 'c', tex: 'c', unit: '1', meaning: 'share of the area squeezed out', expression: '1 - A_c/A_l' }],
  source: derived('definition, as crimp makers use it'),
  validity: ['metal areas, without the voids'],
})
