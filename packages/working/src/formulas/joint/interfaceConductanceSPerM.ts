import { interfaceConductanceSPerM, lapDefaults } from '@strandwise/core/joint'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of interfaceConductanceSPerM. */
export const interfaceConductanceSPerMFormula = closed<Parameters<typeof interfaceConductanceSPerM>[0]>({
  id: 'interfaceConductanceSPerM',
  call: interfaceConductanceSPerM,
  symbols: {
    w: { tex: 'w', unit: 'mm', of: 'bondWidthMm', meaning: 'width of the bond across the overlap' },
    s: { tex: 's', unit: 'mm', of: 'layerMm', meaning: 'thickness of the layer between the conductors' },
    rho_s: { tex: '\\rho_s', unit: 'Ω m', of: 'layerOhmM', meaning: 'resistivity of the layer' },
    rho_c: { tex: '\\rho_c', unit: 'Ω m²', of: (i) => i.filmOhmM2 ?? lapDefaults.filmOhmM2, meaning: 'specific resistance of the film' },
  },
  results: [{ name: 'g', tex: 'g', unit: 'S/m', meaning: 'conductance per metre of overlap', expression: 'w/1000/(rho_s * s/1000 + rho_c)' }],
  source: derived('layer and film in series over the width of the bond'),
  validity: ['the current crosses straight'],
})
