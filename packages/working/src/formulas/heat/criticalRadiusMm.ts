import { criticalRadiusMm } from '@strandwise/core/heat'
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
  results: [{ name: 'r_c', tex: 'r_c', unit: 'mm', meaning: 'critical radius', expression: 'k/h * 1000' }],
  source: published('Holman, Heat Transfer', 'critical thickness of insulation'),
  validity: ['a film coefficient that does not change with the radius'],
})
