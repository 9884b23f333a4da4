// Made from the docstrings of core by "npm test -- --update-api"; change the docstring instead.
import { recoveryRatio } from '@strandwise/core/sleeve'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of recoveryRatio. */
export const recoveryRatioFormula = closed<Parameters<typeof recoveryRatio>[0]>({
  id: 'recoveryRatio',
  call: recoveryRatio,
  symbols: {
    ID_e: { tex: 'I_{D\\,e}', unit: 'mm', of: 'suppliedInsideMm', meaning: 'inside as supplied, expanded' },
    ID_r: { tex: 'I_{D\\,r}', unit: 'mm', of: 'recoveredInsideMm', meaning: 'inside after free recovery, at most the supplied' },
  },
  results: [
    { name: 'n', tex: 'n', unit: '1', meaning: 'recovery ratio', expression: 'ID_e/ID_r' },
  ],
  source: published('definition; the classes of EN 4708-101 are 2:1, 3:1 and 4:1'),
  validity: ['Free recovery: nothing inside holds the sleeve open.'],
})
