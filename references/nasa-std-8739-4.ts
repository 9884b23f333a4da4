import { bendStrain, minimumBendRadiusMm } from '../packages/core/src/routing/index.ts'
import { lapOverlapDiameters } from '../packages/core/src/solder/index.ts'
import type { Reference } from './compare.ts'

const strainAt = (diameters: number) =>
  bendStrain({ strandDiameterMm: 4, bendRadiusMm: minimumBendRadiusMm({ outsideDiameterMm: 4, rule: 'unsupported', multiple: diameters }) })

export const reference: readonly Reference[] = [
  {
    source: 'NASA-STD-8739.4',
    edition: 'Change 6',
    clause: '19.6.1, lap splice',
    status: 'published',
    cases: [
      { title: 'least overlap of a soldered lap in wire diameters', printed: '3', unit: '1', got: () => lapOverlapDiameters.low, looksUp: true },
      { title: 'largest overlap of a soldered lap in wire diameters', printed: '6', unit: '1', got: () => lapOverlapDiameters.high, looksUp: true },
    ],
  },
  {
    source: 'NASA-STD-8739.4',
    clause: '7.3.21, bend radius of 6, 10 and 15 outside diameters',
    status: 'derived',
    notes: 'The multiples are printed; the strain at the outer fibre of a round of that diameter is worked out from them.',
    cases: [
      { title: 'strain at 6 outside diameters', printed: '0.07692308', unit: '1', got: () => strainAt(6) },
      { title: 'strain at 10 outside diameters', printed: '0.04761905', unit: '1', got: () => strainAt(10) },
      { title: 'strain at 15 outside diameters', printed: '0.03225806', unit: '1', got: () => strainAt(15) },
    ],
  },
]
