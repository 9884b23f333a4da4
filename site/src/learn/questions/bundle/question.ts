import { choice, quantity } from '../../question/fields.ts'
import type { Question } from '../../question/question.ts'
import { unitsField } from '../../question/unitsField.ts'
import { quoted } from '../../rulesById.ts'

/** "How wide is the bundle?" */
export const bundleQuestion: Question<Record<string, never>> = {
  id: 'bundle',
  title: 'How wide is this bundle, how tight may it bend, which clamp?',
  summary: 'Wires of up to three sizes packed to the smallest circle, the bend radius by the trade’s rule, and the clamp one step up.',
  scenario: 'A stage harness (invented for this page): seven wires of 2.1 mm and two of 3 mm outside, in one bundle.',
  facts: {},
  groups: [
    {
      id: 'wires',
      title: 'The wires',
      sentence: 'Outside diameters, over the insulation.',
      fields: [
        quantity('count1', 'Wires of the first size', 'ratio', '7', { low: 1, high: 40, whole: true }),
        quantity('outside1', 'their outside', 'lengthMm', '2.1', { aboveLow: true, high: 30 }),
        quantity('count2', 'Wires of a second size', 'ratio', '2', { low: 0, high: 40, whole: true }),
        quantity('outside2', 'their outside', 'lengthMm', '3', { aboveLow: true, high: 30 }),
        quantity('count3', 'Wires of a third size', 'ratio', '0', { low: 0, high: 40, whole: true }),
        quantity('outside3', 'their outside', 'lengthMm', '5', { aboveLow: true, high: 30 }),
      ],
    },
    {
      id: 'place',
      title: 'How it is led',
      fields: [
        choice('rule', 'The bend', 'unsupported', {
          unsupported: 'free, ten diameters',
          supported: 'at a terminal strip, well supported: three diameters',
          coaxial: 'holds a coaxial line: ten diameters of it',
        }),
        unitsField,
      ],
    },
  ],
  cautions: quoted('sr-bend-10d', 'sr-bend-coax'),
  rests: [
    {
      title: 'Holds',
      words: 'The smallest circle that was found: a real bundle, twisted and tied by hand, comes out up to a tenth wider (from memory). At most 40 wires.',
    },
    { title: 'Sources', words: 'Circle packing, checked against published best packings; bend radius by FAA AC 43.13-1B, chapter 11.' },
  ],
}
