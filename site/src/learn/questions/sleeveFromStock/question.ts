import { UnknownEntryError } from '@strandwise/core/errors'
import { type SleeveMaterialName, sleeveMaterials } from '@strandwise/core/materials'
import { ruleFigure } from '@strandwise/core/rules'
import { sleeveSizes } from '@strandwise/core/tables'
import type { AskedQuantity, Question } from '../../question/question.ts'
import { unitsField } from '../../question/unitsField.ts'
import { quoted, rule } from '../../rulesById.ts'
import type { SleeveFacts } from './facts.ts'

/** Thickest part in the repair of a lead. */
const thickestMm = 20

const short: Readonly<Record<string, string>> = {
  'AS23053/5': 'thin wall 2:1, AS23053/5',
  'metric 2:1': 'thin wall 2:1, metric',
  'metric 3:1 lined': 'adhesive-lined 3:1, metric',
}

const stock: SleeveFacts['stock'] = Object.fromEntries(
  Object.entries(sleeveSizes).flatMap(([name, set]) => {
    const series = short[name]
    if (series === undefined) return []
    return set.rows.flatMap((row) => {
      if (row.recoveredWallMm === null || row.suppliedInsideMm > thickestMm) return []
      const { suppliedInsideMm, recoveredInsideMm, recoveredWallMm, nominal } = row
      const { longitudinalChange } = sleeveMaterials[set.material]
      const change = { low: longitudinalChange.low, high: longitudinalChange.high }
      const sleeve = { name: `${nominal} ${series}`, material: set.material, suppliedInsideMm, recoveredInsideMm, recoveredWallMm, longitudinalChange: change }
      return [[`${name} ${nominal}`.replace(/[^\w/-]+/g, '-'), { ...sleeve, fromMemory: row.status === 'from memory' }]]
    })
  }),
)

const ticked = [
  'AS23053/5-3/32-in',
  'AS23053/5-1/8-in',
  'AS23053/5-3/16-in',
  'AS23053/5-1/4-in',
  'metric-3-1-lined-3/1-mm',
  'metric-3-1-lined-6/2-mm',
  'metric-3-1-lined-9/3-mm',
]
for (const word of ticked) if (!(word in stock)) throw new UnknownEntryError('ticked', word, Object.keys(stock))

function firstFigure(id: string, key: string): number {
  const list = rule(id).values[key]
  const [first] = Array.isArray(list) ? (list as readonly unknown[]) : []
  if (typeof first !== 'number') throw new UnknownEntryError(`${id}.values`, key, Object.keys(rule(id).values))
  return first
}

const materialWords: Readonly<Partial<Record<SleeveMaterialName, string>>> = {
  polyolefin: 'polyolefin',
  'polyolefin-adhesive-lined': 'polyolefin, adhesive-lined',
  PVC: 'PVC',
  PVDF: 'PVDF',
  PTFE: 'PTFE',
  FEP: 'FEP',
  fluoroelastomer: 'fluoroelastomer',
  silicone: 'silicone',
}

const facts: SleeveFacts = {
  stock,
  changes: Object.fromEntries(
    Object.values(sleeveMaterials).map(({ name, longitudinalChange }) => [name, { low: longitudinalChange.low, high: longitudinalChange.high }]),
  ),
  recoveredShare: ruleFigure(rule('co-recovery-margin'), 'recoveredMaxShareOfSmallest'),
  suppliedRatio: firstFigure('co-recovery-margin', 'suppliedMinRatioToLargest'),
  coverDiameters: ruleFigure(rule('co-overlap-min'), 'overlapEachSideMinDiameters'),
}

const mm = (field: Omit<AskedQuantity, 'kind' | 'quantity' | 'unit' | 'low' | 'high' | 'aboveLow'>): AskedQuantity => ({
  kind: 'quantity',
  quantity: 'lengthMm',
  unit: 'mm',
  low: 0,
  aboveLow: true,
  high: 200,
  ...field,
})

