import { solders } from '@strandwise/core/materials'
import { choice, quantity, sizeField } from '../../question/fields.ts'
import type { Question } from '../../question/question.ts'
import { unitsField } from '../../question/unitsField.ts'
import { quoted } from '../../rulesById.ts'

/** "Will it flow?" */
export const willItFlowQuestion: Question<Record<string, never>> = {
  id: 'will-it-flow',
  title: 'Will the solder flow before the insulation suffers?',
  summary: 'An iron or hot air on a soldered overlap: when it wets, how hot the insulation gets meanwhile, and what helps most.',
  scenario: 'A stage harness (invented for this page): two ends of 0.75 mm² with PVC, overlapped by 8 mm, a 60 W iron at 360 °C with a wetted chisel tip.',
  facts: {},
  groups: [
    {
      id: 'tool',
      title: 'The tool',
      fields: [
        choice('kind', 'Tool', 'iron', { iron: 'soldering iron', 'hot-air': 'hot air' }),
        quantity('hot', 'Set temperature, of the tip or of the air', 'temperatureC', '360', { low: 100, high: 600 }),
        quantity('power', 'Power of the iron', 'powerW', '60', { unit: 'W', low: 1, high: 500 }),
        quantity('contact', 'Contact of the tip', 'thermalResistanceKPerW', '6', {
          unit: 'K/W',
          low: 0.5,
          high: 200,
          note: 'About 3 for a broad wetted tip, 6 for a narrow one, 30 and more for a dry one.',
        }),
        quantity('stream', 'Speed of the hot air', 'speedMPerS', '10', { unit: 'm/s', low: 1, high: 60 }),
      ],
    },
    {
      id: 'joint',
      title: 'The joint',
      fields: [
        sizeField('0.75'),
        quantity('overlap', 'Overlap', 'lengthMm', '8', { low: 1, high: 60 }),
        quantity('outside', 'Outside of the insulation', 'lengthMm', '2', { low: 0.5, high: 20 }),
        quantity('stub', 'Bare wire between joint and insulation', 'lengthMm', '6', { low: 0.2, high: 50 }),
        choice('insulation', 'Insulation', 'PVC', { PVC: 'PVC', XLPE: 'XLPE', ETFE: 'ETFE', PTFE: 'PTFE', silicone: 'silicone', PE: 'PE' }),
        choice('alloy', 'Solder', 'Sn60Pb40', Object.fromEntries(Object.keys(solders).map((name) => [name, name]))),
        quantity('air', 'Air', 'temperatureC', '20', { low: -40, high: 60 }),
        unitsField,
      ],
    },
  ],
  cautions: quoted('he-heatsink', 'ca-power-off'),
  rests: [
    {
      title: 'Band',
      words:
        'A tip’s contact is known to a factor of three, a stream of air to one and a half. All three ends are worked out; the answer rests on the unfavourable one.',
    },
    {
      title: 'Holds',
      words:
        'The joint as one lump with conducting wires on both sides, copper, both ends alike. The table’s short exposure of an insulation counts as an estimate.',
    },
    {
      title: 'Sources',
      words: 'Fins and lumped heat with latent heat (derived; two independent solutions agree); properties as the tables of materials tell.',
    },
  ],
}
