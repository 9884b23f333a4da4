// Made from the docstrings of core by "npm test -- --update-api"; change the docstring instead.
import { criticalRadiusMm, insulationResistanceMKPerW } from '@strandwise/core/heat'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of criticalRadiusMm. */
export const criticalRadiusMmFormula = closed<Parameters<typeof criticalRadiusMm>[0]>({
  id: 'criticalRadiusMm',
  call: criticalRadiusMm,
  symbols: {
    k: { tex: 'k', unit: 'W/(m K)', of: 'insulationConductivityWPerMK', meaning: 'conductivity of the insulation' },
    h: { tex: 'h', unit: 'W/(m² K)', of: 'filmWPerM2K', meaning: 'film coefficient at the surface' },
  },
  results: [
    { name: 'r_c', tex: 'r_{c}', unit: 'mm', meaning: 'critical radius', expression: '1000 * k/h' },
  ],
  source: published('Holman, Heat Transfer, critical thickness of insulation'),
  validity: ['The film coefficient is taken as the same at every radius.'],
})

/** The working of insulationResistanceMKPerW. */
export const insulationResistanceMKPerWFormula = closed<Parameters<typeof insulationResistanceMKPerW>[0]>({
  id: 'insulationResistanceMKPerW',
  call: insulationResistanceMKPerW,
  symbols: {
    d: { tex: 'd', unit: 'mm', of: 'conductorDiameterMm', meaning: 'inside diameter of the wall' },
    D: { tex: 'D', unit: 'mm', of: 'outsideDiameterMm', meaning: 'outside diameter of the wall, at least the inside one' },
    k: { tex: 'k', unit: 'W/(m K)', of: 'conductivityWPerMK', meaning: 'conductivity of the wall' },
  },
  results: [
    { name: 'R', tex: 'R', unit: 'm K/W', meaning: 'thermal resistance of one metre', expression: 'log(D/d)/(2 * pi * k)' },
  ],
  source: published('Fourier\'s law in a cylindrical wall; IEC 60287-2-1 writes it with the resistivity 1/k'),
  validity: ['Heat flows straight outwards.'],
})
