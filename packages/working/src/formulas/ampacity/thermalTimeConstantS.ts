import { steadyCurrentA, thermalTimeConstantS, wireDefaults } from '@strandwise/core/ampacity'
import type { SolvedTerm } from '../formula.ts'
import { solved } from '../formula.ts'
import { derived } from '../sources.ts'
import { capacityJPerMK, resistanceOf, wireSymbols } from './wireSymbols.ts'

type Given = Parameters<typeof thermalTimeConstantS>[0]

function terms(i: Given, tauS: number): readonly SolvedTerm[] {
  const atC = i.atC ?? i.ambientC + wireDefaults.riseK
  const riseK = atC - i.ambientC
  const { ohmPerM, perK } = resistanceOf(i)
  const growth = (i.currentA ?? wireDefaults.currentA) ** 2 * ohmPerM * perK
  const capacity = capacityJPerMK(i)
  // At the steady current the heat generated equals the heat lost.
  const holding = riseK > 0 ? steadyCurrentA({ ...i, solarAbsorbedWPerM: 0, limitC: atC }) : null
  const flow = holding === null ? (capacity / tauS + growth) * riseK : holding ** 2 * ohmPerM * (1 + perK * (atC - 20))
  return [
    { text: 'heat stored by a metre for each kelvin', tex: "C'", value: capacity, unit: 'J/(m K)' },
    { text: 'temperature of the conductor', tex: '\\theta', value: atC, unit: '°C' },
    { text: 'heat that leaves a metre there', tex: 'q', value: flow, unit: 'W/m' },
    { text: 'heat that leaves for each kelvin', tex: '\\frac{q}{\\theta-\\theta_a}', value: flow / riseK, unit: 'W/(m K)' },
    { text: 'heat that the rising resistance adds for each kelvin', tex: "I^2 R'_{20}\\alpha_{20}", value: growth, unit: 'W/(m K)' },
    {
      text: 'residual',
      tex: "\\tau - \\frac{C'}{q/(\\theta-\\theta_a) - I^2 R'_{20}\\alpha_{20}}",
      value: tauS - capacity / (flow / riseK - growth),
      unit: 's',
    },
  ]
}

/** The working of thermalTimeConstantS. */
export const thermalTimeConstantSFormula = solved<Given>({
  id: 'thermalTimeConstantS',
  call: thermalTimeConstantS,
  name: 'tau',
  tex: '\\tau',
  unit: 's',
  equationTex: "\\tau = \\frac{C'}{\\frac{q(\\theta)}{\\theta-\\theta_a} - I^2 R'_{20}\\alpha_{20}}",
  equation: "tau = C'/(q/(theta - theta_a) - I^2 * R_20 * alpha)",
  symbols: (i) => ({ I: { tex: 'I', unit: 'A', of: () => i.currentA ?? wireDefaults.currentA, meaning: 'current in the wire' }, ...wireSymbols(i) }),
  solution: (i) => {
    const tauS = thermalTimeConstantS(i)
    return { value: tauS, terms: terms(i, tauS) }
  },
  source: derived('one lump per metre, its time constant lengthened by the rising resistance'),
  validity: ['the conductor and a share of its insulation at one temperature', 'a small step about the stated temperature, without sun'],
})
