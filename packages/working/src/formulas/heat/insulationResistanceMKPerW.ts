import { insulationResistanceMKPerW } from '@strandwise/core/heat'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of insulationResistanceMKPerW. */
export const insulationResistanceMKPerWFormula = closed<Parameters<typeof insulationResistanceMKPerW>[0]>({
  id: 'insulationResistanceMKPerW',
  call: insulationResistanceMKPerW,
  symbols: {
    d: { tex: 'd', unit: 'mm', of: 'conductorDiameterMm', meaning: 'inside diameter of the wall' },
    D: { tex: 'D', unit: 'mm', of: 'outsideDiameterMm', meaning: 'outside diameter of the wall' },
    k: { tex: 'k', unit: 'W/(m K)', of: 'conductivityWPerMK', meaning: 'conductivity of the wall' },
  },
  results: [{ name: 'R', tex: "R'", unit: 'm K/W', meaning: 'thermal resistance of a metre', expression: 'log(D/d)/(2 * pi * k)' }],
  source: published('IEC 60287-2-1', "Fourier's law in a round wall"),
  validity: ['heat flows straight outwards'],
})
