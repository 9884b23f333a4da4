import { choice, quantity, sizeField } from '../../question/fields.ts'
import type { Question } from '../../question/question.ts'
import { unitsField } from '../../question/unitsField.ts'
import { quoted } from '../../rulesById.ts'

/** "Which fuse for this wire and load?" */
export const fuseQuestion: Question<Record<string, never>> = {
  id: 'fuse',
  title: 'Which fuse for this wire and load?',
  summary: 'The fuse that carries the load and opens before the wire gets too hot, with the next one up and down and why not those.',
  scenario: 'A duck pond (invented for this page): a 12 V pump of 6 A on 1.5 mm² with PVC, in air of up to 35 °C, fed through a blade fuse.',
  facts: {},
  groups: [
    {
      id: 'wire',
      title: 'The wire',
      fields: [
        sizeField('1.5'),
        quantity('limit', 'What its insulation stands', 'temperatureC', '70', { low: 40, high: 260 }),
        quantity('wall', 'Wall of the insulation', 'lengthMm', '0.7', { high: 10 }),
        quantity('air', 'Hottest air', 'temperatureC', '35'),
        quantity('loaded', 'Wires in the bundle that carry as much, this one counted', 'ratio', '1', { low: 1, high: 40, whole: true }),
      ],
    },
    {
      id: 'load',
      title: 'The load and its fuse',
      fields: [
        quantity('current', 'Current that stays', 'currentA', '6', { aboveLow: true, high: 100 }),
        choice('kind', 'Kind of fuse', 'blade', { blade: 'blade', cartridge: 'glass tube, fast', 'bolt-down': 'bolt-down', breaker: 'breaker' }),
        quantity('fitted', 'Fuse that is fitted', 'currentA', '', { optional: true, example: '10 A', high: 500, note: 'To judge the one that is there.' }),
        unitsField,
      ],
    },
  ],
  cautions: quoted('ca-fuse-not-larger', 'ca-power-off'),
  rests: [
    {
      title: 'Holds',
      words:
        'A fuse guards the wire against a short and a lasting overload. Between its rating and about 1.35 times that it may never open: the wire must stand that.',
    },
    {
      title: 'Sources',
      words:
        'Operating-time bands transcribed from ISO 8820-3 and IEC 60127-2; heat balance of the wire; three quarters of the rating as lasting load is common practice.',
    },
  ],
}
