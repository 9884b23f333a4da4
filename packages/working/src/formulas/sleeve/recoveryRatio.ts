import { recoveryRatio } from '@strandwise/core/sleeve'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of recoveryRatio. */
export const recoveryRatioFormula = closed<Parameters<typeof recoveryRatio>[0]>({
  id: 'recoveryRatio',
  call: recoveryRatio,
  symbols: {
    D_e: { tex: 'D_e', unit: 'mm', of: 'suppliedInsideMm', meaning: 'inside as supplied' },
    D_r: { tex: 'D_r', unit: 'mm', of: 'recoveredInsideMm', meaning: 'inside after free recovery' },
  },
  results: [{ name: 'n', tex: 'n', unit: '1', meaning: 'recovery ratio', expression: 'D_e/D_r' }],
  source: published('EN 4708-101', 'definition; its classes are 2:1, 3:1 and 4:1'),
  validity: ['free recovery'],
})
