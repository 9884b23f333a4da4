import { dropBudget } from '@strandwise/core/circuit'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of dropBudget. */
export const dropBudgetFormula = closed<Parameters<typeof dropBudget>[0]>({
  id: 'dropBudget',
  call: dropBudget,
  symbols: (i) => ({
    I: { tex: 'I', unit: 'A', of: 'currentA', meaning: 'load current' },
    ...Object.fromEntries(
      i.elements.map(({ name }, at) => [`R_${at + 1}`, { tex: `R_{${at + 1}}`, unit: 'Ω', of: `elements.${at}.resistanceOhm`, meaning: name }]),
    ),
  }),
  results: (i) => [
    {
      name: 'V',
      tex: 'V',
      unit: 'V',
      meaning: 'voltage lost on the way',
      expression: `I * (${i.elements.map((_, at) => `R_${at + 1}`).join(' + ')})`,
      of: 'dropV',
    },
    ...i.elements.map(({ name }, at) => ({
      name: `V_${at + 1}`,
      tex: `V_{${at + 1}}`,
      unit: 'V',
      meaning: `lost in ${name}`,
      expression: `I * R_${at + 1}`,
      of: `shares.${at}.dropV`,
    })),
  ],
  source: derived("Ohm's and Kirchhoff's laws"),
  validity: ['the same current in every element'],
})
