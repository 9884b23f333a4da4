import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** Current in A of one area at the ambients that the reprint gives. */
export interface Iec60364CurrentRow {
  readonly areaMm2: number
  readonly ambient30C: number
  readonly ambient40C: number
  readonly ambient45C: number
  readonly ambient50C: number
  readonly ambient55C: number
}

/**
 * Currents in A of three loaded copper conductors with PVC of 70 degC: in conduit on a wall (method B2) and clipped direct (method C).
 *
 * @source IEC 60364-5-52:2009, table B.52.4, as a machine maker's handbook prints it with its ambient factors applied
 */
export const iec60364Currents = /* @__PURE__ */ frozen({
  methodB2A: [
    { areaMm2: 1.5, ambient30C: 15, ambient40C: 13, ambient45C: 12, ambient50C: 11, ambient55C: 9 },
    { areaMm2: 2.5, ambient30C: 20, ambient40C: 17, ambient45C: 16, ambient50C: 14, ambient55C: 12 },
    { areaMm2: 4, ambient30C: 27, ambient40C: 23, ambient45C: 21, ambient50C: 19, ambient55C: 16 },
    { areaMm2: 6, ambient30C: 34, ambient40C: 30, ambient45C: 27, ambient50C: 24, ambient55C: 21 },
    { areaMm2: 10, ambient30C: 46, ambient40C: 40, ambient45C: 36, ambient50C: 33, ambient55C: 28 },
    { areaMm2: 16, ambient30C: 62, ambient40C: 54, ambient45C: 49, ambient50C: 44, ambient55C: 38 },
    { areaMm2: 25, ambient30C: 80, ambient40C: 70, ambient45C: 63, ambient50C: 57, ambient55C: 49 },
    { areaMm2: 35, ambient30C: 99, ambient40C: 86, ambient45C: 78, ambient50C: 70, ambient55C: 60 },
    { areaMm2: 50, ambient30C: 118, ambient40C: 103, ambient45C: 93, ambient50C: 84, ambient55C: 72 },
    { areaMm2: 70, ambient30C: 149, ambient40C: 130, ambient45C: 118, ambient50C: 106, ambient55C: 91 },
    { areaMm2: 95, ambient30C: 179, ambient40C: 156, ambient45C: 141, ambient50C: 127, ambient55C: 109 },
    { areaMm2: 120, ambient30C: 206, ambient40C: 179, ambient45C: 163, ambient50C: 146, ambient55C: 126 },
  ],
  methodCA: [
    { areaMm2: 1.5, ambient30C: 17, ambient40C: 15, ambient45C: 14, ambient50C: 12, ambient55C: 11 },
    { areaMm2: 2.5, ambient30C: 24, ambient40C: 21, ambient45C: 19, ambient50C: 17, ambient55C: 15 },
    { areaMm2: 4, ambient30C: 32, ambient40C: 28, ambient45C: 25, ambient50C: 23, ambient55C: 20 },
    { areaMm2: 6, ambient30C: 41, ambient40C: 36, ambient45C: 32, ambient50C: 29, ambient55C: 25 },
    { areaMm2: 10, ambient30C: 57, ambient40C: 50, ambient45C: 45, ambient50C: 40, ambient55C: 35 },
    { areaMm2: 16, ambient30C: 76, ambient40C: 66, ambient45C: 60, ambient50C: 54, ambient55C: 46 },
    { areaMm2: 25, ambient30C: 96, ambient40C: 84, ambient45C: 76, ambient50C: 68, ambient55C: 59 },
    { areaMm2: 35, ambient30C: 119, ambient40C: 104, ambient45C: 94, ambient50C: 84, ambient55C: 73 },
  ],
  limitC: 70,
  referenceC: 30,
  provenance: {
    status: 'published',
    source: 'IEC 60364-5-52, Selection and erection of electrical equipment, wiring systems',
    edition: '2009',
    clause: 'current-carrying capacities, methods B2 and C, three loaded copper conductors, PVC',
  },
} as const satisfies {
  readonly methodB2A: readonly Iec60364CurrentRow[]
  readonly methodCA: readonly Iec60364CurrentRow[]
  readonly limitC: number
  readonly referenceC: number
  readonly provenance: Provenance
})
