import { choice, quantity } from '../../question/fields.ts'
import type { Question } from '../../question/question.ts'
import { unitsField } from '../../question/unitsField.ts'
import { quoted } from '../../rulesById.ts'

/** "What does this reading prove?" */
export const readingProvesQuestion: Question<Record<string, never>> = {
  id: 'reading-proves',
  title: 'What does this reading prove about the joint?',
  summary: 'A meter’s reading as an interval, turned into volts at the working current: does it pass, fail, or say nothing at all?',
  scenario:
    'A beehive scale (invented for this page): it reads dead, and the hand meter shows 0.4 Ω across the joint, with leads of 0.2 Ω. The scale draws 0.5 A and may lose 50 mV in the joint.',
  facts: {},
  groups: [
    {
      id: 'reading',
      title: 'The reading',
      fields: [
        choice('way', 'How you measured', 'ohms', {
          ohms: 'ohms, with two leads',
          drop: 'volts over the joint, under current',
          beep: 'continuity, by the beep',
        }),
        quantity('ohms', 'Ohms shown', 'resistanceOhm', '0.4', { optional: true }),
        quantity('volts', 'Volts shown over the joint', 'voltageV', '0.012', { optional: true, low: -60 }),
        quantity('test', 'Current while you measured', 'currentA', '0.5', { optional: true }),
        choice('beeped', 'Did it beep?', 'yes', { yes: 'it beeped', no: 'it stayed silent' }),
      ],
    },
    {
      id: 'meter',
      title: 'The meter, from its sheet',
      fields: [
        quantity('percent', 'Accuracy, share of the reading', 'ratio', '1', { unit: '%', high: 20 }),
        quantity('counts', 'and last digits', 'ratio', '3', { high: 100, whole: true }),
        quantity('step', 'One last digit on this range', 'resistanceOhm', '0.1', { high: 1000 }),
        quantity('leads', 'Reading with the tips held together', 'resistanceOhm', '0.2', { high: 100 }),
        quantity('voltError', 'Half width of a reading in volts', 'voltageV', '0.001', { high: 10 }),
        quantity('beepsBelow', 'It surely beeps below', 'resistanceOhm', '20', { high: 1000 }),
        quantity('silentAbove', 'and stays silent above', 'resistanceOhm', '200', { high: 10000 }),
      ],
    },
    {
      id: 'load',
      title: 'What the joint must do',
      fields: [
        quantity('current', 'Working current', 'currentA', '0.5', { aboveLow: true }),
        quantity('allowed', 'Drop allowed over the joint', 'voltageV', '0.05', { aboveLow: true }),
        unitsField,
      ],
    },
  ],
  cautions: quoted('ca-power-off', 'rd-amps-jack'),
  rests: [
    {
      title: 'Holds',
      words: 'The accuracy of the meter’s sheet, worst case. A film that breaks down under current reads higher on a meter’s small test current than in use.',
    },
    { title: 'Sources', words: 'Intervals by the meter’s own specification; Ohm’s law.' },
  ],
}
