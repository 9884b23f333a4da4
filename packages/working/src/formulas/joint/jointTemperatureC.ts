import { jointDefaults, jointState, jointTemperatureC } from '@strandwise/core/joint'
import { type SolvedTerm, solved } from '../formula.ts'
import { derived } from '../sources.ts'
import { siteSymbols, siteValidity } from './siteSymbols.ts'

type Given = Parameters<typeof jointTemperatureC>[0]

function terms(i: Given): readonly SolvedTerm[] {
  const { jointC, farC, wireFlowW, sleeveEndC, largestCurrentA, residual } = jointState(i)
  const coefficient = i.jointResistanceCoefficientPerK ?? jointDefaults.jointResistanceCoefficientPerK
  const pair = (text: string, tex: string, unit: string, values: readonly number[]): SolvedTerm[] =>
    values.map((value, at) => ({ text: `${text} ${at + 1}`, tex: `${tex}_{${at + 1}}`, unit, value }))
  return [
    { text: 'heat made in the joint', tex: "I^2 R_j'", unit: 'W', value: i.currentA ** 2 * i.jointResistanceOhm * (1 + coefficient * (jointC - 20)) },
    ...pair('heat that flows into wire', 'P', 'W', wireFlowW),
    ...pair('temperature far away in wire', '\\vartheta', '°C', farC),
    ...pair('temperature at the end of the sleeve on wire', '\\Theta', '°C', sleeveEndC ?? []),
    ...(largestCurrentA === null ? [] : [{ text: 'largest current that settles', tex: 'I_{max}', unit: 'A', value: largestCurrentA }]),
    { text: 'temperature of the joint', tex: '\\theta_j', unit: '°C', value: jointC },
    { text: 'residual', tex: "I^2 R_j' - P_1 - P_2", unit: 'W', value: residual },
  ]
}

/** The working of jointTemperatureC. */
export const jointTemperatureCFormula = solved<Given>({
  id: 'jointTemperatureC',
  call: jointTemperatureC,
  name: 'theta_j',
  tex: '\\theta_j',
  unit: '°C',
  equationTex:
    "I^2 R_j\\left(1+a_j\\left(\\theta_j-20\\right)\\right) = P_1 + P_2,\\quad kA\\,\\theta'' = q(\\theta) - I^2 r\\left(1+\\alpha\\left(\\theta-20\\right)\\right)",
  equation: "I^2 * R_j * (1 + a_j * (theta_j - 20)) = P_1 + P_2; along each wire k*A*theta'' = q(theta) - I^2 * r * (1 + alpha * (theta - 20))",
  symbols: (i) => ({
    R_j: { tex: 'R_j', unit: 'Ω', of: 'jointResistanceOhm', meaning: 'resistance of the joint at 20 °C' },
    a_j: {
      tex: 'a_j',
      unit: '1/K',
      of: () => i.jointResistanceCoefficientPerK ?? jointDefaults.jointResistanceCoefficientPerK,
      meaning: 'temperature coefficient of the joint',
    },
    ...siteSymbols(i),
  }),
  solution: (i) => ({ value: jointTemperatureC(i), terms: terms(i) }),
  source: derived('fins with their own heat; natural convection after Churchill and Chu 1975 or Morgan 1975'),
  validity: siteValidity,
})
