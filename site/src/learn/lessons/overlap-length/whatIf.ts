import { breakEvenOverlapMm, filletConductanceSPerM, lapJointResistanceOhm } from '@strandwise/core/joint'
import { lapSide } from '../../draw/lap.ts'
import { percent, say } from '../../lesson/say.ts'
import type { WhatIf } from '../../lesson/whatIf.ts'
import { diameterMm, fillet, ohmPerM, overlapMm } from './inCode.ts'

const pairAt = (share: number) => ({
  conductorsOhmPerM: [ohmPerM, ohmPerM] as const,
  interfaceSPerM: filletConductanceSPerM({ ...fillet, bondWidthMm: share * diameterMm }),
})
const enoughAt = (share: number): number => breakEvenOverlapMm(pairAt(share)) ?? Number.NaN

export const whatIf: WhatIf = {
  title: 'What if the solder line is thin?',
  ask: 'The solder has run in along a line only a tenth of a wire diameter wide. From how many diameters of overlap on is the lap no worse than plain wire?',
  setting: { label: 'width of the solder line, in wire diameters', unit: '', low: 0.05, high: 1, step: 0.05, start: 0.5 },
  at: 0.1,
  result: { label: 'overlap that equals plain wire, in diameters', unit: '', low: 0, high: 8, step: 0.5 },
  value: (share) => enoughAt(share) / diameterMm,
  picture: (share) => lapSide(diameterMm, 0.6, enoughAt(share)),
  says: (share) => {
    const lapOhm = lapJointResistanceOhm({ ...pairAt(share), overlapMm })
    return `A line ${say(share * diameterMm, 'mm', 2)} wide: ${say(enoughAt(share), 'mm', 2)} of overlap equals plain wire. The lap of ${say(overlapMm, 'mm', 2)} has ${say(lapOhm, 'Ω')}, ${percent((1000 * lapOhm) / (ohmPerM * overlapMm))} of plain wire that long.`
  },
}
