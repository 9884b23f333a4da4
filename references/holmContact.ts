import {
  constrictionResistanceOhm,
  contactSpotRadiusMm,
  contactVoltages,
  contactVoltageV,
  crimpInterfaceResistanceOhm,
} from '../packages/core/src/joint/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

const copper = 1.7241e-8
const hardnessMPa = 500
const pressed = [
  { forceN: 1, printed: '0.000341659' },
  { forceN: 10, printed: '0.000108042' },
  { forceN: 100, printed: '0.0000341659' },
] as const
const both = { resistivity1OhmM: copper, resistivity2OhmM: copper } as const

/** Computed voltage at a metal's melting point against the table's melting voltage. */
function melting(title: string, meltingC: number, row: keyof typeof contactVoltages, why: string): ReferenceCase {
  return {
    title,
    printed: String(contactVoltages[row].meltingV),
    unit: 'V',
    got: () => contactVoltageV({ peakC: meltingC, bulkC: 20 }),
    allowed: { relative: 0.08, why },
  }
}

const alloyed = 'one Lorenz number serves all metals; the table is of measured voltages, to two digits'

export const reference: readonly Reference[] = [
  {
    source: 'Electrical Contacts: Principles and Applications',
    clause: 'pp. 13-15, clean contact R = sqrt(rho^2 eta pi H/(4 F)), copper, eta 1, H 500 MPa (force and hardness chosen, the formula alone is published)',
    status: 'derived',
    cases: [
      ...pressed.map(
        ({ forceN, printed }): ReferenceCase => ({
          title: `crimped interface at ${forceN} N`,
          printed,
          unit: 'ohm',
          got: () => crimpInterfaceResistanceOhm({ forceN, hardnessMPa, ...both }),
        }),
      ),
      { title: 'spot radius at 10 N', printed: '0.07978846', unit: 'mm', got: () => contactSpotRadiusMm({ forceN: 10, hardnessMPa }) },
      {
        title: 'rho/(2a) with that radius',
        printed: '0.0001080419',
        unit: 'ohm',
        got: () => constrictionResistanceOhm({ ...both, spotRadiusMm: contactSpotRadiusMm({ forceN: 10, hardnessMPa }) }),
      },
    ],
  },
  {
    source: 'Vijayakumari, Engineering Physics',
    clause: 'Example 7.17, p. 189, Lorenz number as given there',
    status: 'derived',
    notes: 'The number was read in a public companion that works the example; the printed page was not seen.',
    cases: [
      {
        title: 'Lorenz number behind the contact voltage, 1083 C over 20 C',
        printed: '2.44e-8',
        unit: 'V2/K2',
        got: () => contactVoltageV({ peakC: 1083, bulkC: 20 }) ** 2 / (4 * (1356.15 ** 2 - 293.15 ** 2)),
        allowed: { absolute: 0.01e-8, why: 'contact theory rounds the theoretical 2.443e-8 to 2.45e-8, which the model keeps' },
      },
    ],
  },
  {
    source: 'Holm, Electric Contacts',
    edition: '1967',
    clause: 'melting voltages of clean contacts',
    status: 'from memory',
    cases: [
      melting('copper, 1083 C', 1083, 'annealed-copper', alloyed),
      melting('tin, 232 C', 232, 'tin', alloyed),
      melting('silver, 962 C', 962, 'silver', alloyed),
      melting('aluminium, 660 C', 660, 'aluminium-1350', alloyed),
    ],
  },
]
