import { ambientFactor } from '@strandwise/core/ampacity'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of ambientFactor. */
export const ambientFactorFormula = closed<Parameters<typeof ambientFactor>[0]>({
  id: 'ambientFactor',
  call: ambientFactor,
  symbols: {
    theta_l: { tex: '\\theta_l', unit: '°C', of: 'limitC', meaning: 'temperature limit' },
    theta_a: { tex: '\\theta_a', unit: '°C', of: 'ambientC', meaning: 'temperature of the air' },
    theta_r: { tex: '\\theta_r', unit: '°C', of: 'referenceAmbientC', meaning: 'temperature of the air for which the table holds' },
  },
  results: [{ name: 'F', tex: 'F', unit: '1', meaning: 'factor on the current', expression: 'sqrt((theta_l - theta_a)/(theta_l - theta_r))' }],
  source: published('NFPA 70, 310.15(B); IEC 60364-5-52, B.52.14', 'the law that their ambient factors follow'),
  validity: ['heat that goes with the rise; a table of a code comes before it'],
})
