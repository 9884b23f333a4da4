import { minimumBendRadiusMm } from '@strandwise/core/routing'
import type { Reference } from './compare.ts'

export const reference: readonly Reference[] = [
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
