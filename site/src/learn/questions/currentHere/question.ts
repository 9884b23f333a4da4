import { insulations } from '@strandwise/core/materials'
import { choice, quantity, sizeField } from '../../question/fields.ts'
import type { Question } from '../../question/question.ts'
import { unitsField } from '../../question/unitsField.ts'
import { quoted } from '../../rulesById.ts'
import { metricMm2 } from '../sizes.ts'
import type { HereFacts } from './answer.ts'

const known = Object.values(insulations).flatMap((one) =>
  one.continuousC === null || one.conductivityWPerMK === null
    ? []
    : [[one.name, { limitC: one.continuousC.low, conductivityWPerMK: one.conductivityWPerMK.nominal }] as const],
)

/** "How much current in this heat and bundle?" */
export const currentHereQuestion: Question<HereFacts> = {
  id: 'current-here',
  title: 'How much current stays safe in this heat and bundle?',
  summary: 'The ampacity of a wire where it really lies: in hot air, among others that carry as much, against the same wire alone in a room.',
  scenario: 'A kiln room (invented for this page): a fan’s 1.5 mm² with PVC runs over the kiln in air of 60 °C, tied to four others that are loaded as well.',
  facts: { insulations: Object.fromEntries(known), sizesMm2: metricMm2 },
  groups: [
    {
      id: 'wire',
      title: 'The wire',
      fields: [
        sizeField('1.5'),
        choice(
          'insulation',
          'Insulation',
          'PVC',
          Object.fromEntries(known.map(([name, { limitC }]) => [name, `${name}, lowest grade ${limitC} °C`])),
          'The lowest grade counts, unless the print on the wire says more.',
        ),
        quantity('limit', 'Limit printed on the wire', 'temperatureC', '', { optional: true, example: '105 °C', low: 40, high: 260 }),
        quantity('wall', 'Wall of the insulation', 'lengthMm', '0.7', { high: 10 }),
      ],
    },
    {
      id: 'place',
      title: 'Where it lies',
      fields: [
        quantity('air', 'Hottest air', 'temperatureC', '60'),
        quantity('loaded', 'Wires in the bundle that carry as much, this one counted', 'ratio', '5', {
          low: 1,
          high: 40,
          whole: true,
          note: '1 is alone, with air all round it.',
        }),
        unitsField,
      ],
    },
  ],
  cautions: quoted('ca-fuse-not-larger'),
  rests: [
    { title: 'Band', words: 'Still air round a thin wire is published in two ways, some 20 % apart in heat shed. The answer rests on the unfavourable one.' },
    { title: 'Holds', words: 'One horizontal copper wire or a round bundle of equal wires, in still air, steadily. Not in foam, under plaster or on a drum.' },
    {
      title: 'Sources',
      words:
        'Heat balance of an insulated wire: Churchill and Chu 1975 or Morgan 1975; limits as the table of insulations tells; conductivity across a bundle from memory.',
    },
  ],
}
