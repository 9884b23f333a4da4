import { nonAdiabaticFactor } from '@strandwise/core/ampacity'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of nonAdiabaticFactor. */
export const nonAdiabaticFactorFormula = closed<Parameters<typeof nonAdiabaticFactor>[0]>({
  id: 'nonAdiabaticFactor',
  call: nonAdiabaticFactor,
  symbols: {
    S: { tex: 'S', unit: 'mm²', of: 'areaMm2', meaning: 'area of the conductor' },
    t: { tex: 't', unit: 's', of: 'timeS', meaning: 'time until it is switched off' },
    X: { tex: 'X', unit: '(mm²/s)^0.5', of: 'xMm2PerS', meaning: 'constant of conductor and insulation' },
    Y: { tex: 'Y', unit: 'mm²/s', of: 'yMm2PerS', meaning: 'constant of conductor and insulation' },
  },
  results: [{ name: 'epsilon', tex: '\\varepsilon', unit: '1', meaning: 'factor on the adiabatic current', expression: 'sqrt(1 + X * sqrt(t/S) + Y * t/S)' }],
  source: published('IEC 60949:1988', 'simplified form of the non-adiabatic factor'),
  validity: ['constants of the conductor, the insulation and their contact from the standard'],
})
