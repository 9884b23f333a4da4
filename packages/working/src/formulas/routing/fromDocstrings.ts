// Made from the docstrings of core by "npm test -- --update-api"; change the docstring instead.
import { standardGravityMPerS2 } from '@strandwise/core/heat'
import { bendStrain, wireSagMm } from '@strandwise/core/routing'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of bendStrain. */
export const bendStrainFormula = closed<Parameters<typeof bendStrain>[0]>({
  id: 'bendStrain',
  call: bendStrain,
  symbols: {
    d: { tex: 'd', unit: 'mm', of: 'strandDiameterMm', meaning: 'diameter of the strand' },
    R: { tex: 'R', unit: 'mm', of: 'bendRadiusMm', meaning: 'radius to the inside of the strand' },
  },
  results: [
    { name: 'e', tex: 'e', unit: '1', meaning: 'strain at the outside', expression: 'd/(2 * R + d)' },
  ],
  source: derived('geometry of a round bent to a circle'),
  validity: ['Bending alone, neutral fibre in the middle: pull and friction between strands are extra. A strand of a rope-laid wire sees less.'],
})

/** The working of wireSagMm. */
export const wireSagMmFormula = closed<Parameters<typeof wireSagMm>[0]>({
  id: 'wireSagMm',
  call: wireSagMm,
  symbols: {
    m: { tex: 'm', unit: 'kg/m', of: 'massKgPerM', meaning: 'mass per length, insulation and all' },
    g: { tex: 'g', unit: 'm/s²', of: () => standardGravityMPerS2, meaning: 'standard gravity' },
    L: { tex: 'L', unit: 'mm', of: 'spanMm', meaning: 'distance between the ties, both at one height' },
    T: { tex: 'T', unit: 'N', of: 'pullN', meaning: 'level part of the pull, at least the weight of the wire between the ties' },
  },
  results: [
    { name: 's', tex: 's', unit: 'mm', meaning: 'sag in the middle, at most an eighth of the span', expression: 'm * g * L^2/(8 * T)/1000' },
  ],
  source: derived('moments about a tie, of a load even along the span; the limit of an eighth is set here, for its 2.1 %'),
  validity: ['Weight uniform along the span, which makes the curve a parabola: 2.1 % too flat at a sag of 1/8 of the span, less below. The pull is its horizontal component, constant along the wire; at a tie the weight of a length of wire equal to the sag is added. Stiffness is left out: it makes the sag smaller.'],
})
