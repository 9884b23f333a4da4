import { contactDefaults, crimpInterfaceResistanceOhm } from '@strandwise/core/joint'
import { closed } from '../formula.ts'
import { fromMemory } from '../sources.ts'

/** The working of crimpInterfaceResistanceOhm. */
export const crimpInterfaceResistanceOhmFormula = closed<Parameters<typeof crimpInterfaceResistanceOhm>[0]>({
  id: 'crimpInterfaceResistanceOhm',
  call: crimpInterfaceResistanceOhm,
  symbols: (i) => ({
    F: { tex: 'F', unit: 'N', of: 'forceN', meaning: 'force between the faces' },
    H: { tex: 'H', unit: 'MPa', of: 'hardnessMPa', meaning: 'hardness of the softer metal' },
    rho_1: { tex: '\\rho_1', unit: 'Ω m', of: 'resistivity1OhmM', meaning: 'metal on one side' },
    rho_2: { tex: '\\rho_2', unit: 'Ω m', of: 'resistivity2OhmM', meaning: 'metal on the other' },
    n: { tex: 'n', unit: '1', of: () => i.spots ?? contactDefaults.spots, meaning: 'number of like spots' },
    ...(i.clusterRadiusMm === undefined ? {} : { c: { tex: 'c', unit: 'mm', of: 'clusterRadiusMm', meaning: 'radius of the patch in which they lie' } }),
    sigma: { tex: '\\sigma', unit: 'Ω m²', of: () => i.filmOhmM2 ?? contactDefaults.filmOhmM2, meaning: 'resistance of a unit of area of the film' },
    k: { tex: 'k', unit: '1', of: () => i.realAreaFactor ?? contactDefaults.realAreaFactor, meaning: 'touching area over force over hardness' },
  }),
  steps: [
    { name: 'A', tex: 'A', unit: 'mm²', meaning: 'area that touches', expression: 'k * F/H' },
    { name: 'a', tex: 'a', unit: 'mm', meaning: 'radius of one spot', expression: 'sqrt(A/(n * pi))' },
  ],
  results: (i) => [
    {
      name: 'R',
      tex: 'R',
      unit: 'Ω',
      meaning: 'interface resistance',
      expression: `(rho_1 + rho_2)/4 * 1000 * (1/(n * a)${i.clusterRadiusMm === undefined ? '' : ' + 1/c'}) + sigma * 10^6/A`,
    },
  ],
  source: fromMemory('Holm, Electric Contacts, 1967 (spot); Greenwood 1966 (cluster)'),
  validity: ['clean contact but for the film; the force is what is left after springback'],
})
