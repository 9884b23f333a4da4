import { recoveredWallMm } from '@strandwise/core/sleeve'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of recoveredWallMm. */
export const recoveredWallMmFormula = closed<Parameters<typeof recoveredWallMm>[0]>({
  id: 'recoveredWallMm',
  call: recoveredWallMm,
  symbols: {
    D: { tex: 'D', unit: 'mm', of: 'ontoMm', meaning: 'diameter of the core' },
    D_r: { tex: 'D_r', unit: 'mm', of: 'recoveredInsideMm', meaning: 'inside after free recovery' },
    w_r: { tex: 'w_r', unit: 'mm', of: 'recoveredWallMm', meaning: 'wall after free recovery' },
  },
  results: [{ name: 'w', tex: 'w', unit: 'mm', meaning: 'wall on the core', expression: '(sqrt(D^2 + 4 * (D_r + w_r) * w_r) - D)/2' }],
  source: derived('kept volume of an incompressible wall'),
  validity: ['core at least as thick as the recovered inside', 'change of length as in free recovery; 1 to 2 % of shrinking on cooling left out'],
})
