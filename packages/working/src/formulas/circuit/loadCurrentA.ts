import { loadCurrentA } from '@strandwise/core/circuit'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

const loads = {
  current: { symbol: { I_l: { tex: 'I_l', unit: 'A', of: 'load.currentA', meaning: 'constant current of the load' } }, expression: 'I_l' },
  resistance: { symbol: { R: { tex: 'R', unit: 'Ω', of: 'load.resistanceOhm', meaning: 'resistance of the load' } }, expression: 'V/(R_s + R)' },
  power: { symbol: { P: { tex: 'P', unit: 'W', of: 'load.powerW', meaning: 'power of the load' } }, expression: '2 * P/(V * (1 + sqrt(1 - 4 * R_s * P/V^2)))' },
} as const

/** The working of loadCurrentA. */
export const loadCurrentAFormula = closed<Parameters<typeof loadCurrentA>[0]>({
  id: 'loadCurrentA',
  call: loadCurrentA,
  symbols: (i) => ({
    V: { tex: 'V', unit: 'V', of: 'supplyV', meaning: 'source voltage' },
    R_s: { tex: 'R_s', unit: 'Ω', of: 'seriesOhm', meaning: 'source, wires and joints in series' },
    ...loads[i.load.kind].symbol,
  }),
  results: (i) => [{ name: 'I', tex: 'I', unit: 'A', meaning: 'current in the loop', expression: loads[i.load.kind].expression }],
  source: derived("Ohm's and Kirchhoff's laws"),
  validity: ['a load of constant power runs at the higher of its two voltages'],
})
