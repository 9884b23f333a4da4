import { coilResistanceAtOhm } from '../packages/core/src/circuit/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

/** AWG, ohm per 1000 ft at 25 C and at 65 C as the figure prints them. */
const rows = [
  ['6', '0.403', '0.465'],
  ['7', '0.508', '0.586'],
  ['8', '0.641', '0.739'],
  ['9', '0.808', '0.932'],
  ['10', '1.02', '1.18'],
  ['11', '1.28', '1.48'],
  ['12', '1.62', '1.87'],
] as const

const halfDigit = (printed: string) => 0.5 * 10 ** -(printed.split('.')[1]?.length ?? 0)

export const reference: Reference = {
  source: 'US Navy NEETS module 4, Introduction to Electrical Conductors, Wiring Techniques, and Schematic Reading',
  clause: 'figure 1B, 25 and 65 degC columns',
  status: 'published',
  cases: rows.map(
    ([gauge, at25, at65]): ReferenceCase => ({
      title: `AWG ${gauge}, ${at25} ohm per 1000 ft at 25 C, at 65 C`,
      printed: at65,
      unit: 'ohm',
      got: () => coilResistanceAtOhm({ resistanceOhm: Number(at25), atC: 25, wantedC: 65 }),
      allowed: {
        absolute: halfDigit(at65) + 1.16 * halfDigit(at25),
        why: 'half the last digit of both columns: the value at 25 C is rounded too, and grows 1.16 times',
      },
    }),
  ),
}
