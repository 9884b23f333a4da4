import { heatJoint } from '@strandwise/core/heating'
import { solved } from '../formula.ts'
import { derived } from '../sources.ts'
import { heating, heatingNotes, heatingSymbols, heatingTerms, heatingValidity } from './heatingTerms.ts'

/** The working of heatJoint: its value is the hottest that the joint becomes. */
export const heatJointFormula = solved<Parameters<typeof heatJoint>[0]>({
  id: 'heatJoint',
  call: heatJoint,
  name: 'theta_peak',
  tex: '\\theta_{peak}',
  unit: '°C',
  equationTex: heating.tex,
  equation: heating.plain,
  symbols: heatingSymbols,
  solution: (i) => {
    const result = heatJoint(i)
    return { value: result.jointPeakC, terms: heatingTerms(i, result), notes: heatingNotes(i, result) }
  },
  source: derived('one lump with the enthalpy of its melt, and conducting wires with insulated and bare stretches as fins'),
  validity: heatingValidity,
})
