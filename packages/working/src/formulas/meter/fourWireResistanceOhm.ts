import { fourWireResistanceOhm } from '@strandwise/core/meter'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of fourWireResistanceOhm. */
export const fourWireResistanceOhmFormula = closed<Parameters<typeof fourWireResistanceOhm>[0]>({
  id: 'fourWireResistanceOhm',
  call: fourWireResistanceOhm,
  symbols: (i) => ({
    V: { tex: 'V', unit: 'V', of: 'forwardV', meaning: 'between the sense tips, current forward' },
    ...(i.reversedV === undefined ? {} : { V_r: { tex: 'V_r', unit: 'V', of: 'reversedV', meaning: 'the same, current reversed' } }),
    I: { tex: 'I', unit: 'A', of: 'currentA', meaning: 'size of the current' },
  }),
  results: (i) => [
    { name: 'R', tex: 'R', unit: 'Ω', meaning: 'resistance between the sense tips', expression: i.reversedV === undefined ? 'V/I' : '(V - V_r)/(2 * I)' },
  ],
  source: published('ASTM B539-02', 'clause 9, current reversal'),
  validity: ['sense tips inside the current tips'],
})
