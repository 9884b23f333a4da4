import { readingDefaults, readingInterval } from '@strandwise/core/meter'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of readingInterval. */
export const readingIntervalFormula = closed<Parameters<typeof readingInterval>[0]>({
  id: 'readingInterval',
  call: readingInterval,
  symbols: {
    r: { tex: 'r', unit: 'Ω', of: 'reading', meaning: 'reading as shown' },
    p: { tex: 'p', unit: '%', of: 'percentOfReading', meaning: 'share of the reading, from the accuracy of the meter' },
    n: { tex: 'n', unit: '1', of: 'counts', meaning: 'counts, from the accuracy of the meter' },
    q: { tex: 'q', unit: 'Ω', of: 'resolution', meaning: 'one count on the range in use' },
    r_0: { tex: 'r_0', unit: 'Ω', of: (i) => i.leadOhm ?? readingDefaults.leadOhm, meaning: 'reading with the tips held together' },
    b: { tex: 'b', unit: 'Ω', of: (i) => i.leadUncertaintyOhm ?? readingDefaults.leadUncertaintyOhm, meaning: 'half width of that null' },
  },
  steps: [{ name: 'a', tex: 'a', unit: 'Ω', meaning: 'bound of the meter', expression: 'abs(r) * p/100 + n * q' }],
  results: [
    { name: 'u', tex: 'u', unit: 'Ω', meaning: 'standard uncertainty', expression: 'sqrt((a^2 + b^2)/3)', of: 'standardUncertainty' },
    { name: 'low', tex: 'r_{low}', unit: 'Ω', meaning: 'low end', expression: 'r - r_0 - (a + b)', of: 'low' },
    { name: 'high', tex: 'r_{high}', unit: 'Ω', meaning: 'high end', expression: 'r - r_0 + (a + b)', of: 'high' },
  ],
  source: published('JCGM 100:2008 (GUM)', '4.3.7, rectangular distribution within bounds'),
  validity: ['accuracy and null as bounds; the ends are not clipped', 'shown in ohm; a reading in volts takes the same steps'],
})
