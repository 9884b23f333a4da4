import { lapOverlapDiameters } from '../packages/core/src/solder/index.ts'
import type { Reference } from './compare.ts'

export const reference: Reference = {
  source: 'NASA-STD-8739.4',
  edition: 'Change 6',
  clause: '19.6.1, lap splice',
  status: 'published',
  cases: [
    { title: 'least overlap of a soldered lap in wire diameters', printed: '3', unit: '1', got: () => lapOverlapDiameters.low, looksUp: true },
    { title: 'largest overlap of a soldered lap in wire diameters', printed: '6', unit: '1', got: () => lapOverlapDiameters.high, looksUp: true },
  ],
}
