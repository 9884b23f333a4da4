// Made from the docstrings of core by "npm test -- --update-api"; change the docstring instead.
import { ambientFactor } from '@strandwise/core/ampacity'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of ambientFactor. */
export const ambientFactorFormula = closed<Parameters<typeof ambientFactor>[0]>({
  id: 'ambientFactor',
  call: ambientFactor,
  symbols: {
    Tl: { tex: 'T_{l}', unit: '°C', of: 'limitC', meaning: 'temperature limit of the insulation' },
    Ta: { tex: 'T_{a}', unit: '°C', of: 'ambientC', meaning: 'temperature of the air' },
    Tr: { tex: 'T_{r}', unit: '°C', of: 'referenceAmbientC', meaning: 'temperature of the air for which the table holds' },
  },
  results: [
    { name: 'F', tex: 'F', unit: '1', meaning: 'factor on the current, 0 at the limit', expression: 'sqrt((Tl - Ta)/(Tl - Tr))' },
  ],
  source: published('NFPA 70, 310.15(B), and IEC 60364-5-52, B.52.14: the law that their ambient factors follow'),
  validity: ['Assumes heat loss proportional to the rise; where a code has a table, the table takes precedence.'],
})
