import { deratedCurrentA } from '@strandwise/core/ampacity'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of deratedCurrentA. */
export const deratedCurrentAFormula = closed<Parameters<typeof deratedCurrentA>[0]>({
  id: 'deratedCurrentA',
  call: deratedCurrentA,
  symbols: (i) => ({
    I_b: { tex: 'I_b', unit: 'A', of: 'baseA', meaning: 'current of the table' },
    ...Object.fromEntries(i.links.map((link, at) => [`f_${at + 1}`, { tex: `f_{${at + 1}}`, unit: '1', of: `links.${at}.factor`, meaning: link.name }])),
  }),
  results: (i) => [
    { name: 'I', tex: 'I', unit: 'A', meaning: 'current left', expression: ['I_b', ...i.links.map((_, at) => `f_${at + 1}`)].join(' * '), of: 'currentA' },
  ],
  source: published('FAA AC 43.13-1B', 'chapter 11, chains of independent factors'),
  validity: ['factors that do not depend on each other'],
})
