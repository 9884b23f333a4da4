// Made from the docstrings of core by "npm test -- --update-api"; change the docstring instead.
import { compressionFraction, crimpDefaults, crimpHeightMm } from '@strandwise/core/crimp'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of compressionFraction. */
export const compressionFractionFormula = closed<Parameters<typeof compressionFraction>[0]>({
  id: 'compressionFraction',
  call: compressionFraction,
  symbols: {
    A_l: { tex: 'A_{l}', unit: 'mm²', of: 'looseAreaMm2', meaning: 'strands before the crimp' },
    A_c: { tex: 'A_{c}', unit: 'mm²', of: 'crimpedAreaMm2', meaning: 'strands in the crimped section' },
  },
  results: [
    { name: 'c', tex: 'c', unit: '1', meaning: 'share removed', expression: '1 - A_c/A_l' },
  ],
  source: derived('definition, as crimp makers use it; 0.15 to 0.20 is common practice on copper'),
  validity: ['Both areas are metal alone, without the voids between strands. The displaced metal has moved along the wire.'],
})

/** The working of crimpHeightMm. */
export const crimpHeightMmFormula = closed<Parameters<typeof crimpHeightMm>[0]>({
  id: 'crimpHeightMm',
  call: crimpHeightMm,
  symbols: {
    A: { tex: 'A', unit: 'mm²', of: 'conductorAreaMm2', meaning: 'metal area of the strands before the crimp' },
    A_b: { tex: 'A_{b}', unit: 'mm²', of: 'barrelMetalAreaMm2', meaning: 'section of the barrel\'s own metal' },
    c: { tex: 'c', unit: '1', of: 'compressionFraction', meaning: 'share of the strands\' area that is squeezed out' },
    w: { tex: 'w', unit: 'mm', of: 'crimpWidthMm', meaning: 'width of the crimped section' },
    s: { tex: 's', unit: '1', of: (i) => i.shapeFactor ?? crimpDefaults.shapeFactor, meaning: 'area of the section over width times height' },
  },
  results: [
    { name: 'h', tex: 'h', unit: 'mm', meaning: 'height of the crimped section', expression: '(A_b + A * (1 - c))/(w * s)' },
  ],
  source: derived('conservation of the barrel\'s section, and the definition of the compression'),
  validity: ['The barrel\'s metal keeps its area and the voids are closed. The height printed by the terminal\'s maker takes precedence.'],
})
