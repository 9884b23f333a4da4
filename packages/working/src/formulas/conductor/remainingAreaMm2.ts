import { remainingAreaMm2 } from '@strandwise/core/conductor'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of remainingAreaMm2. */
export const remainingAreaMm2Formula = closed<Parameters<typeof remainingAreaMm2>[0]>({
  id: 'remainingAreaMm2',
  call: remainingAreaMm2,
  symbols: {
    A: { tex: 'A', unit: 'mm²', of: 'areaMm2', meaning: 'area when new' },
    n: { tex: 'n', unit: '1', of: 'strandCount', meaning: 'strands when new, all alike' },
    b: { tex: 'b', unit: '1', of: 'brokenStrands', meaning: 'strands broken' },
    c: { tex: 'c', unit: 'mm', of: 'corrodedDepthMm', meaning: 'depth lost all round each strand that still holds' },
  },
  steps: [{ name: 'd', tex: 'd', unit: 'mm', meaning: 'diameter of a strand when new', expression: 'sqrt(4 * A/(pi * n))' }],
  results: (i) => [
    {
      name: 'A_left',
      tex: "A'",
      unit: 'mm²',
      meaning: 'metal left',
      expression: i.corrodedDepthMm >= Math.sqrt(i.areaMm2 / i.strandCount / Math.PI) ? '0 * A' : 'A * (n - b)/n * (1 - 2 * c/d)^2',
    },
  ],
  source: derived('geometry'),
  validity: ['all strands alike; a strand eaten through counts nothing'],
})
