import { bundleDiameterMm } from '@strandwise/core/bundle'
import { awgToAreaMm2, layFactorOfClass } from '@strandwise/core/conductor'
import { insulations, type MetalName } from '@strandwise/core/materials'
import { awgTable, iec60228 } from '@strandwise/core/tables'
import type { Question } from '../../question/question.ts'
import { unitsField } from '../../question/unitsField.ts'
import { quoted } from '../../rulesById.ts'
import type { InsulationFacts, WireSizeFacts } from './facts.ts'

const metals: Readonly<Partial<Record<MetalName, string>>> = {
  'annealed-copper': 'copper',
  'tinned-copper': 'tinned copper',
  'copper-clad-aluminium': 'copper-clad aluminium',
  'aluminium-1350': 'aluminium',
}

const known: readonly (readonly [string, InsulationFacts])[] = Object.values(insulations).flatMap((item) =>
  item.continuousC === null || item.conductivityWPerMK === null
    ? []
    : [[item.name, { limitC: item.continuousC.low, conductivityWPerMK: item.conductivityWPerMK.nominal }] as const],
)

const byArea = (a: { readonly areaMm2: number }, b: { readonly areaMm2: number }): number => a.areaMm2 - b.areaMm2
const mostInBundle = 24
const thickestMm2 = 120
const within = (row: { readonly areaMm2: number }): boolean => row.areaMm2 <= thickestMm2

const facts: WireSizeFacts = {
  insulations: Object.fromEntries(known),
  metals,
  series: {
    AWG: awgTable.rows
      .map(({ gauge, size }) => ({ size, areaMm2: awgToAreaMm2(gauge) }))
      .filter(within)
      .sort(byArea),
    'IEC 60228': [...new Set(iec60228.rows.map(({ areaMm2 }) => areaMm2))]
      .map((areaMm2) => ({ size: String(areaMm2), areaMm2 }))
      .filter(within)
      .sort(byArea),
  },
  bundleRatios: Array.from({ length: mostInBundle }, (_, index) => bundleDiameterMm(Array.from({ length: index + 1 }, () => 1))),
  layFactor: layFactorOfClass(5).nominal,
}

/** "What current for this wire, which wire for this current?" */
export const wireSizeQuestion: Question<WireSizeFacts> = {
  id: 'wire-size',
  title: 'What may this wire carry, and which wire for this current?',
  summary: 'Both directions in one page: the current that a wire of this size stands in its heat and bundle, and the thinnest size for a current and a drop.',
  scenario:
    'A market stall (invented for this page): a 12 V fridge draws 4.5 A at the end of 4 m of cable, laid up with two other loaded wires under the counter, in summer air of 35 °C. In the drawer lies 1 mm² with PVC.',
  facts,
  groups: [
    {
      id: 'wire',
      title: 'The wire at hand',
      fields: [
        {
          kind: 'quantity',
          id: 'size',
          title: 'Size of the conductor',
          note: 'As area, gauge or strands: 1 mm², 18 AWG, 32/0.2 mm.',
          quantity: 'areaMm2',
          unit: 'mm²',
          low: 0.05,
          high: thickestMm2,
          example: '1 mm²',
          typed: '1',
        },
        {
          kind: 'choice',
          id: 'metal',
          title: 'Metal',
          note: 'Scrape a strand: silvery through and through is not copper.',
          choices: Object.entries(metals).map(([value, label]) => ({ value, label: label ?? value })),
          typed: 'annealed-copper',
        },
        {
          kind: 'choice',
          id: 'insulation',
          title: 'Insulation',
          note: 'The lowest grade of each kind counts, unless the print on the wire says more.',
          choices: known.map(([value, { limitC }]) => ({ value, label: `${value}, lowest grade ${limitC} °C` })),
          typed: 'PVC',
        },
        {
          kind: 'quantity',
          id: 'wall',
          title: 'Wall of the insulation',
          note: 'Half of outside less conductor.',
          quantity: 'lengthMm',
          unit: 'mm',
          low: 0,
          high: 10,
          example: '0.6 mm',
          typed: '0.6',
        },
      ],
    },
    {
      id: 'place',
      title: 'Where it lies',
      fields: [
        {
          kind: 'quantity',
          id: 'air',
          title: 'Hottest air',
          quantity: 'temperatureC',
          unit: '°C',
          low: -60,
          high: 200,
          example: '35 °C',
          typed: '35',
        },
        {
          kind: 'quantity',
          id: 'loaded',
          title: 'Wires in the bundle that carry as much, this one counted',
          note: '1 is alone, with air all round it.',
          quantity: 'ratio',
          unit: '',
          low: 1,
          high: mostInBundle,
          whole: true,
          example: '3',
          typed: '3',
        },
      ],
    },
    {
      id: 'load',
      title: 'The current and its run',
      fields: [
        {
          kind: 'quantity',
          id: 'current',
          title: 'Current that stays',
          quantity: 'currentA',
          unit: 'A',
          low: 0,
          aboveLow: true,
          high: 500,
          example: '4.5 A',
          typed: '4.5',
        },
        { kind: 'quantity', id: 'out', title: 'Wire out', quantity: 'lengthM', unit: 'm', low: 0, high: 500, example: '4 m', typed: '4' },
        {
          kind: 'quantity',
          id: 'back',
          title: 'Wire back',
          note: '0 m where a frame returns the current.',
          quantity: 'lengthM',
          unit: 'm',
          low: 0,
          high: 500,
          example: '4 m',
          typed: '4',
        },
        {
          kind: 'quantity',
          id: 'drop',
          title: 'Drop allowed over the wire',
          note: '3 % of 12 V is 0.36 V.',
          quantity: 'voltageV',
          unit: 'V',
          low: 0,
          aboveLow: true,
          high: 60,
          example: '0.36 V',
          typed: '0.36',
        },
        {
          kind: 'choice',
          id: 'series',
          title: 'Sizes to choose from',
          choices: [
            { value: 'IEC 60228', label: 'metric, IEC 60228' },
            { value: 'AWG', label: 'AWG' },
          ],
          typed: 'IEC 60228',
        },
        unitsField,
      ],
    },
  ],
  cautions: quoted('ca-power-off', 'ca-fuse-not-larger', 'wp-cca', 'wp-conflict-drop-budget'),
  rests: [
    {
      title: 'Band',
      words:
        'Still air round a thin wire is published in two ways, Churchill and Chu, and Morgan, some 20 % apart in heat shed. Both are worked out; the answer rests on the unfavourable one.',
    },
    {
      title: 'Holds',
      words: `For one horizontal wire, or a round bundle of up to ${mostInBundle} equal wires that all carry as much, in still air, steadily. Strands are taken as ${facts.layFactor} times as long as the wire (from memory), the conductor as a solid round of its area. Not for wires under plaster, in foam or wound up on a drum: they run hotter.`,
    },
    {
      title: 'Sources',
      words:
        'Heat balance of an insulated wire; resistance by IEC 60028 with its temperature; sizes of IEC 60228 and ASTM B258; limits of insulation as its table tells; conductivity across a bundle from memory.',
    },
  ],
}
