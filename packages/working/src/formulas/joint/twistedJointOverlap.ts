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
    rho: { tex: '\\rho', unit: 'Ω m', of: 'resistivityOhmM', meaning: 'resistivity across the wires' },
    rho_c: { tex: '\\rho_c', unit: 'Ω m²', of: (i) => i.filmOhmM2 ?? lapDefaults.filmOhmM2, meaning: 'specific resistance of a film' },
    r_1: { tex: 'r_1', unit: 'Ω/m', of: 'conductorsOhmPerM.0', meaning: 'first wire, straight' },
    r_2: { tex: 'r_2', unit: 'Ω/m', of: 'conductorsOhmPerM.1', meaning: 'second wire, straight' },
    d_1: { tex: 'd_1', unit: 'mm', of: 'diametersMm.0', meaning: 'first wire' },
    d_2: { tex: 'd_2', unit: 'mm', of: 'diametersMm.1', meaning: 'second wire' },
  },
  steps: [
    { name: 'd_t', tex: 'd_t', unit: 'mm', meaning: 'thinner wire', expression: 'min(d_1, d_2)' },
    {
      name: 'G',
      tex: 'G',
      unit: '1',
      meaning: 'width over gap of an even strip that conducts as well as the fillet',
      expression: '2 * (1 + s/d_t)/sqrt(s/d_t * (2 + s/d_t)) * atan(sqrt((2 + s/d_t)/(s/d_t)) * tan(asin(w/d_t)/2)) - asin(w/d_t)',
    },
    {
      name: 'r_f',
      tex: 'r_f',
      unit: 'Ω m',
      meaning: 'a metre of fillet, spreading in both wires included',
      expression: 'rho_s/G + 1000 * rho_c/(s * G) + 2 * rho * (1/8 - log(sin(asin(min(1, sqrt(w * s * G)/d_t))/2)))/pi',
    },
  ],
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
    { name: 'g', tex: 'g', unit: 'S/m', meaning: 'conductance per metre of joint', expression: '1/r_f', of: 'interfaceSPerM' },
  ],
  source: derived('geometry of a helix'),
  validity: ['the wires touch along the axis; lapJointResistanceOhm takes it from there', 'the fillet is that of two wires as thick as the thinner one'],
})
