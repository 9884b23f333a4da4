import { constrictionResistanceOhm, contactDefaults } from '@strandwise/core/joint'
import { closed } from '../formula.ts'
import { fromMemory } from '../sources.ts'

/** The working of constrictionResistanceOhm. */
export const constrictionResistanceOhmFormula = closed<Parameters<typeof constrictionResistanceOhm>[0]>({
  id: 'constrictionResistanceOhm',
  call: constrictionResistanceOhm,
  symbols: (i) => ({
    rho_1: { tex: '\\rho_1', unit: 'Ω m', of: 'resistivity1OhmM', meaning: 'metal on one side' },
    rho_2: { tex: '\\rho_2', unit: 'Ω m', of: 'resistivity2OhmM', meaning: 'metal on the other' },
    a: { tex: 'a', unit: 'mm', of: 'spotRadiusMm', meaning: 'radius of one spot' },
    n: { tex: 'n', unit: '1', of: () => i.spots ?? contactDefaults.spots, meaning: 'number of like spots' },
    ...(i.clusterRadiusMm === undefined ? {} : { c: { tex: 'c', unit: 'mm', of: 'clusterRadiusMm', meaning: 'radius of the patch in which they lie' } }),
  }),
  results: (i) => [
    {
      name: 'R',
      tex: 'R',
      unit: 'Ω',
      meaning: 'constriction resistance',
      expression: `(rho_1 + rho_2)/4 * 1000 * (1/(n * a)${i.clusterRadiusMm === undefined ? '' : ' + 1/c'})`,
    },
  ],
  source: fromMemory('Holm, Electric Contacts, 1967 (spot); Greenwood 1966 (cluster)'),
  validity: ['round spots, small against the parts and their distance'],
})
