import { fusingCurrentPreeceA } from '../packages/core/src/ampacity/index.ts'
import { areaForDropMm2 } from '../packages/core/src/circuit/index.ts'
import { metal } from '../packages/core/src/materials/index.ts'
import type { Reference } from './compare.ts'

const notes = 'The answers were read in public companions that work the examples; the printed pages were not seen.'

/** Temperature in degC at which annealed copper has the example's resistivity. */
function copperAtC(resistivityOhmM: number): number {
  const { resistivity20OhmM, temperatureCoefficient20PerK } = metal('annealed-copper')
  return 20 + (resistivityOhmM / resistivity20OhmM.nominal - 1) / temperatureCoefficient20PerK.nominal
}

const taps = [
  { atM: 40, currentA: 30 },
  { atM: 100, currentA: 40 },
  { atM: 150, currentA: 100 },
  { atM: 250, currentA: 50 },
]

export const reference: readonly Reference[] = [
  {
    source: 'Theraja, A Textbook of Electrical Technology, vol. III',
    clause: 'Example 40.3, p. 1577: two-wire distributor with four taps',
    status: 'derived',
    notes,
    cases: [
      {
        title: 'area for 10 V to the last tap at 1.78e-8 ohm m: areas of the taps taken alone add',
        printed: '116.412',
        unit: 'mm2',
        got: () =>
          taps
            .map(({ atM, currentA }) =>
              areaForDropMm2({
                currentA,
                outLengthM: atM,
                returnLengthM: atM,
                allowedDropV: 10,
                material: 'annealed-copper',
                temperatureC: copperAtC(1.78e-8),
              }),
            )
            .reduce((sum, areaMm2) => sum + areaMm2, 0),
      },
    ],
  },
  {
    source: 'Mehta, Principles of Power System',
    clause: 'Example 13.6, p. 317: uniformly loaded two-wire distributor',
    status: 'derived',
    notes,
    cases: [
      {
        title: 'area for 10 V at 0.4 A/m over 500 m at 1.7e-6 ohm cm: the whole current over half the length',
        printed: '1.7',
        unit: 'cm2',
        got: () =>
          areaForDropMm2({
            currentA: 0.4 * 500,
            outLengthM: 250,
            returnLengthM: 250,
            allowedDropV: 10,
            material: 'annealed-copper',
            temperatureC: copperAtC(1.7e-8),
          }) / 100,
      },
    ],
  },
  {
    source: 'Mehta, Principles of Power System',
    clause: 'example 20.1, p. 495, as an open companion works it',
    status: 'derived',
    cases: [
      {
        title: 'radius that fuses at 1 A where 0.8 mm fuses at 8 A',
        printed: '0.2',
        unit: 'mm',
        got: () => {
          const scale = 8 / fusingCurrentPreeceA({ diameterMm: 1.6, material: 'tin-lead' })
          let [low, high] = [0, 0.8]
          for (let n = 0; n < 60; n += 1) {
            const middle = 0.5 * (low + high)
            if (scale * fusingCurrentPreeceA({ diameterMm: 2 * middle, material: 'tin-lead' }) > 1) high = middle
            else low = middle
          }
          return high
        },
      },
    ],
  },
]
