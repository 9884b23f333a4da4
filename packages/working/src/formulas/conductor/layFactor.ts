import { layFactor } from '@strandwise/core/conductor'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of layFactor. */
export const layFactorFormula = closed<Parameters<typeof layFactor>[0]>({
  id: 'layFactor',
  call: layFactor,
  symbols: {
    d: { tex: 'd', unit: 'mm', of: 'layerDiameterMm', meaning: 'diameter of the helix through the centres of the strands' },
    p: { tex: 'p', unit: 'mm', of: 'pitchMm', meaning: 'length of wire for one turn' },
  },
  results: [{ name: 'K', tex: 'K', unit: '1', meaning: 'length of a strand over length of the wire', expression: 'sqrt(1 + (pi * d/p)^2)' }],
  source: derived('geometry of a helix'),
  validity: ['one layer of strands'],
})
