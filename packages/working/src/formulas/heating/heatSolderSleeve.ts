import { heatSolderSleeve } from '@strandwise/core/heating'
import { type SolvedTerm, solved } from '../formula.ts'
import { derived } from '../sources.ts'
import { heating, heatingNotes, heatingSymbols, heatingTerms, heatingValidity } from './heatingTerms.ts'

/** The working of heatSolderSleeve: its value is the hottest that the joint in the sleeve becomes. */
export const heatSolderSleeveFormula = solved<Parameters<typeof heatSolderSleeve>[0]>({
  id: 'heatSolderSleeve',
  call: heatSolderSleeve,
  name: 'theta_peak',
  tex: '\\theta_{peak}',
  unit: '°C',
  equationTex: `C_t\\frac{d\\theta_t}{dt} = h A_o\\left(\\theta_{air}-\\theta_t\\right) - G\\left(\\theta_t-\\theta_j\\right),\\quad ${heating.tex}`,
  equation: `C_t dtheta_t/dt = h*A_o*(theta_air - theta_t) - G*(theta_t - theta_j); ${heating.plain}`,
  symbols: (i) => ({
    D_t: { tex: 'D_t', unit: 'mm', of: 'tube.insideMm', meaning: 'inside of the tube as supplied' },
    w_t: { tex: 'w_t', unit: 'mm', of: 'tube.wallMm', meaning: 'wall of the tube' },
    theta_r: { tex: '\\theta_r', unit: '°C', of: 'tube.recoveryC', meaning: 'temperature at which the tube shrinks' },
    ...heatingSymbols(i),
  }),
  solution: (i) => {
    const result = heatSolderSleeve(i)
    const time = (text: string, tex: string, value: number | null): readonly SolvedTerm[] => (value === null ? [] : [{ text, tex, value, unit: 's' }])
    return {
      value: result.jointPeakC,
      terms: [...time('tube shrinks', 't_{tube}', result.tubeRecoversAtS), ...time('ring melts', 't_{ring}', result.ringMeltsAtS), ...heatingTerms(i, result)],
      notes: [...heatingNotes(i, result), ...(result.firstToFail === null ? [] : [`first to fail: ${result.firstToFail}`])],
    }
  },
  source: derived('one lump for the tube and one for the joint, with the wires as fins'),
  validity: ['a simple model: the tube is one lump and shrinks at once', ...heatingValidity],
})
