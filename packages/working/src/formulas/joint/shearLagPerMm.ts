import { shearLagPerMm } from '@strandwise/core/joint'
import { closed } from '../formula.ts'
import { fromMemory } from '../sources.ts'

/** The working of shearLagPerMm. */
export const shearLagPerMmFormula = closed<Parameters<typeof shearLagPerMm>[0]>({
  id: 'shearLagPerMm',
  call: shearLagPerMm,
  symbols: {
    G: { tex: 'G', unit: 'MPa', of: 'shearModulusMPa', meaning: 'shear modulus of the solder' },
    w: { tex: 'w', unit: 'mm', of: 'bondWidthMm', meaning: 'width of the bond' },
    s: { tex: 's', unit: 'mm', of: 'layerMm', meaning: 'thickness of the solder' },
    E_1: { tex: 'E_1', unit: 'MPa', of: 'conductors.0.modulusMPa', meaning: "Young's modulus of the first conductor" },
    A_1: { tex: 'A_1', unit: 'mm²', of: 'conductors.0.areaMm2', meaning: 'its area' },
    E_2: { tex: 'E_2', unit: 'MPa', of: 'conductors.1.modulusMPa', meaning: "Young's modulus of the second conductor" },
    A_2: { tex: 'A_2', unit: 'mm²', of: 'conductors.1.areaMm2', meaning: 'its area' },
  },
  results: [{ name: 'm', tex: 'm', unit: '1/mm', meaning: 'shear-lag coefficient', expression: 'sqrt(G * w/s * (1/(E_1 * A_1) + 1/(E_2 * A_2)))' }],
  source: fromMemory('Volkersen 1938'),
  validity: ['elastic'],
})
