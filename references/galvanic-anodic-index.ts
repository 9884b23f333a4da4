import { galvanicDifferenceV } from '@strandwise/core/suitability'
import type { Reference } from './compare.ts'

export const reference: Reference = {
  source: 'Anodic index table of dissimilar metals, as design handbooks carry it',
  clause: 'index of silver 0.15, nickel 0.30, copper 0.35, brass 0.40, tin plate 0.60 V',
  status: 'derived',
  notes: 'The indices were read on one page; the differences are taken from them here.',
  cases: [
    { title: 'copper to tin plate', printed: '0.25', unit: 'V', got: () => galvanicDifferenceV('annealed-copper', 'tinned-copper') },
    { title: 'copper to brass', printed: '0.05', unit: 'V', got: () => galvanicDifferenceV('annealed-copper', 'brass-cuzn30') },
    { title: 'copper to silver', printed: '0.20', unit: 'V', got: () => galvanicDifferenceV('annealed-copper', 'silver') },
    { title: 'nickel to tin plate', printed: '0.30', unit: 'V', got: () => galvanicDifferenceV('nickel', 'tin') },
  ],
}
