import { ambientFactor, deratedCurrentA } from '../packages/core/src/ampacity/index.ts'
import { iec60364Currents } from '../packages/core/src/tables/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

const ambients = [40, 45, 50, 55] as const

/** The handbook applies the factors as the standard prints them, to two digits. */
function factor(ambientC: number): number {
  const { limitC, referenceC } = iec60364Currents
  return Math.round(ambientFactor({ limitC, ambientC, referenceAmbientC: referenceC }) * 100) / 100
}

const cases = (method: 'methodB2A' | 'methodCA') =>
  iec60364Currents[method].flatMap((row) =>
    ambients.map(
      (ambientC): ReferenceCase => ({
        title: `${row.areaMm2} mm2, ${row.ambient30C} A at 30 C, in ${ambientC} C`,
        printed: String(row[`ambient${ambientC}C`]),
        unit: 'A',
        got: () =>
          deratedCurrentA({
            baseA: row.ambient30C,
            links: [{ name: 'ambient', factor: factor(ambientC), source: iec60364Currents.provenance }],
          }).currentA,
        ...(method === 'methodCA' && row.areaMm2 === 1.5
          ? {
              allowed: {
                absolute: 0.5 + 0.5 * factor(ambientC),
                why: 'this row prints its 30 C current cut to whole amperes, 17 for 17.5; the others are whole',
              },
            }
          : {}),
      }),
    ),
  )

const source = {
  source: 'IEC 60364-5-52, Selection and erection of electrical equipment, wiring systems',
  edition: '2009',
  status: 'published',
  notes: 'The 30 C column is the input, so each case checks the ambient factor and the chain, not the wire.',
} as const

export const reference: readonly Reference[] = [
  { ...source, clause: "method B2, three loaded copper conductors, PVC, in a machine maker's handbook", cases: cases('methodB2A') },
  { ...source, clause: "method C, three loaded copper conductors, PVC, in a machine maker's handbook", cases: cases('methodCA') },
]
