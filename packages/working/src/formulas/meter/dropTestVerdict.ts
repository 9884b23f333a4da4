import { dropTestVerdict } from '@strandwise/core/meter'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of dropTestVerdict. */
export const dropTestVerdictFormula = closed<Parameters<typeof dropTestVerdict>[0]>({
  id: 'dropTestVerdict',
  call: dropTestVerdict,
  symbols: {
    V: { tex: 'V', unit: 'V', of: 'measuredV', meaning: 'drop as measured' },
    b: { tex: 'b', unit: 'V', of: 'uncertaintyV', meaning: 'half width of the measured drop' },
    I_t: { tex: 'I_t', unit: 'A', of: 'testA', meaning: 'current while it was measured' },
    I: { tex: 'I', unit: 'A', of: 'workingA', meaning: 'current that the joint will carry' },
  },
  results: [
    { name: 'V_high', tex: 'V_{high}', unit: 'V', meaning: 'highest drop at the working current', expression: '(V + b) * I/I_t', of: 'dropHighV' },
    { name: 'V_low', tex: 'V_{low}', unit: 'V', meaning: 'lowest drop at the working current', expression: '(V - b) * I/I_t', of: 'dropLowV' },
  ],
  source: published('JCGM 106:2012', "guarded acceptance and rejection; Ohm's law"),
  validity: ['a resistance that does not change with the current: test near the working current'],
})