/** "Which sleeve from the stock?" */
export const sleeveFromStockQuestion: Question<SleeveFacts> = {
  id: 'sleeve-from-stock',
  title: 'Which sleeve from the stock?',
  summary: 'Of the heat-shrink sleeves in your drawer: which one goes over the joint, grips the wire and still passes the hole, and how long to cut it.',
  scenario:
    'A garden railway (invented for this page): the feeder of the track, 2.9 mm over its insulation, is joined in a butt splice of 5.2 mm outside and 26 mm length. The splice must slip into a hole of 8 mm in the sleeper, and it lies in the damp.',
  facts,
  groups: [
    {
      id: 'joint',
      title: 'The joint',
      fields: [
        mm({
          id: 'largest',
          title: 'Largest diameter that the sleeve must pass over',
          note: 'The joint itself, or a plug on its way.',
          example: '5.2 mm',
          typed: '5.2',
        }),
        mm({ id: 'smallest', title: 'Smallest diameter that it must grip', note: 'The wire over its insulation.', example: '2.9 mm', typed: '2.9' }),
        mm({ id: 'joint', title: 'Length of the joint, bare wire and all', example: '26 mm', typed: '26' }),
        mm({ id: 'cover', title: 'Cover past it on each side', note: 'At least two wire diameters, onto sound insulation.', example: '6 mm', typed: '6' }),
        mm({ id: 'limit', title: 'Hole or room that the covered joint must pass', optional: true, example: '8 mm', typed: '8' }),
      ],
    },
    {
      id: 'drawer',
      title: 'The drawer',
      fields: [
        {
          kind: 'ticks',
          id: 'stock',
          title: 'Sleeves at hand',
          note: 'Inside as supplied, inside after free recovery.',
          choices: Object.entries(stock).map(([value, sleeve]) => ({
            value,
            label: `${sleeve.name}: ${sleeve.suppliedInsideMm} to ${sleeve.recoveredInsideMm} mm`,
          })),
          typed: ticked.join(','),
        },
      ],
    },
    {
      id: 'own',
      title: 'A sleeve of other sizes',
      sentence: 'As its maker prints them, or as you measured: shrink a short piece on nothing and measure that.',
      folded: true,
      fields: [
        mm({ id: 'own-supplied', title: 'Inside as supplied', optional: true, example: '6 mm', typed: '' }),
        mm({ id: 'own-recovered', title: 'Inside after free recovery', optional: true, example: '2 mm', typed: '' }),
        mm({ id: 'own-wall', title: 'Wall after free recovery', optional: true, example: '1 mm', typed: '' }),
        {
          kind: 'choice',
          id: 'own-material',
          title: 'Material',
          choices: Object.entries(materialWords).map(([value, label]) => ({ value, label: label ?? value })),
          typed: 'polyolefin',
        },
      ],
    },
    { id: 'print', title: 'The answer', fields: [unitsField] },
  ],
  cautions: quoted(
    'co-slide-first',
    'co-no-sharp-ends',
    'co-adhesive-damp',
    'co-seal-range',
    'he-shrink-maker',
    'he-sleeve-solder-order',
    'he-no-flame',
    'ca-hot-air-fire',
  ),
  rests: [
    {
      title: 'Order',
      words:
        'Those that go on, grip and pass the hole come first, the slimmest of them before the others; the order is ours, the rule of fit is that of NASA-STD-8739.4, 2011 change 6, para 9.8.1 (published).',
    },
    {
      title: 'Band',
      words:
        'The inside as supplied is the least and the inside after recovery the largest that the size may have, the unfavourable ends. A wall varies by about a tenth. How much a tube shortens is a range; the cut is for its worse end (from memory for most materials).',
    },
    {
      title: 'Holds',
      words: 'For a round joint, evenly shrunk, whose wall keeps its volume. Over a step the sleeve bridges: let it grip at least two diameters past it.',
    },
    {
      title: 'Sources',
      words: `Sizes: ${Object.entries(short)
        .map(([name, words]) => `${words} (${sleeveSizes[name as keyof typeof sleeveSizes].provenance.status})`)
        .join('; ')}. Margins: common practice.`,
    },
  ],
}
