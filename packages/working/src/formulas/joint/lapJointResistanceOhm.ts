import { lapJointResistanceOhm } from '@strandwise/core/joint'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

type Given = Parameters<typeof lapJointResistanceOhm>[0]

/** With perfect conductors only the interface resists. */
const perfect = (i: Given): boolean => i.conductorsOhmPerM[0] + i.conductorsOhmPerM[1] === 0

const chain = [
  { name: 's', tex: 's', unit: 'Ω/m', meaning: 'both conductors together', expression: 'r_1 + r_2' },
  { name: 'lambda', tex: '\\lambda', unit: '1/m', meaning: 'one over the transfer length', expression: 'sqrt(g * s)' },
  { name: 'u', tex: 'u', unit: '1', meaning: 'overlap in transfer lengths', expression: 'lambda * L/1000' },
]

/** The working of lapJointResistanceOhm. */
export const lapJointResistanceOhmFormula = closed<Parameters<typeof lapJointResistanceOhm>[0]>({
  id: 'lapJointResistanceOhm',
  call: lapJointResistanceOhm,
  symbols: {
    L: { tex: 'L', unit: 'mm', of: 'overlapMm', meaning: 'length of the overlap' },
    r_1: { tex: 'r_1', unit: 'Ω/m', of: 'conductorsOhmPerM.0', meaning: 'conductor that brings the current' },
    r_2: { tex: 'r_2', unit: 'Ω/m', of: 'conductorsOhmPerM.1', meaning: 'conductor that takes it away' },
    g: { tex: 'g', unit: 'S/m', of: 'interfaceSPerM', meaning: 'conductance of the interface per metre of overlap' },
  },
  steps: (i) => (perfect(i) ? [] : chain),
  results: (i) => [
    {
      name: 'R',
      tex: 'R',
      unit: 'Ω',
      meaning: 'resistance over the overlap',
      expression: perfect(i) ? '1000/(g * L)' : 'r_1 * r_2 * L/(1000 * s) + (r_1^2 + r_2^2)/(s * lambda) * tanh(u/2) + s/(lambda * sinh(u))',
    },
  ],
  source: derived('two conductors coupled by a conductance per length', 'with a perfect second conductor the transfer length of a contact'),
  validity: ['one-dimensional: a lower bound where overlap or transfer length is below one wire diameter'],
})
