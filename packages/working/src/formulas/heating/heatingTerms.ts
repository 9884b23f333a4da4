import { type HeatJointInput, type HeatJointResult, heatJointDefaults } from '@strandwise/core/heating'
import type { FormulaSymbol, SolvedTerm } from '../formula.ts'

/** The heat balance of a joint under a tool, in TeX and as plain text. */
export const heating = {
  tex: "\\frac{dH}{dt} = P_{tool} - P_{surface} - \\sum n\\,q,\\quad H = C\\,\\theta + m\\,L\\,f(\\theta),\\quad C'\\frac{\\partial\\theta}{\\partial t} = kA\\frac{\\partial^2\\theta}{\\partial x^2} - G'\\left(\\theta-\\theta_a\\right)",
  plain: "dH/dt = P_tool - P_surface - sum(n * q), H = C*theta + m*L*f(theta); along each wire C' dtheta/dt = k*A d2theta/dx2 - G' (theta - theta_a)",
} as const

/** The symbols of a joint under a tool. */
export function heatingSymbols(i: HeatJointInput): Readonly<Record<string, FormulaSymbol<unknown>>> {
  const { tool } = i
  const own: Readonly<Record<string, FormulaSymbol<unknown>>> =
    tool.kind === 'iron'
      ? {
          theta_t: { tex: '\\theta_t', unit: '°C', of: 'tool.setC', meaning: 'temperature set at the iron' },
          R_t: { tex: 'R_t', unit: 'K/W', of: 'tool.tipResistanceKPerW', meaning: 'thermal resistance of the tip' },
          R_c: { tex: 'R_c', unit: 'K/W', of: 'tool.contactResistanceKPerW', meaning: 'thermal resistance of the contact' },
        }
      : { theta_t: { tex: '\\theta_t', unit: '°C', of: 'tool.airC', meaning: 'temperature of the hot air' } }
  return {
    theta_a: { tex: '\\theta_a', unit: '°C', of: 'ambientC', meaning: 'temperature of the surroundings' },
    ...own,
    L: { tex: 'L', unit: 'mm', of: 'joint.lapMm', meaning: 'length of the lap' },
    V: { tex: 'V', unit: 'mm³', of: 'joint.solderMm3', meaning: 'solder' },
    ...Object.fromEntries(
      i.conductors.flatMap(({ areaMm2, stubMm }, at): [string, FormulaSymbol<unknown>][] => [
        [`A_${at + 1}`, { tex: `A_${at + 1}`, unit: 'mm²', of: () => areaMm2, meaning: `conductor ${at + 1}` }],
        [`s_${at + 1}`, { tex: `s_${at + 1}`, unit: 'mm', of: () => stubMm, meaning: `bare stub of conductor ${at + 1}` }],
      ]),
    ),
    t_off: { tex: 't_{off}', unit: 's', of: 'toolOffS', meaning: 'time at which the tool is taken away' },
  }
}

/** Heat from the tool at steady state. */
function steadyToolW(i: HeatJointInput, steadyC: number): readonly SolvedTerm[] {
  if (i.tool.kind !== 'iron') return []
  const asked = (i.tool.setC - steadyC) / (i.tool.tipResistanceKPerW + i.tool.contactResistanceKPerW)
  return [{ text: 'what the iron gives then', tex: 'P_{tool}', value: Math.min(asked, i.tool.maximumW ?? asked), unit: 'W' }]
}

/** Results of the run: times that exist, temperatures, and the residual of the energy balance. */
export function heatingTerms(i: HeatJointInput, result: HeatJointResult): readonly SolvedTerm[] {
  const time = (text: string, tex: string, value: number | null): readonly SolvedTerm[] => (value === null ? [] : [{ text, tex, value, unit: 's' }])
  const each = (text: string, tex: string, unit: string, values: readonly number[]): readonly SolvedTerm[] =>
    values.map((value, at) => ({ text: `${text} ${at + 1}`, tex: `${tex}_{${at + 1}}`, value, unit }))
  return [
    ...time('first at solidus', 't_s', result.solidusAtS),
    ...time('all liquid', 't_l', result.liquidusAtS),
    ...time('wetted: the time to plan with', 't_w', result.wettedAtS),
    ...time('solid again', 't_r', result.resolidifiedAtS),
    { text: 'where the joint would end with the tool left on', tex: '\\theta_\\infty', value: result.steadyC, unit: '°C' },
    ...steadyToolW(i, result.steadyC),
    { text: 'joint when the tool goes', tex: '\\theta_{off}', value: result.jointAtToolOffC, unit: '°C' },
    ...each('hottest edge of the insulation on conductor', '\\vartheta', '°C', result.insulationPeakC),
    ...each('time above the limit of the insulation on conductor', 't', 's', result.insulationExposureS),
    { text: 'residual: share of the heat that the run does not account for', tex: 'r', value: result.energyResidual, unit: '1' },
  ]
}

/** Whether the solder flowed, in words. */
export function heatingNotes(i: HeatJointInput, result: HeatJointResult): readonly string[] {
  const superheat = i.wettingSuperheatK ?? heatJointDefaults.wettingSuperheatK.value
  if (result.wettedAtS !== null) return [`wetted is ${superheat} K above liquidus, so that the ends of the lap flow too`]
  return [result.everReachesLiquidus ? 'not wetted within the run' : 'never reaches liquidus, however long the tool stays']
}

/** Validity of the model. */
export const heatingValidity: readonly string[] = [
  'the lap as one lump: its ends come later than its middle, so say "about"',
  'the contact of the tool is known to a factor of three either way',
]
