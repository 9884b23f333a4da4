import { prospectiveCurrentA } from '@strandwise/core/protection'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of prospectiveCurrentA. */
export const prospectiveCurrentAFormula = closed<Parameters<typeof prospectiveCurrentA>[0]>({
  id: 'prospectiveCurrentA',
  call: prospectiveCurrentA,
  symbols: {
    V: { tex: 'V', unit: 'V', of: 'supplyV', meaning: 'source voltage' },
    R_s: { tex: 'R_s', unit: 'Ω', of: 'sourceOhm', meaning: 'inside the source' },
    R_l: { tex: 'R_l', unit: 'Ω', of: 'loopOhm', meaning: 'feed, return, holder and joints up to the short' },
  },
  results: [{ name: 'I', tex: 'I', unit: 'A', meaning: 'current of a dead short at the far end', expression: 'V/(R_s + R_l)' }],
  source: derived("Ohm's law"),
  validity: ['loop at its hottest for the smallest current, cold for the largest'],
})
