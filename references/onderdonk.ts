import { adiabaticFaultCurrentA, fusingTimeOnderdonkS } from '../packages/core/src/ampacity/index.ts'
import { circularMilsToMm2 } from '../packages/core/src/conductor/index.ts'
import type { Reference } from './compare.ts'

/** Constant C of (I/A)^2 t = C log10((Tf + 234)/(Ti + 234)), A in circular mils, equivalent to the adiabatic rule of IEC 60949. */
function logConstant(initialC: number, finalC: number): number {
  const perMil = adiabaticFaultCurrentA({ areaMm2: circularMilsToMm2(1), timeS: 1, material: 'copper', initialC, finalC })
  return perMil ** 2 / Math.log10((finalC + 234) / (initialC + 234))
}

export const reference: readonly Reference[] = [
  {
    source: "Onderdonk's equation for the melting of copper, quoted in 1928",
    clause: '33 (I/A)^2 t = log10(1 + (Tm - Ta)/(234 + Ta)), A in circular mils, as a forum reprints it',
    status: 'published',
    notes: 'The reprint writes 234 - Ta, which gives 178 A in its example: not used. 234 + Ta is what the physics asks for.',
    cases: [{ title: 'its constant 33 from the adiabatic K of 226, 25 to 1083 C', printed: '33', unit: '1', got: () => 1 / logConstant(25, 1083) }],
  },
  {
    source: "Onderdonk's equation for the melting of copper, quoted in 1928",
    clause: 'its example with the sign set right',
    status: 'derived',
    cases: [
      {
        title: '2581 circular mils melt in 5 s at this current, from 25 C',
        printed: '168.9',
        unit: 'A',
        got: () => Math.sqrt(fusingTimeOnderdonkS({ areaMm2: circularMilsToMm2(2581), currentA: 1, initialC: 25 }) / 5),
      },
    ],
  },
  {
    source: 'ICEA P-32-382, Short circuit characteristics of insulated cables',
    clause: '(I/A)^2 t = 0.0297 log10((T2 + 234)/(T1 + 234)), A in circular mils',
    status: 'recorded',
    notes:
      'Recorded difference: IEC 60949 has K = 226, which is 0.0302 here (75 to 200 C), 1.5 % more in I^2 t and 0.8 % more current. Two standards, two roundings of the heat capacity of copper; the library follows IEC.',
    cases: [
      { title: 'the constant that K = 226 amounts to, 75 to 200 C', printed: '0.0302', unit: 'A2 s', got: () => logConstant(75, 200) },
      { title: 'its ratio to the printed 0.0297', printed: '1.015', unit: '1', got: () => logConstant(75, 200) / 0.0297 },
    ],
  },
]
