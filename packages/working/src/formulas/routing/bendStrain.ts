import { bendStrain } from '@strandwise/core/routing'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of bendStrain. */
export const bendStrainFormula = closed<Parameters<typeof bendStrain>[0]>({
  id: 'bendStrain',
  call: bendStrain,
  symbols: {
    d: { tex: 'd', unit: 'mm', of: 'strandDiameterMm', meaning: 'diameter of the strand' },
    R: { tex: 'R', unit: 'mm', of: 'bendRadiusMm', meaning: 'radius to the inside of the strand' },
  },
  results: [{ name: 'e', tex: '\\varepsilon', unit: '1', meaning: 'strain at the outside', expression: 'd/(2 * R + d)' }],
  source: derived('geometry of a round bent to a circle'),
  validity: ['bending alone, without pull'],
})
