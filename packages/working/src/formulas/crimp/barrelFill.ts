import { barrelFill } from '@strandwise/core/crimp'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of barrelFill. */
export const barrelFillFormula = closed<Parameters<typeof barrelFill>[0]>({
  id: 'barrelFill',
  call: barrelFill,
  symbols: (i) => ({
    ...Object.fromEntries(
      i.conductorAreasMm2.map((_, at) => [
        `A_${at + 1}`,
        { tex: `A_{${at + 1}}`, unit: 'mm²', of: `conductorAreasMm2.${at}`, meaning: `metal area of conductor ${at + 1}` },
      ]),
    ),
    d: { tex: 'd', unit: 'mm', of: 'barrelInsideMm', meaning: 'bore of the barrel' },
  }),
  results: (i) => [
    {
      name: 'f',
      tex: 'f',
      unit: '1',
      meaning: 'metal area over bore area',
      expression: `(${i.conductorAreasMm2.map((_, at) => `A_${at + 1}`).join(' + ')})/(pi/4 * d^2)`,
    },
  ],
  source: derived('definition; area of a circle'),
  validity: ['metal areas: a bundle that just slides in fills well below 1'],
})
