import { lapDefaults, twistedJointOverlap } from '@strandwise/core/joint'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of twistedJointOverlap. */
export const twistedJointOverlapFormula = closed<Parameters<typeof twistedJointOverlap>[0]>({
  id: 'twistedJointOverlap',
  call: twistedJointOverlap,
  symbols: {
    n: { tex: 'n', unit: '1', of: 'turns', meaning: 'turns' },
    p: { tex: 'p', unit: 'mm', of: 'pitchMm', meaning: 'advance of one turn' },
    w: { tex: 'w', unit: 'mm', of: 'filletWidthMm', meaning: 'width of good fillet' },
    s: { tex: 's', unit: 'mm', of: 'layerMm', meaning: 'thickness of the solder' },
    rho_s: { tex: '\\rho_s', unit: 'Ω m', of: 'layerOhmM', meaning: 'resistivity of the solder' },
    rho_c: { tex: '\\rho_c', unit: 'Ω m²', of: (i) => i.filmOhmM2 ?? lapDefaults.filmOhmM2, meaning: 'specific resistance of a film' },
    r_1: { tex: 'r_1', unit: 'Ω/m', of: 'conductorsOhmPerM.0', meaning: 'first wire, straight' },
    r_2: { tex: 'r_2', unit: 'Ω/m', of: 'conductorsOhmPerM.1', meaning: 'second wire, straight' },
    d_1: { tex: 'd_1', unit: 'mm', of: 'diametersMm.0', meaning: 'first wire' },
    d_2: { tex: 'd_2', unit: 'mm', of: 'diametersMm.1', meaning: 'second wire' },
  },
  results: [
    { name: 'L', tex: 'L', unit: 'mm', meaning: 'overlap that does the same', expression: 'n * p', of: 'overlapMm' },
    {
      name: 'r_a',
      tex: "r_1'",
      unit: 'Ω/m',
      meaning: 'first wire per metre of joint',
      expression: 'r_1 * sqrt(1 + (pi * d_1/p)^2)',
      of: 'conductorsOhmPerM.0',
    },
    {
      name: 'r_b',
      tex: "r_2'",
      unit: 'Ω/m',
      meaning: 'second wire per metre of joint',
      expression: 'r_2 * sqrt(1 + (pi * d_2/p)^2)',
      of: 'conductorsOhmPerM.1',
    },
    { name: 'g', tex: 'g', unit: 'S/m', meaning: 'conductance per metre of joint', expression: 'w/1000/(rho_s * s/1000 + rho_c)', of: 'interfaceSPerM' },
  ],
  source: derived('geometry of a helix'),
  validity: ['the wires touch along the axis; lapJointResistanceOhm takes it from there'],
})
