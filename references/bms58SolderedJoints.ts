import { lapStrengthN, sustainedStrengthShares } from '../packages/core/src/solder/index.ts'
import type { Reference } from './compare.ts'

export const reference: Reference = {
  source: 'Maupin and Swanger, Strength of Soft-Soldered Joints in Copper Tubing, NBS Building Materials and Structures Report BMS58',
  edition: '1940',
  clause: 'abstract',
  status: 'published',
  cases: [
    {
      title: 'half tin, half lead: short-time strength over what is held for 10,000 h',
      printed: '18',
      unit: '1',
      got: () => {
        const { shortTimeN, sustainedN } = lapStrengthN({ alloy: 'Sn50Pb50', overlapMm: 6, bondWidthMm: 1, shearMPa: 36 })
        return shortTimeN / sustainedN
      },
      looksUp: true,
    },
    { title: 'tin and antimony, the weaker end', printed: '7', unit: '1', got: () => 1 / sustainedStrengthShares.tinAntimony.low, looksUp: true },
    { title: 'tin and antimony, the stronger end', printed: '5', unit: '1', got: () => 1 / sustainedStrengthShares.tinAntimony.high, looksUp: true },
  ],
}
