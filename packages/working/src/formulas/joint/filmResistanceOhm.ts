import { filmResistanceOhm } from '@strandwise/core/joint'
import { closed } from '../formula.ts'
import { fromMemory } from '../sources.ts'

/** The working of filmResistanceOhm. */
export const filmResistanceOhmFormula = closed<Parameters<typeof filmResistanceOhm>[0]>({
  id: 'filmResistanceOhm',
  call: filmResistanceOhm,
  symbols: {
    sigma: { tex: '\\sigma', unit: 'Ω m²', of: 'filmOhmM2', meaning: 'resistance of a unit of area of the film' },
    A: { tex: 'A', unit: 'mm²', of: 'areaMm2', meaning: 'area that touches' },
  },
  results: [{ name: 'R_f', tex: 'R_f', unit: 'Ω', meaning: 'resistance of the film', expression: 'sigma/A * 10^6' }],
  source: fromMemory('Holm, Electric Contacts, 1967'),
  validity: ['an even film over the touching area'],
})
