import { quantity, sizeField } from '../../question/fields.ts'
import type { Question } from '../../question/question.ts'
import { unitsField } from '../../question/unitsField.ts'
import { quoted } from '../../rulesById.ts'

/** "What may the joint drop, and each stretch?" */
export const dropLimitQuestion: Question<Record<string, never>> = {
  id: 'drop-limit',
  title: 'How many millivolts may the joint drop, and each stretch?',
  summary:
    'What a sound circuit shows from tip to tip: the limit of the joint by heat, by drop and against plain wire, and the expected volts of feed and return.',
  scenario: 'A slot-car track (invented for this page): 4.5 A through 3 m of 1.5 mm² out and back, one joint 8 mm long in the feed, tested with 2 A.',
  facts: {},
  groups: [
    {
      id: 'wire',
      title: 'The circuit',
      fields: [
        sizeField('1.5'),
        quantity('out', 'Wire out', 'lengthM', '3'),
        quantity('back', 'Wire back', 'lengthM', '3'),
        quantity('air', 'Hottest air', 'temperatureC', '40'),
        quantity('limit', 'What its insulation stands', 'temperatureC', '70', { low: 40, high: 260 }),
        quantity('wall', 'Wall of the insulation', 'lengthMm', '0.7', { high: 10 }),
      ],
    },
    {
      id: 'joint',
      title: 'The joint and the test',
      fields: [
        quantity('current', 'Working current', 'currentA', '4.5', { aboveLow: true }),
        quantity('test', 'Current while you measure', 'currentA', '2', { aboveLow: true }),
        quantity('long', 'Length of the joint', 'lengthMm', '8', { aboveLow: true, high: 200 }),
        quantity('allowed', 'Drop allowed over the joint', 'voltageV', '0.05', { aboveLow: true }),
        quantity('times', 'How many times plain wire of its length it may resist', 'ratio', '10', { low: 1, high: 1000, note: '1 is as good as new wire.' }),
        unitsField,
      ],
    },
  ],
  cautions: quoted('ca-power-off', 'rd-amps-jack'),
  rests: [
    { title: 'Holds', words: 'A joint as a point between two long copper wires in still air; the stretches at 20 °C while you measure.' },
    { title: 'Sources', words: 'Heat balance of joint and wires (derived); Ohm’s law; resistivity by IEC 60028.' },
  ],
}
