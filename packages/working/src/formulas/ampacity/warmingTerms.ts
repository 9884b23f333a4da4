import { steadyCurrentA, type WireHeat, type WireStore } from '@strandwise/core/ampacity'
import type { SolvedTerm } from '../formula.ts'
import { capacityJPerMK, resistanceOf } from './wireSymbols.ts'

/** The equation of a warming wire, in TeX and as plain text. */
export const warming = {
  tex: "C'\\frac{d\\theta}{dt} = I^2 R'_{20}\\left(1+\\alpha_{20}\\left(\\theta-20\\right)\\right) - q(\\theta),\\quad \\theta(0) = \\theta_0",
  plain: "C' dtheta/dt = I^2 * R_20 * (1 + alpha * (theta - 20)) - q(theta), theta(0) = theta_0",
} as const

/** The terms of that equation at one temperature; the heat loss is known if a steady current holds the wire there. */
export function warmingTerms(i: WireHeat & WireStore & { readonly currentA: number }, atC: number, when: string): readonly SolvedTerm[] {
  const { ohmPerM, perK } = resistanceOf(i)
  const hot = ohmPerM * (1 + perK * (atC - 20))
  const made = i.currentA ** 2 * hot
  const holding = steadyCurrentA({ ...i, limitC: atC })
  const leaves = holding === null ? [] : [{ text: `heat that leaves a metre ${when}`, tex: 'q', value: holding ** 2 * hot, unit: 'W/m' }]
  return [
    { text: `heat made in a metre ${when}`, tex: "I^2 R'", value: made, unit: 'W/m' },
    ...leaves,
    ...leaves.map(({ value }) => ({ text: `rise in a second ${when}`, tex: '\\frac{d\\theta}{dt}', value: (made - value) / capacityJPerMK(i), unit: 'K/s' })),
  ]
}

/** Validity of the model. */
export const warmingValidity: readonly string[] = [
  'one temperature for the conductor and a share of its insulation; for short faults a share of 0 is the safe side',
  'what leaves is taken as if each temperature were steady',
]
