import { fitSleeve } from '@strandwise/core/sleeve'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of fitSleeve. */
export const fitSleeveFormula = closed<Parameters<typeof fitSleeve>[0]>({
  id: 'fitSleeve',
  call: fitSleeve,
  symbols: {
    D_e: { tex: 'D_e', unit: 'mm', of: 'suppliedInsideMm', meaning: 'inside as supplied' },
    D_r: { tex: 'D_r', unit: 'mm', of: 'recoveredInsideMm', meaning: 'inside after free recovery' },
    D_max: { tex: 'D_{max}', unit: 'mm', of: 'largestMm', meaning: 'largest diameter that it must pass over' },
    D_min: { tex: 'D_{min}', unit: 'mm', of: 'smallestMm', meaning: 'smallest diameter that it must grip' },
  },
  results: [
    { name: 'm_r', tex: 'm_r', unit: '1', meaning: 'margin of gripping', expression: 'D_min/D_r - 1', of: 'marginRecovered' },
    { name: 'm_e', tex: 'm_e', unit: '1', meaning: 'margin of sliding over', expression: 'D_e/D_max - 1', of: 'marginSupplied' },
    { name: 'u_r', tex: 'u_r', unit: '1', meaning: 'shrink left, of the recovered inside', expression: '(D_min - D_r)/D_r', of: 'unresolvedOfRecovered' },
    { name: 'u_t', tex: 'u_t', unit: '1', meaning: 'shrink left, of the range', expression: '(D_min - D_r)/(D_e - D_r)', of: 'unresolvedOfRange' },
  ],
  source: published('NASA-STD-8739.4, change 6', 'para 9.8.1 for the rule; both measures of shrink left are common practice'),
  validity: ['a margin above 0 slides over, or grips'],
})
