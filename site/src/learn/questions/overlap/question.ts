import { solders } from '@strandwise/core/materials'
import { lapOverlapDiameters } from '@strandwise/core/solder'
import { choice, quantity, sizeField } from '../../question/fields.ts'
import type { Question } from '../../question/question.ts'
import { unitsField } from '../../question/unitsField.ts'
import { quoted } from '../../rulesById.ts'
import type { OverlapFacts } from './answer.ts'

const alloys = Object.values(solders).flatMap((one) => (one.resistivityOhmM === null ? [] : [[one.name, one.resistivityOhmM.nominal] as const]))

/** "How long an overlap, and what does it resist?" */
export const overlapQuestion: Question<OverlapFacts> = {
  id: 'overlap',
  title: 'How long an overlap, and what does it resist?',
  summary: 'A soldered overlap: its resistance against plain wire of its length, the length that breaks even, and what it holds.',
  scenario: 'An LED strip (invented for this page): two ends of 0.75 mm², tinned and laid side by side, soldered along 6 mm.',
  facts: { alloys: Object.fromEntries(alloys), rule: { low: lapOverlapDiameters.low, high: lapOverlapDiameters.high } },
  groups: [
    {
      id: 'joint',
      title: 'The joint',
      fields: [
        sizeField('0.75'),
        quantity('overlap', 'Overlap', 'lengthMm', '6', { aboveLow: true, high: 200 }),
        choice('alloy', 'Solder', 'Sn60Pb40', Object.fromEntries(alloys.map(([name]) => [name, name]))),
        quantity('fillet', 'Width of good fillet between the two', 'lengthMm', '0.6', {
          aboveLow: true,
          high: 20,
          note: 'Not the wire’s diameter: where the solder really bridges.',
        }),
        quantity('layer', 'Solder between the wires', 'lengthMm', '0.1', { aboveLow: true, high: 5 }),
        quantity('current', 'Current', 'currentA', '4', { aboveLow: true }),
        unitsField,
      ],
    },
  ],
  cautions: quoted('sr-splice-no-load', 'jg-fillet'),
  rests: [
    {
      title: 'Holds',
      words:
        'Two copper wires along each other with solder all along. One-dimensional: below one wire diameter the result is a lower bound. An overlap carries no lasting pull.',
    },
    {
      title: 'Sources',
      words: 'Two conductors coupled by a conductance per length (derived, checked by a ladder of resistors); three to six diameters: NASA-STD-8739.4.',
    },
  ],
}
