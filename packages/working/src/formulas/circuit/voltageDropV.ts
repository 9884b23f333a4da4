import { voltageDropV } from '@strandwise/core/circuit'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of voltageDropV. */
export const voltageDropVFormula = closed<Parameters<typeof voltageDropV>[0]>({
  id: 'voltageDropV',
  call: voltageDropV,
  symbols: (i) => ({
    I: { tex: 'I', unit: 'A', of: 'currentA', meaning: 'load current' },
    R_out: { tex: 'R_{out}', unit: 'Ω', of: 'outResistanceOhm', meaning: 'wire from the source to the load' },
    R_back: { tex: 'R_{back}', unit: 'Ω', of: 'returnResistanceOhm', meaning: 'way back' },
    ...Object.fromEntries(
      (i.jointsOhm ?? []).map((_, at) => [`R_${at + 1}`, { tex: `R_{${at + 1}}`, unit: 'Ω', of: `jointsOhm.${at}`, meaning: `joint ${at + 1}` }]),
    ),
  }),
  results: (i) => [
    {
      name: 'V',
      tex: 'V',
      unit: 'V',
      meaning: 'voltage lost on the way',
      expression: `I * (${['R_out', 'R_back', ...(i.jointsOhm ?? []).map((_, at) => `R_${at + 1}`)].join(' + ')})`,
    },
  ],
  source: derived("Ohm's and Kirchhoff's laws"),
  validity: ['direct current, or alternating current that fills the wire'],
})
