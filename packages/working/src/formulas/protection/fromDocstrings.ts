// Made from the docstrings of core by "npm test -- --update-api"; change the docstring instead.
import { prospectiveCurrentA, protectionDefaults, terminalCurrentA } from '@strandwise/core/protection'
import { closed } from '../formula.ts'
import { derived, published } from '../sources.ts'

/** The working of prospectiveCurrentA. */
export const prospectiveCurrentAFormula = closed<Parameters<typeof prospectiveCurrentA>[0]>({
  id: 'prospectiveCurrentA',
  call: prospectiveCurrentA,
  symbols: {
    V: { tex: 'V', unit: 'V', of: 'supplyV', meaning: 'source voltage' },
    R_s: { tex: 'R_{s}', unit: 'Ω', of: 'sourceOhm', meaning: 'inside the source' },
    R_l: { tex: 'R_{l}', unit: 'Ω', of: 'loopOhm', meaning: 'feed, return, holder and joints up to the short' },
  },
  results: [
    { name: 'I', tex: 'I', unit: 'A', meaning: 'prospective current', expression: 'V/(R_s + R_l)' },
  ],
  source: derived('Ohm\'s law'),
  validity: ['Use the hottest loop for the smallest current, and the cold loop for the largest current that the fuse must break.'],
})

/** The working of terminalCurrentA. */
export const terminalCurrentAFormula = closed<Parameters<typeof terminalCurrentA>[0]>({
  id: 'terminalCurrentA',
  call: terminalCurrentA,
  symbols: {
    I_r: { tex: 'I_{r}', unit: 'A', of: 'ratedCurrentA', meaning: 'rated current, the one that brings the terminal to its limit' },
    T_r: { tex: 'T_{r}', unit: '°C', of: 'ratedAmbientC', meaning: 'ambient at which it is rated' },
    T_l: { tex: 'T_{l}', unit: '°C', of: 'limitC', meaning: 'highest temperature of the terminal' },
    T_a: { tex: 'T_{a}', unit: '°C', of: 'ambientC', meaning: 'ambient where it works' },
    k: { tex: 'k', unit: '1', of: (i) => i.reserveFactor ?? protectionDefaults.reserveFactor, meaning: 'share of the law that is used; 0.8 turns a measured curve into a derating curve' },
  },
  results: [
    { name: 'I', tex: 'I', unit: 'A', meaning: 'current that the terminal may carry there', expression: 'I_r * sqrt((T_l - T_a)/(T_l - T_r)) * k' },
  ],
  source: published('IEC 60512-5-2, test 5b, current-temperature derating'),
  validity: ['The rise is proportional to the square of the current, so the current is proportional to the root of the remaining rise.'],
})
