import { shearLagPeakRatio } from '@strandwise/core/joint'
import { closed } from '../formula.ts'
import { fromMemory } from '../sources.ts'

/** The working of shearLagPeakRatio. */
export const shearLagPeakRatioFormula = closed<Parameters<typeof shearLagPeakRatio>[0]>({
  id: 'shearLagPeakRatio',
  call: shearLagPeakRatio,
  symbols: {
    L: { tex: 'L', unit: 'mm', of: 'lengthMm', meaning: 'length of the lap' },
    m: { tex: 'm', unit: '1/mm', of: 'perMm', meaning: 'shear-lag coefficient' },
  },
  results: (i) => [
    { name: 'k', tex: 'k', unit: '1', meaning: 'peak shear over mean shear', expression: i.perMm === 0 ? '1 + 0 * L * m' : 'm * L/2/tanh(m * L/2)' },
  ],
  source: fromMemory('Volkersen 1938'),
  validity: ['elastic; like conductors'],
})
