import { readingDefaults, twoWireProof } from '@strandwise/core/meter'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of twoWireProof. */
export const twoWireProofFormula = closed<Parameters<typeof twoWireProof>[0]>({
  id: 'twoWireProof',
  call: twoWireProof,
  symbols: {
    r: { tex: 'r', unit: 'Ω', of: 'readingOhm', meaning: 'reading as shown' },
    p: { tex: 'p', unit: '%', of: 'meter.percentOfReading', meaning: 'share of the reading, from the accuracy of the meter' },
    n: { tex: 'n', unit: '1', of: 'meter.counts', meaning: 'counts, from the accuracy of the meter' },
    q: { tex: 'q', unit: 'Ω', of: 'meter.resolutionOhm', meaning: 'one count on the range in use' },
    r_0: { tex: 'r_0', unit: 'Ω', of: (i) => i.meter.leadOhm ?? readingDefaults.leadOhm, meaning: 'reading with the tips held together' },
    b: { tex: 'b', unit: 'Ω', of: (i) => i.meter.leadUncertaintyOhm ?? readingDefaults.leadUncertaintyOhm, meaning: 'half width of that null' },
    I: { tex: 'I', unit: 'A', of: 'currentA', meaning: 'working current' },
  },
  steps: [{ name: 'a', tex: 'a', unit: 'Ω', meaning: 'bound of the meter', expression: 'abs(r) * p/100 + n * q' }],
  results: [
    { name: 'V_high', tex: 'V_{high}', unit: 'V', meaning: 'highest drop at the working current', expression: 'I * (r - r_0 + (a + b))', of: 'dropHighV' },
    { name: 'V_low', tex: 'V_{low}', unit: 'V', meaning: 'lowest drop at the working current', expression: 'I * (r - r_0 - (a + b))', of: 'dropLowV' },
  ],
  source: published('JCGM 106:2012', "guarded acceptance and rejection; Ohm's law"),
  validity: ['passes where the highest is allowed, fails where the lowest is not, cannot tell between'],
})
