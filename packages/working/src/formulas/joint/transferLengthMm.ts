import { transferLengthMm } from '@strandwise/core/joint'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of transferLengthMm. */
export const transferLengthMmFormula = closed<Parameters<typeof transferLengthMm>[0]>({
  id: 'transferLengthMm',
  call: transferLengthMm,
  symbols: {
    r_1: { tex: 'r_1', unit: 'Ω/m', of: 'conductorsOhmPerM.0', meaning: 'conductor that brings the current' },
    r_2: { tex: 'r_2', unit: 'Ω/m', of: 'conductorsOhmPerM.1', meaning: 'conductor that takes it away' },
    g: { tex: 'g', unit: 'S/m', of: 'interfaceSPerM', meaning: 'conductance of the interface per metre of overlap' },
  },
  results: [{ name: 'L_T', tex: 'L_T', unit: 'mm', meaning: 'transfer length', expression: '1000/sqrt(g * (r_1 + r_2))' }],
  source: derived('two conductors coupled by a conductance per length'),
  validity: ['one-dimensional: a lower bound where overlap or transfer length is below one wire diameter'],
})
