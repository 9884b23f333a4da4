import { ruleFigure } from '@strandwise/core/rules'
import { choice, quantity, sizeField } from '../../question/fields.ts'
import type { Question } from '../../question/question.ts'
import { unitsField } from '../../question/unitsField.ts'
import { quoted, rule } from '../../rulesById.ts'
import type { CrimpFacts } from './answer.ts'

const gap = (key: string): number => ruleFigure(rule('jg-insulation-gap-crimp'), key)

/** "Is the crimp right?" */
export const crimpQuestion: Question<CrimpFacts> = {
  id: 'crimp',
  title: 'Which barrel, what height, how much to strip, what must it hold?',
  summary: 'A crimped butt connector or terminal: does the wire fill the barrel, what height to crimp to, the strip length, and the pull of a sample.',
  scenario: 'A model railway (invented for this page): 1 mm² into a bare copper barrel of 1.6 mm bore and 3.2 mm outside, 8 mm long.',
  // The middle of what the rule allows for thin wire.
  facts: { gapMm: (gap('minMm') + gap('maxUpTo20AwgMm')) / 2 },
  groups: [
    {
      id: 'parts',
      title: 'Wire and barrel',
      fields: [
        sizeField('1'),
        quantity('second', 'A second wire in the same end of the barrel', 'areaMm2', '', { optional: true, example: '0.5 mm²' }),
        quantity('bore', 'Bore of the barrel', 'lengthMm', '1.6', { aboveLow: true, high: 60 }),
        quantity('outside', 'Outside of the barrel', 'lengthMm', '3.2', { aboveLow: true, high: 80 }),
        quantity('long', 'Length of the barrel, one side of it', 'lengthMm', '8', { aboveLow: true, high: 100 }),
      ],
    },
    {
      id: 'crimp',
      title: 'The crimp',
      fields: [
        quantity('compression', 'Area squeezed out of the strands', 'ratio', '18', {
          unit: '%',
          low: 0,
          high: 60,
          note: '15 to 20 % is common practice on copper.',
        }),
        quantity('width', 'Width of the crimp', 'lengthMm', '3.2', { aboveLow: true, high: 80 }),
        choice('standard', 'Sample pull by', 'UL 486A-486B', { 'UL 486A-486B': 'UL 486A-486B', 'SAE AS7928': 'SAE AS7928' }),
        unitsField,
      ],
    },
  ],
  cautions: quoted('jg-insulation-gap-crimp', 'me-no-strand-trim', 'me-barrel-range'),
  rests: [
    {
      title: 'Holds',
      words:
        'The height follows from kept areas: the barrel’s metal keeps its section and the gaps close. What the maker of the terminal prints comes first. Tighter is not better: past the best compression the crimp weakens.',
    },
    {
      title: 'Sources',
      words:
        'Areas kept (derived); pull by the named standard, each row with its own status; gap to the insulation as the rule below tells; how full a barrel should be is from memory.',
    },
  ],
}
