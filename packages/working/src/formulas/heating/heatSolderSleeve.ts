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
  equationTex: `C_t\\frac{d\\theta_t}{dt} = \\frac{\\theta_{air}-\\theta_t}{1/(h A_o)+R_w/2} - P_{rad} - \\frac{\\theta_t-\\theta_j}{R_w/2+1/G},\\quad ${heating.tex}`,
  equation: `C_t dtheta_t/dt = (theta_air - theta_t)/(1/(h*A_o) + R_w/2) - P_rad - (theta_t - theta_j)/(R_w/2 + 1/G); ${heating.plain}`,
  symbols: (i) => ({
    D_t: { tex: 'D_t', unit: 'mm', of: 'tube.insideMm', meaning: 'inside of the tube as supplied' },
    D_r: { tex: 'D_r', unit: 'mm', of: 'tube.recoveredInsideMm', meaning: 'inside of the tube when it has shrunk freely' },
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
  source: derived('the tube over the lap and the joint as lumps, the wires as fins, and over them a tube that conducts nothing along itself'),
  validity: ['the tube shrinks everywhere at once; stream, grip and recovery are each known to a band', ...heatingValidity],
})
