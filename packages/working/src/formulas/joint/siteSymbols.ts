import { type JointSide, type JointSite, jointDefaults } from '@strandwise/core/joint'
import { metal } from '@strandwise/core/materials'
import type { FormulaSymbol } from '../formula.ts'

/** Resistance of a metre of a wire at 20 degC. */
function sideOhmPerM(side: JointSide): number {
  return ((side.resistivity20OhmM ?? metal(side.material ?? jointDefaults.material).resistivity20OhmM.nominal) * 1e6) / side.areaMm2
}

/** The symbols of a joint in service. */
export function siteSymbols(i: JointSite): Readonly<Record<string, FormulaSymbol<unknown>>> {
  const sides = i.conductors.flatMap((side, at): [string, FormulaSymbol<unknown>][] => [
    [`A_${at + 1}`, { tex: `A_${at + 1}`, unit: 'mm²', of: () => side.areaMm2, meaning: `conductor of wire ${at + 1}` }],
    [`r_${at + 1}`, { tex: `r_${at + 1}`, unit: 'Ω/m', of: () => sideOhmPerM(side), meaning: `resistance of a metre of wire ${at + 1} at 20 °C` }],
    [`w_${at + 1}`, { tex: `w_${at + 1}`, unit: 'mm', of: () => side.insulationThicknessMm, meaning: `insulation of wire ${at + 1}` }],
  ])
  const sleeve = i.sleeve
  return {
    I: { tex: 'I', unit: 'A', of: 'currentA', meaning: 'current through the joint' },
    theta_a: { tex: '\\theta_a', unit: '°C', of: 'ambientC', meaning: 'temperature of the air' },
    ...Object.fromEntries(sides),
    ...(sleeve ? { L_s: { tex: 'L_s', unit: 'mm', of: () => sleeve.lengthMm, meaning: 'length of the sleeve' } } : {}),
  }
}

/** Validity of the model of a joint in service. */
export const siteValidity: readonly string[] = [
  'the joint as a point between two long wires, in still air',
  'linear where every film coefficient is given, else by natural convection and radiation',
]
