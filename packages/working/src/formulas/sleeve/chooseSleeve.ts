import { chooseSleeve } from '@strandwise/core/sleeve'
import { solved } from '../formula.ts'
import { published } from '../sources.ts'

type Given = Parameters<typeof chooseSleeve>[0]

/** The working of chooseSleeve: its value is the outside of the first choice. */
export const chooseSleeveFormula = solved<Given>({
  id: 'chooseSleeve',
  call: chooseSleeve,
  name: 'D_o',
  tex: 'D_o',
  unit: 'mm',
  equationTex: 'D_o = \\max\\left(D_{max}, D_r\\right) + 2\\,w\\left(D_{max}\\right),\\quad D_e > D_{max},\\quad D_r < D_{min}',
  equation: 'D_o = max(D_max, D_r) + 2 * w(D_max); fits where D_e > D_max, D_r < D_min and D_o is within the limit',
  symbols: (i) => ({
    D_max: { tex: 'D_{max}', unit: 'mm', of: 'largestMm', meaning: 'largest diameter that it must pass over' },
    D_min: { tex: 'D_{min}', unit: 'mm', of: 'smallestMm', meaning: 'smallest diameter that it must grip' },
    ...(i.outsideLimitMm === undefined ? {} : { D_lim: { tex: 'D_{lim}', unit: 'mm', of: 'outsideLimitMm', meaning: 'largest outside that is allowed' } }),
  }),
  solution: (i) => {
    const choices = chooseSleeve(i)
    const [first] = choices
    return {
      value: first?.outsideMm ?? 0,
      terms: choices.map(({ sleeve, fits, outsideMm }, at) => ({
        text: `outside of ${sleeve.name ?? `tube ${at + 1}`}, which ${fits ? 'fits' : 'does not fit'}`,
        tex: `D_{o,${at + 1}}`,
        value: outsideMm,
        unit: 'mm',
      })),
      notes: first === undefined ? ['there is no tube to choose from'] : [],
    }
  },
  source: published('NASA-STD-8739.4, change 6', 'para 9.8.1 for the rule of fit; the order is ours'),
  validity: ['the wall by kept volume, as in recoveredWallMm'],
})
