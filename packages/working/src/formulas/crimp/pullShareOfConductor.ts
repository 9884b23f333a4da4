import { pullShareOfConductor } from '@strandwise/core/crimp'
import { type Interval, metal } from '@strandwise/core/materials'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

type Given = Parameters<typeof pullShareOfConductor>[0]

/** The function has refused metals without a known strength already. */
const strength = (i: Given): Interval => metal(i.material).tensileMPa ?? { low: Number.NaN, high: Number.NaN }

/** The working of pullShareOfConductor. */
export const pullShareOfConductorFormula = closed<Parameters<typeof pullShareOfConductor>[0]>({
  id: 'pullShareOfConductor',
  call: pullShareOfConductor,
  symbols: {
    F: { tex: 'F', unit: 'N', of: 'forceN', meaning: 'pull at which the sample gave' },
    A: { tex: 'A', unit: 'mm²', of: 'areaMm2', meaning: 'metal area of the conductor' },
    sigma_1: { tex: '\\sigma_{low}', unit: 'MPa', of: (i) => strength(i).low, meaning: 'lowest tensile strength of the metal' },
    sigma_2: { tex: '\\sigma_{high}', unit: 'MPa', of: (i) => strength(i).high, meaning: 'highest tensile strength of the metal' },
  },
  results: [
    { name: 'low', tex: 's_{low}', unit: '1', meaning: 'share of the breaking force, low end', expression: 'F/(A * sigma_2)', of: 'low' },
    { name: 'high', tex: 's_{high}', unit: '1', meaning: 'share of the breaking force, high end', expression: 'F/(A * sigma_1)', of: 'high' },
  ],
  source: published('NASA-STD-8739.4, change 6', '60 % of the breaking force for an unlisted pair'),
  validity: ['a sample pulled to destruction'],
})
