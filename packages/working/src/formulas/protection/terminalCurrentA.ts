import { protectionDefaults, terminalCurrentA } from '@strandwise/core/protection'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of terminalCurrentA. */
export const terminalCurrentAFormula = closed<Parameters<typeof terminalCurrentA>[0]>({
  id: 'terminalCurrentA',
  call: terminalCurrentA,
  symbols: {
    I_r: { tex: 'I_r', unit: 'A', of: 'ratedCurrentA', meaning: 'rated current' },
    theta_r: { tex: '\\theta_r', unit: '°C', of: 'ratedAmbientC', meaning: 'ambient at which it is rated' },
    theta_l: { tex: '\\theta_l', unit: '°C', of: 'limitC', meaning: 'highest temperature of the terminal' },
    theta_a: { tex: '\\theta_a', unit: '°C', of: 'ambientC', meaning: 'ambient where it works' },
    k: { tex: 'k', unit: '1', of: (i) => i.reserveFactor ?? protectionDefaults.reserveFactor, meaning: 'share of the law that is used' },
  },
  results: [
    { name: 'I', tex: 'I', unit: 'A', meaning: 'current that the terminal may carry', expression: 'I_r * sqrt((theta_l - theta_a)/(theta_l - theta_r)) * k' },
  ],
  source: published('IEC 60512-5-2', 'test 5b, current-temperature derating'),
  validity: ['the rise goes with the square of the current'],
})
