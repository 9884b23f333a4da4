import { insulations, sleeveMaterials, solders } from '@strandwise/core/materials'
import { choice } from '../../question/fields.ts'
import type { Question } from '../../question/question.ts'
import { unitsField } from '../../question/unitsField.ts'
import { quoted } from '../../rulesById.ts'
import type { TogetherFacts } from './answer.ts'

/** "Which solder, which insulation, which sleeve go together?" */
export const togetherQuestion: Question<TogetherFacts> = {
  id: 'together',
  title: 'Which solder, which insulation and which sleeve go together?',
  summary: 'Solder must melt below what the insulation stands, and stay solid while the sleeve shrinks: the temperatures in order.',
  scenario: 'A campsite lantern (invented for this page): PVC wire, a polyolefin sleeve over the joint, and a coil of bismuth solder in the drawer.',
  facts: {
    solders: Object.fromEntries(
      Object.values(solders).map(({ name, solidusC, liquidusC }) => [name, { solidusC: solidusC.nominal, liquidusC: liquidusC.nominal }]),
    ),
    sleeves: Object.fromEntries(
      Object.values(sleeveMaterials).map(({ name, fullRecoveryC, continuousC }) => [
        name,
        { fullRecoveryC: fullRecoveryC?.high ?? null, continuousC: continuousC?.high ?? null },
      ]),
    ),
    insulations: Object.fromEntries(
      Object.values(insulations).map(({ name, shortExposureC, continuousC }) => [
        name,
        { shortC: shortExposureC?.low ?? null, continuousC: continuousC?.low ?? null },
      ]),
    ),
  },
  groups: [
    {
      id: 'three',
      title: 'The three',
      fields: [
        choice('alloy', 'Solder', 'Sn42Bi58', Object.fromEntries(Object.keys(solders).map((name) => [name, name]))),
        choice('insulation', 'Insulation', 'PVC', Object.fromEntries(Object.keys(insulations).map((name) => [name, name]))),
        choice('sleeve', 'Sleeve', 'polyolefin', Object.fromEntries(Object.keys(sleeveMaterials).map((name) => [name, name.replaceAll('-', ' ')]))),
        unitsField,
      ],
    },
  ],
  cautions: quoted('he-heatsink'),
  rests: [
    {
      title: 'Holds',
      words: 'By the tables’ temperatures, each with its own status. A sleeve shrunk quickly, moving the tool, may stay below them; a slow one passes them.',
    },
    { title: 'Sources', words: 'Tables of solders, insulations and sleeve materials.' },
  ],
}
