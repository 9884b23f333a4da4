import { readingInterval } from '../packages/core/src/meter/index.ts'
import type { Reference } from './compare.ts'

export const reference: Reference = {
  source: 'WMO, instruments expert team, worked uncertainty budget of a multimeter',
  clause: 'resolution component',
  status: 'published',
  cases: [
    {
      title: 'standard uncertainty of a resolution of 0.001 ohm, that is half a count either way',
      printed: '0.00029',
      unit: 'ohm',
      got: () => readingInterval({ reading: 100, percentOfReading: 0, counts: 0.5, resolution: 0.001 }).standardUncertainty,
    },
  ],
}
