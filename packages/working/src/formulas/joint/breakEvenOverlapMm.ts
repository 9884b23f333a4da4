import { breakEvenOverlapMm, lapJointResistanceOhm } from '@strandwise/core/joint'
import { solved } from '../formula.ts'
import { derived } from '../sources.ts'

type Given = Parameters<typeof breakEvenOverlapMm>[0]

const plainOhmPerM = (i: Given): number => i.plainOhmPerM ?? Math.max(...i.conductorsOhmPerM)

/** The working of breakEvenOverlapMm. */
export const breakEvenOverlapMmFormula = solved<Given>({
  id: 'breakEvenOverlapMm',
  call: breakEvenOverlapMm,
  name: 'L',
  tex: 'L',
  unit: 'mm',
  equationTex: 'R(L) = p\\,L',
  equation: 'R(L) = p * L/1000, R(L) the resistance of the lap',
  symbols: (i) => ({
    r_1: { tex: 'r_1', unit: 'Ω/m', of: 'conductorsOhmPerM.0', meaning: 'conductor that brings the current' },
    r_2: { tex: 'r_2', unit: 'Ω/m', of: 'conductorsOhmPerM.1', meaning: 'conductor that takes it away' },
    g: { tex: 'g', unit: 'S/m', of: 'interfaceSPerM', meaning: 'conductance of the interface per metre of overlap' },
    p: { tex: 'p', unit: 'Ω/m', of: () => plainOhmPerM(i), meaning: 'plain wire to compare with' },
  }),
  solution: (i) => {
    const overlapMm = breakEvenOverlapMm(i)
    if (overlapMm === null) return { value: 0, terms: [], notes: ['no overlap is as good as that wire: both conductors together resist as much'] }
    const lap = lapJointResistanceOhm({ ...i, overlapMm })
    const plain = (plainOhmPerM(i) * overlapMm) / 1000
    return {
      value: overlapMm,
      terms: [
        { text: 'resistance of the lap', tex: 'R(L)', value: lap, unit: 'Ω' },
        { text: 'resistance of as much plain wire', tex: 'p\\,L', value: plain, unit: 'Ω' },
        { text: 'residual', tex: 'R(L) - p\\,L', value: lap - plain, unit: 'Ω' },
      ],
    }
  },
  source: derived('two conductors coupled by a conductance per length'),
  validity: ['one-dimensional: a lower bound where the overlap is below one wire diameter'],
})
