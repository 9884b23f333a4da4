import { heatDefaults, morganBands, naturalConvectionNusselt } from '@strandwise/core/heat'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

type Given = Parameters<typeof naturalConvectionNusselt>[0]

function expressionFor(i: Given): string {
  if ((i.correlation ?? heatDefaults.correlation) === 'churchill-chu') return '(0.6 + 0.387 * Ra^(1/6)/(1 + (0.559/Pr)^(9/16))^(8/27))^2'
  const band = morganBands.find(({ below }) => i.rayleigh < below)
  return `${band?.factor} * Ra^${band?.exponent}`
}

/** The working of naturalConvectionNusselt. */
export const naturalConvectionNusseltFormula = closed<Parameters<typeof naturalConvectionNusselt>[0]>({
  id: 'naturalConvectionNusselt',
  call: naturalConvectionNusselt,
  symbols: {
    Ra: { tex: '\\mathrm{Ra}', unit: '1', of: 'rayleigh', meaning: 'Rayleigh number on the diameter' },
    Pr: { tex: '\\mathrm{Pr}', unit: '1', of: 'prandtl', meaning: 'Prandtl number at the film temperature' },
  },
  results: (i) => [{ name: 'Nu', tex: '\\mathrm{Nu}', unit: '1', meaning: 'Nusselt number', expression: expressionFor(i) }],
  source: published('Churchill and Chu, Int. J. Heat Mass Transfer 18 (1975), 1049; Morgan, Advances in Heat Transfer 11 (1975), 199'),
  validity: ['Rayleigh number up to 1e12', 'the two fits differ by about a fifth on thin wire: a verdict takes the unfavourable one'],
})
