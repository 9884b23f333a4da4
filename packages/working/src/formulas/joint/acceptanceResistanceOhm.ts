import { acceptanceResistanceOhm } from '@strandwise/core/joint'
import { type FormulaSymbol, solved } from '../formula.ts'
import { derived } from '../sources.ts'
import { siteSymbols, siteValidity } from './siteSymbols.ts'

type Given = Parameters<typeof acceptanceResistanceOhm>[0]

const limits = {
  temperature: { text: 'resistance at which the joint reaches its temperature limit', tex: 'R_\\theta' },
  drop: { text: 'resistance at which the joint takes the allowed voltage', tex: 'R_V = \\frac{V}{I}' },
  'plain-wire': { text: 'resistance of as much plain wire', tex: 'R_w = n\\,L\\,\\frac{r_1+r_2}{2}' },
} as const

function limitSymbols(i: Given): Readonly<Record<string, FormulaSymbol<unknown>>> {
  return {
    L: { tex: 'L', unit: 'mm', of: 'jointLengthMm', meaning: 'length of the joint' },
    ...(i.limitC === undefined ? {} : { theta_max: { tex: '\\theta_{max}', unit: '°C', of: 'limitC', meaning: 'temperature that the joint may reach' } }),
    ...(i.allowedDropV === undefined ? {} : { V: { tex: 'V', unit: 'V', of: 'allowedDropV', meaning: 'voltage that the joint may take' } }),
    ...(i.plainWireMultiple === undefined ? {} : { n: { tex: 'n', unit: '1', of: 'plainWireMultiple', meaning: 'times its own length of wire' } }),
  }
}

/** The working of acceptanceResistanceOhm. */
export const acceptanceResistanceOhmFormula = solved<Given>({
  id: 'acceptanceResistanceOhm',
  call: acceptanceResistanceOhm,
  name: 'R',
  tex: 'R',
  unit: 'Ω',
  equationTex: 'R = \\min\\left(R_\\theta, R_V, R_w\\right),\\quad I^2 R_\\theta = P_1 + P_2\\ \\text{at}\\ \\theta_{max}',
  equation:
    'R = min(R_theta, R_V, R_w) of the limits that are given; I^2 * R_theta = P_1 + P_2 with the joint at theta_max, R_V = V/I, R_w = n * L/1000 * (r_1 + r_2)/2',
  symbols: (i) => ({ ...limitSymbols(i), ...siteSymbols(i) }),
  solution: (i) => {
    const { resistanceOhm, governedBy, candidates } = acceptanceResistanceOhm(i)
    return {
      value: resistanceOhm,
      terms: candidates.map((candidate) => ({ ...limits[candidate.limit], value: candidate.resistanceOhm, unit: 'Ω' })),
      notes: [`it is set by the ${limits[governedBy].text}`],
    }
  },
  source: derived('the joint in service solved for its resistance; the limits themselves are the asker’s'),
  validity: [...siteValidity, 'at 20 °C, for a joint whose resistance does not rise with temperature'],
})
