import { type WireHeat, wireDefaults, wireState } from '@strandwise/core/ampacity'
import type { SolvedTerm } from '../formula.ts'

/** The heat balance of both directions (temperature from current and back), in TeX and as plain text. */
export const balance = {
  tex: "I^2 R'_{20}\\left(1+\\alpha_{20}\\left(\\theta_c-20\\right)\\right) = q_c + q_r - q_{sun},\\quad \\theta_c = \\theta_s + \\left(q_c + q_r - q_{sun}\\right)\\frac{\\ln\\left(D/d\\right)}{2\\pi k_i}",
  plain: 'I^2 * R_20 * (1 + alpha * (theta_c - 20)) = q_c + q_r - q_sun, theta_c = theta_s + (q_c + q_r - q_sun) * log(D/d)/(2 * pi * k_i)',
} as const

/** Every term of the balance at its solution, and the residual. */
export function balanceTerms(i: WireHeat & { readonly currentA: number }): readonly SolvedTerm[] {
  const state = wireState(i)
  const sun = i.solarAbsorbedWPerM ?? wireDefaults.solarAbsorbedWPerM
  return [
    { text: 'resistance of a metre, hot', tex: "R'", value: state.resistanceOhmPerM, unit: 'Ω/m' },
    { text: 'heat made in a metre', tex: "I^2 R'", value: i.currentA ** 2 * state.resistanceOhmPerM, unit: 'W/m' },
    {
      text: i.filmWPerM2K === undefined ? 'heat carried off by the air' : 'heat carried off by the film',
      tex: 'q_c',
      value: state.convectionWPerM,
      unit: 'W/m',
    },
    { text: 'heat radiated', tex: 'q_r', value: state.radiationWPerM, unit: 'W/m' },
    { text: 'sunshine absorbed', tex: 'q_{sun}', value: sun, unit: 'W/m' },
    { text: 'temperature of the surface', tex: '\\theta_s', value: state.surfaceC, unit: '°C' },
    { text: 'temperature of the conductor', tex: '\\theta_c', value: state.conductorC, unit: '°C' },
    { text: 'residual', tex: "I^2 R' - q_c - q_r + q_{sun}", value: state.residual, unit: 'W/m' },
  ]
}

/** Assumptions and extrapolations of the balance. */
export function balanceNotes(i: WireHeat & { readonly currentA: number }): readonly string[] {
  const words = { rayleigh: 'still air', 'reynolds-prandtl': 'moving air', resistivity: 'resistance' } as const
  return wireState(i).extrapolated.map((part) => `${words[part]}: outside the range of its law`)
}

/** Validity of the balance. */
export const balanceValidity: readonly string[] = [
  'one horizontal wire, far from its ends, in air and surroundings of one temperature',
  'the two laws of still air differ by about a fifth on thin wire: a verdict takes the unfavourable one',
]
