import { choice, quantity, sizeField } from '../../question/fields.ts'
import type { Question } from '../../question/question.ts'
import { unitsField } from '../../question/unitsField.ts'
import { quoted } from '../../rulesById.ts'
import { metricMm2 } from '../sizes.ts'
import type { RunFacts } from './answer.ts'

/** "What does this run resist, and what does it drop?" */
export const runDropQuestion: Question<RunFacts> = {
  id: 'run-drop',
  title: 'What does this run of wire resist, and what does it drop?',
  summary: 'Resistance and voltage drop of feed and return with their joints, at the temperature of the wire, and the sizes next to it.',
  scenario:
    'A puppet theatre (invented for this page): a 12 V lamp of 4.2 A hangs on 3 m of 1 mm², laid out and back behind the stage, with two joints of 2 mΩ.',
  facts: { sizesMm2: metricMm2 },
  groups: [
    {
      id: 'wire',
      title: 'The wire',
      fields: [
        sizeField('1'),
        choice('metal', 'Metal', 'annealed-copper', {
          'annealed-copper': 'copper',
          'tinned-copper': 'tinned copper',
          'copper-clad-aluminium': 'copper-clad aluminium',
          'aluminium-1350': 'aluminium',
        }),
        quantity('out', 'Wire out', 'lengthM', '3'),
        quantity('back', 'Wire back', 'lengthM', '3', { note: '0 m where a frame returns the current.' }),
        quantity('hot', 'Temperature of the wire', 'temperatureC', '40', { high: 300 }),
      ],
    },
    {
      id: 'load',
      title: 'What runs through it',
      fields: [
        quantity('current', 'Current', 'currentA', '4.2', { aboveLow: true }),
        quantity('supply', 'Supply', 'voltageV', '12', { aboveLow: true }),
        quantity('drop', 'Drop allowed', 'voltageV', '0.36', { aboveLow: true, note: '3 % of 12 V is 0.36 V.' }),
        quantity('joints', 'Joints and contacts in the loop, together', 'resistanceOhm', '0.004', { high: 100 }),
        unitsField,
      ],
    },
  ],
  cautions: quoted('ca-power-off', 'wp-conflict-drop-budget'),
  rests: [
    { title: 'Holds', words: 'Direct current. The lay of the strands is not counted: it adds up to 5 %. The wire is as warm all along as you say.' },
    { title: 'Sources', words: 'Resistivity and its temperature by IEC 60028; Ohm’s law; sizes of IEC 60228.' },
  ],
}
