import { fusingConstants, fusingTimeOnderdonkS } from '@strandwise/core/ampacity'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of fusingTimeOnderdonkS. */
export const fusingTimeOnderdonkSFormula = closed<Parameters<typeof fusingTimeOnderdonkS>[0]>({
  id: 'fusingTimeOnderdonkS',
  call: fusingTimeOnderdonkS,
  symbols: {
    A: { tex: 'A', unit: 'mm²', of: 'areaMm2', meaning: 'area of the wire' },
    I: { tex: 'I', unit: 'A', of: 'currentA', meaning: 'current' },
    theta_i: { tex: '\\theta_i', unit: '°C', of: 'initialC', meaning: 'temperature at the start' },
    theta_m: { tex: '\\theta_m', unit: '°C', of: (i) => i.meltingC ?? fusingConstants.onderdonk.meltingC, meaning: 'temperature at which it melts' },
  },
  steps: [{ name: 'M', tex: 'M', unit: 'cmil', meaning: 'area in circular mils', expression: 'A/(pi/4 * 0.0254^2)' }],
  results: [
    { name: 't', tex: 't', unit: 's', meaning: 'time to the melting point', expression: '(M/I)^2 * log10(1 + (theta_m - theta_i)/(234 + theta_i))/33' },
  ],
  source: published("Onderdonk's equation, quoted in 1928", 'with the offset 234 added to the start'),
  validity: ['copper, up to about 10 s; it tells when the wire is destroyed and is no rating'],
})
