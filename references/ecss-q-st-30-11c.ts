import { resistanceOhmPerM } from '../packages/core/src/conductor/index.ts'
import { heatFlowWPerM } from '../packages/core/src/heat/index.ts'
import type { Reference } from './compare.ts'

/** AWG 24 by annex C: 105 milliohm per metre at 20 C, 0.8 mm outside diameter, emissivity 0.75. */
const hotOhmPerM = () => {
  const asCopper = { areaMm2: 1.7241e-8 / 0.105e-6, material: 'annealed-copper' } as const
  return resistanceOhmPerM({ ...asCopper, temperatureC: 150 })
}

export const reference: Reference = {
  source: 'ECSS-Q-ST-30-11C Rev.2, Derating, EEE components',
  edition: '23 June 2021',
  clause: 'annex C, tables C-1 and C-3: wire in vacuum, 150 C in surroundings of 70 C',
  status: 'published',
  notes: 'Diameter and resistance are printed for AWG 24 alone. Radiation alone: still air of low pressure is another model.',
  cases: [
    {
      title: 'AWG 24, current whose heat leaves by radiation',
      printed: '3.4',
      unit: 'A',
      got: () => Math.sqrt(heatFlowWPerM({ surfaceC: 150, ambientC: 70, diameterMm: 0.8, emissivity: 0.75 }).radiationWPerM / hotOhmPerM()),
      allowed: { absolute: 0.11, why: 'worked out it is 3.50 A, 3 % above the printed figure, which seems cut down; resistance and diameter are rounded' },
    },
  ],
}
