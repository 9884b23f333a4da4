import { dutyCurrentA } from '@strandwise/core/ampacity'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of dutyCurrentA. */
export const dutyCurrentAFormula = closed<Parameters<typeof dutyCurrentA>[0]>({
  id: 'dutyCurrentA',
  call: dutyCurrentA,
  symbols: {
    t_on: { tex: 't_{on}', unit: 's', of: 'onS', meaning: 'time on in each cycle' },
    t_off: { tex: 't_{off}', unit: 's', of: 'offS', meaning: 'time off in each cycle' },
    tau_w: { tex: '\\tau', unit: 's', of: 'timeConstantS', meaning: 'thermal time constant' },
    I_s: { tex: 'I_s', unit: 'A', of: 'steadyA', meaning: 'current that may flow for ever' },
  },
  results: [{ name: 'I', tex: 'I', unit: 'A', meaning: 'current in the on-time', expression: 'I_s * sqrt(expm1(-(t_on + t_off)/tau_w)/expm1(-t_on/tau_w))' }],
  source: derived('one time constant, cyclic steady state', 'the limit of short cycles is the square-mean rule'),
  validity: ['the same time constant on and off'],
})
