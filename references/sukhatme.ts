import { criticalRadiusMm, finConductanceWPerK } from '../packages/core/src/heat/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

const source = 'Sukhatme, A Textbook on Heat Transfer'
const radii = [
  [0.2, 10, '2.0'],
  [0.2, 50, '0.4'],
  [0.05, 10, '0.5'],
  [0.05, 50, '0.1'],
] as const

/** m L of a 3 x 30 mm pin under 10 W/(m2 K), from its heat as a fraction of an infinite fin's. */
function mL(conductivityWPerMK: number): number {
  const pin = { conductivityWPerMK, areaMm2: (Math.PI / 4) * 9, lossWPerMK: 10 * Math.PI * 0.003 }
  return Math.atanh(finConductanceWPerK({ ...pin, lengthMm: 30 }) / finConductanceWPerK(pin))
}
const tipC = (conductivityWPerMK: number) => 20 + 100 / Math.cosh(mL(conductivityWPerMK))

export const reference: readonly Reference[] = [
  {
    source,
    clause: 'example 2.6, p. 34, critical radius in cm, as an open companion works it',
    status: 'derived',
    cases: radii.map(
      ([k, h, printed]): ReferenceCase => ({
        title: `conductivity ${k} W/(m K) under ${h} W/(m2 K)`,
        printed,
        unit: 'cm',
        got: () => criticalRadiusMm({ insulationConductivityWPerMK: k, filmWPerM2K: h }) / 10,
      }),
    ),
  },
  {
    source,
    clause: 'example 2.13, p. 73, pin of 3 x 30 mm, 120 C in 20 C, as an open companion works it',
    status: 'derived',
    cases: [
      { title: 'copper, m L', printed: '0.1852', unit: '1', got: () => mL(350) },
      { title: 'copper, tip', printed: '118.3099', unit: 'C', got: () => tipC(350) },
      { title: 'steel, m L', printed: '0.894427', unit: '1', got: () => mL(15) },
      { title: 'steel, tip', printed: '90.058', unit: 'C', got: () => tipC(15) },
    ],
  },
]
