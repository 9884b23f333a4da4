import { standardGravityMPerS2 } from '@strandwise/core/heat'
import { wireSagMm } from '@strandwise/core/routing'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of wireSagMm. */
export const wireSagMmFormula = closed<Parameters<typeof wireSagMm>[0]>({
  id: 'wireSagMm',
  call: wireSagMm,
  symbols: {
    m: { tex: "m'", unit: 'kg/m', of: 'massKgPerM', meaning: 'mass per length' },
    g: { tex: 'g', unit: 'm/s²', of: () => standardGravityMPerS2, meaning: 'standard gravity' },
    L: { tex: 'L', unit: 'mm', of: 'spanMm', meaning: 'distance between the ties' },
    T: { tex: 'T', unit: 'N', of: 'pullN', meaning: 'level part of the pull' },
  },
  results: [{ name: 's', tex: 's', unit: 'mm', meaning: 'sag in the middle', expression: 'm * g * L^2/(8 * 1000 * T)' }],
  source: derived('moments about a tie, of a load even along the span'),
  validity: ['ties at one height, stiffness left out', 'sag at most an eighth of the span; there the parabola is 2.1 % too flat'],
})
