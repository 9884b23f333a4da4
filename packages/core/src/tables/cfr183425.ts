import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** Current in A of one gauge by the limit of its insulation. */
export interface Cfr183425Row {
  readonly gauge: number
  readonly size: string
  readonly limit60C: number
  readonly limit75C: number
  readonly limit80C: number
  readonly limit90C: number
  readonly limit105C: number
  readonly limit125C: number
  readonly limit200C: number
}

/** Fraction of the current in an engine space of 50 °C. */
export interface EngineSpaceRow {
  readonly limitC: number
  readonly factor: number
}

/**
 * Allowable currents in A of boat wiring below 50 V by gauge and limit of the insulation, with the engine-space factors of note 1.
 * Note 2, bundled conductors, is in groupingFactors.
 *
 * @source 33 CFR 183.425, table 5 read in a reprint; note 1 from memory
 */
export const cfr183425 = /* @__PURE__ */ frozen({
  rowsA: [
    { gauge: 18, size: '18', limit60C: 10, limit75C: 10, limit80C: 15, limit90C: 20, limit105C: 20, limit125C: 25, limit200C: 25 },
    { gauge: 16, size: '16', limit60C: 15, limit75C: 15, limit80C: 20, limit90C: 25, limit105C: 25, limit125C: 30, limit200C: 35 },
    { gauge: 14, size: '14', limit60C: 20, limit75C: 20, limit80C: 25, limit90C: 30, limit105C: 35, limit125C: 40, limit200C: 45 },
    { gauge: 12, size: '12', limit60C: 25, limit75C: 25, limit80C: 35, limit90C: 40, limit105C: 45, limit125C: 50, limit200C: 55 },
    { gauge: 10, size: '10', limit60C: 40, limit75C: 40, limit80C: 50, limit90C: 55, limit105C: 60, limit125C: 70, limit200C: 70 },
    { gauge: 8, size: '8', limit60C: 55, limit75C: 65, limit80C: 70, limit90C: 70, limit105C: 80, limit125C: 90, limit200C: 100 },
    { gauge: 6, size: '6', limit60C: 80, limit75C: 95, limit80C: 100, limit90C: 100, limit105C: 120, limit125C: 125, limit200C: 135 },
    { gauge: 4, size: '4', limit60C: 105, limit75C: 125, limit80C: 130, limit90C: 135, limit105C: 160, limit125C: 170, limit200C: 180 },
    { gauge: 3, size: '3', limit60C: 120, limit75C: 145, limit80C: 150, limit90C: 155, limit105C: 180, limit125C: 195, limit200C: 210 },
    { gauge: 2, size: '2', limit60C: 140, limit75C: 170, limit80C: 175, limit90C: 180, limit105C: 210, limit125C: 225, limit200C: 240 },
    { gauge: 1, size: '1', limit60C: 165, limit75C: 195, limit80C: 210, limit90C: 210, limit105C: 245, limit125C: 265, limit200C: 280 },
    { gauge: 0, size: '1/0', limit60C: 195, limit75C: 230, limit80C: 245, limit90C: 245, limit105C: 285, limit125C: 305, limit200C: 325 },
    { gauge: -1, size: '2/0', limit60C: 225, limit75C: 265, limit80C: 285, limit90C: 285, limit105C: 330, limit125C: 355, limit200C: 370 },
    { gauge: -2, size: '3/0', limit60C: 260, limit75C: 310, limit80C: 330, limit90C: 330, limit105C: 385, limit125C: 410, limit200C: 430 },
    { gauge: -3, size: '4/0', limit60C: 300, limit75C: 360, limit80C: 385, limit90C: 385, limit105C: 445, limit125C: 475, limit200C: 510 },
  ],
  referenceC: 30,
  /** The 200 °C entry is printed as 1 though the square-root law of the others gives 0.94. */
  engineSpace: [
    { limitC: 60, factor: 0.58 },
    { limitC: 75, factor: 0.75 },
    { limitC: 80, factor: 0.78 },
    { limitC: 90, factor: 0.82 },
    { limitC: 105, factor: 0.86 },
    { limitC: 125, factor: 0.89 },
    { limitC: 200, factor: 1 },
  ],
  engineSpaceC: 50,
  engineSpaceProvenance: { status: 'from memory', source: '33 CFR 183.425', clause: 'note 1 to table 5; the 50 C behind it was read' },
  provenance: { status: 'published', source: '33 CFR 183.425, Conductors: general', clause: 'table 5' },
} as const satisfies {
  readonly rowsA: readonly Cfr183425Row[]
  readonly referenceC: number
  readonly engineSpace: readonly EngineSpaceRow[]
  readonly engineSpaceC: number
  readonly engineSpaceProvenance: Provenance
  readonly provenance: Provenance
})
