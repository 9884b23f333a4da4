import { fusingConstants, fusingCurrentPreeceA } from '@strandwise/core/ampacity'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of fusingCurrentPreeceA. */
export const fusingCurrentPreeceAFormula = closed<Parameters<typeof fusingCurrentPreeceA>[0]>({
  id: 'fusingCurrentPreeceA',
  call: fusingCurrentPreeceA,
  symbols: {
    C: { tex: 'C', unit: 'A/in^1.5', of: (i) => fusingConstants.preece[i.material].aPerInch15, meaning: 'constant of the metal' },
    d: { tex: 'd', unit: 'mm', of: 'diameterMm', meaning: 'diameter of the wire' },
  },
  results: [{ name: 'I', tex: 'I', unit: 'A', meaning: 'melting current', expression: 'C * (d/25.4)^1.5' }],
  source: published('Preece, Proc. Royal Society, 1880s, as quoted by Brooks and Adam'),
  validity: ['long bare wire in open air; it tells when the wire is destroyed and is no rating'],
})
