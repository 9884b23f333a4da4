import { bendStrain, minimumBendRadiusMm } from '@strandwise/core/routing'
import type { Reference } from './compare.ts'

const strainAt = (diameters: number) =>
  bendStrain({ strandDiameterMm: 4, bendRadiusMm: minimumBendRadiusMm({ outsideDiameterMm: 4, rule: 'unsupported', multiple: diameters }) })

export const reference: readonly Reference[] = [
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
  {
    source: 'SAE AS50881',
    clause: 'coaxial cable: 10 outside diameters',
    status: 'published',
    notes: 'ASTM F2639 allows 6: the stricter is the default, the other is given as a multiple.',
    cases: [
      { title: '5 mm coaxial cable', printed: '50', unit: 'mm', got: () => minimumBendRadiusMm({ outsideDiameterMm: 5, rule: 'coaxial' }), looksUp: true },
      {
        title: '5 mm coaxial cable, 6 outside diameters of ASTM F2639',
        printed: '30',
        unit: 'mm',
        got: () => minimumBendRadiusMm({ outsideDiameterMm: 5, rule: 'coaxial', multiple: 6 }),
        looksUp: true,
      },
    ],
  },
]
