import { bendRadiusMultiples, minimumBendRadiusMm } from '@strandwise/core/routing'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of minimumBendRadiusMm. */
export const minimumBendRadiusMmFormula = closed<Parameters<typeof minimumBendRadiusMm>[0]>({
  id: 'minimumBendRadiusMm',
  call: minimumBendRadiusMm,
  symbols: {
    n: { tex: 'n', unit: '1', of: (i) => i.multiple ?? bendRadiusMultiples[i.rule], meaning: 'diameters of the rule' },
    D: { tex: 'D', unit: 'mm', of: 'outsideDiameterMm', meaning: 'outside diameter of the wire, or of the bundle' },
  },
  results: [{ name: 'R', tex: 'R', unit: 'mm', meaning: 'radius to the inside of the bend', expression: 'n * D' }],
  source: published('FAA AC 43.13-1B; SAE AS50881 for coaxial lines', 'chapter 11'),
  validity: ['to the inside of the bend'],
  notes: (i) => (i.multiple === undefined && i.rule === 'supported' ? ['the three diameters of a supported break-out are from memory'] : []),
})
