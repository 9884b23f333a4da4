import { crimpDefaults, crimpHeightMm } from '@strandwise/core/crimp'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of crimpHeightMm. */
export const crimpHeightMmFormula = closed<Parameters<typeof crimpHeightMm>[0]>({
  id: 'crimpHeightMm',
  call: crimpHeightMm,
  symbols: {
    A: { tex: 'A', unit: 'mm²', of: 'conductorAreaMm2', meaning: 'metal area of the strands' },
    A_b: { tex: 'A_b', unit: 'mm²', of: 'barrelMetalAreaMm2', meaning: "section of the barrel's metal" },
    c: { tex: 'c', unit: '1', of: 'compressionFraction', meaning: 'share of the strands squeezed out' },
    w: { tex: 'w', unit: 'mm', of: 'crimpWidthMm', meaning: 'width of the crimp' },
    s: { tex: 's', unit: '1', of: (i) => i.shapeFactor ?? crimpDefaults.shapeFactor, meaning: 'area of the section over width times height' },
  },
  results: [{ name: 'h', tex: 'h', unit: 'mm', meaning: 'height of the crimp', expression: '(A_b + A * (1 - c))/(w * s)' }],
  source: derived("the barrel's section is kept; definition of the compression"),
  validity: ['the height that the maker of the terminal prints comes first'],
})
