import { acceptanceResistanceOhm, type JointSide } from '../packages/core/src/joint/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

/** A bare rod of 5 mm whose own resistance is nothing beside the joint's. */
function rod(conductivityWPerMK: number): JointSide {
  const conductorDiameterMm = 5
  const bare = { areaMm2: (Math.PI / 4) * conductorDiameterMm ** 2, conductorDiameterMm, insulationThicknessMm: 0, insulationConductivityWPerMK: 1 }
  return { ...bare, conductivityWPerMK, resistivity20OhmM: 1e-30, temperatureCoefficient20PerK: 0, filmWPerM2K: 100 }
}

/** The joint of two such rods held at 100 C takes twice the heat of one; at 1 A the resistance is that heat. */
function heat(metal: string, conductivityWPerMK: number, printed: string): ReferenceCase {
  return {
    title: `${metal}, k ${conductivityWPerMK}, 5 mm, base 100 C, air 25 C, h 100: heat into one very long rod`,
    printed,
    unit: 'W',
    got: () =>
      acceptanceResistanceOhm({ currentA: 1, ambientC: 25, conductors: [rod(conductivityWPerMK), rod(conductivityWPerMK)], jointLengthMm: 1, limitC: 100 })
        .resistanceOhm / 2,
  }
}

export const reference: Reference = {
  source: 'Incropera and DeWitt, Fundamentals of Heat and Mass Transfer',
  clause: 'Example 3.9, very long rods',
  status: 'from memory',
  cases: [heat('copper', 398, '8.3'), heat('aluminium alloy', 180, '5.6'), heat('stainless steel', 14, '1.6')],
}
