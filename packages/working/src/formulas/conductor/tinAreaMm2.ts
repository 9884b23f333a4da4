import { tinAreaMm2 } from '@strandwise/core/conductor'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of tinAreaMm2. */
export const tinAreaMm2Formula = closed<Parameters<typeof tinAreaMm2>[0]>({
  id: 'tinAreaMm2',
  call: tinAreaMm2,
  symbols: {
    n: { tex: 'n', unit: '1', of: 'strandCount', meaning: 'number of strands' },
    d: { tex: 'd', unit: 'mm', of: 'strandDiameterMm', meaning: 'diameter of one strand over its tin' },
    t: { tex: 't', unit: 'mm', of: 'tinThicknessMm', meaning: 'thickness of the tin' },
  },
  results: [{ name: 'A', tex: 'A', unit: 'mm²', meaning: 'area of the tin', expression: 'n * pi * (d - t) * t' }],
  source: derived('geometry'),
  validity: ['tin at most as thick as the radius'],
})
