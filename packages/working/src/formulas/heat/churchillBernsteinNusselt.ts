import { churchillBernsteinNusselt } from '@strandwise/core/heat'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of churchillBernsteinNusselt. */
export const churchillBernsteinNusseltFormula = closed<Parameters<typeof churchillBernsteinNusselt>[0]>({
  id: 'churchillBernsteinNusselt',
  call: churchillBernsteinNusselt,
  symbols: {
    Re: { tex: '\\mathrm{Re}', unit: '1', of: 'reynolds', meaning: 'Reynolds number on the diameter' },
    Pr: { tex: '\\mathrm{Pr}', unit: '1', of: 'prandtl', meaning: 'Prandtl number at the film temperature' },
  },
  results: [
    {
      name: 'Nu',
      tex: '\\mathrm{Nu}',
      unit: '1',
      meaning: 'Nusselt number',
      expression: '0.3 + 0.62 * Re^(1/2) * Pr^(1/3)/(1 + (0.4/Pr)^(2/3))^(1/4) * (1 + (Re/282000)^(5/8))^(4/5)',
    },
  ],
  source: published('Churchill and Bernstein, J. Heat Transfer 99 (1977), 300'),
  validity: ['an extrapolation where Re Pr is at most 0.2'],
})
