import type { MetalName } from '@strandwise/core/materials'
import { anodicIndex, galvanicDifferenceV } from '@strandwise/core/suitability'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The function has refused metals without an index already. */
const indexV = (name: MetalName): number => (anodicIndex[name]?.hundredthsV ?? Number.NaN) / 100

/** The working of galvanicDifferenceV. */
export const galvanicDifferenceVFormula = closed<{ readonly metal1: MetalName; readonly metal2: MetalName }>({
  id: 'galvanicDifferenceV',
  call: ({ metal1, metal2 }) => galvanicDifferenceV(metal1, metal2),
  symbols: {
    V_1: { tex: 'V_1', unit: 'V', of: (i) => indexV(i.metal1), meaning: 'anodic index of the one metal' },
    V_2: { tex: 'V_2', unit: 'V', of: (i) => indexV(i.metal2), meaning: 'anodic index of the other' },
  },
  results: [{ name: 'U', tex: '\\Delta V', unit: 'V', meaning: 'difference without sign', expression: 'abs(V_1 - V_2)' }],
  source: published('Anodic index table of dissimilar metals', 'rows of steel and aluminium from memory'),
  validity: ['metals that touch where it is wet'],
})
