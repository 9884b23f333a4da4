import { continuityProof } from '@strandwise/core/meter'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of continuityProof. */
export const continuityProofFormula = closed<Parameters<typeof continuityProof>[0]>({
  id: 'continuityProof',
  call: continuityProof,
  symbols: {
    R_1: { tex: 'R_1', unit: 'Ω', of: 'toneBelowOhm.low', meaning: 'below this it surely tones' },
    R_2: { tex: 'R_2', unit: 'Ω', of: 'toneBelowOhm.high', meaning: 'above this it surely stays silent' },
    I: { tex: 'I', unit: 'A', of: 'currentA', meaning: 'working current' },
  },
  results: (i) =>
    i.toned
      ? [{ name: 'V_high', tex: 'V_{high}', unit: 'V', meaning: 'highest drop at the working current', expression: 'I * R_2', of: 'dropHighV' }]
      : [{ name: 'V_low', tex: 'V_{low}', unit: 'V', meaning: 'lowest drop at the working current', expression: 'I * R_1', of: 'dropLowV' }],
  source: published('JCGM 106:2012', "guarded acceptance and rejection; Ohm's law"),
  validity: ['a tone sets only an upper end, silence only a lower one'],
})
