import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'
import type { EngineSpaceRow } from './cfr183425.ts'

/** Current in A of one area by the insulation's limit; limit90C is for insulation of 85 to 90 °C. */
export interface Iso10133Row {
  readonly areaMm2: number
  readonly limit60C: number
  readonly limit70C: number
  readonly limit90C: number
  readonly limit105C: number
  readonly limit125C: number
  readonly limit200C: number
}

/**
 * Currents in A of single conductors of small-craft extra-low-voltage d.c. installations at 30 degC, every figure from memory.
 * The engine-space factors are stated for 60 degC but equal the square-root law at 50; insulation of 60 degC isn't used there.
 *
 * @source ISO 10133:2012, table A.1: from memory
 */
export const iso10133 = /* @__PURE__ */ frozen({
  rowsA: [
    { areaMm2: 0.75, limit60C: 6, limit70C: 10, limit90C: 12, limit105C: 16, limit125C: 20, limit200C: 25 },
    { areaMm2: 1, limit60C: 8, limit70C: 14, limit90C: 18, limit105C: 20, limit125C: 25, limit200C: 35 },
    { areaMm2: 1.5, limit60C: 12, limit70C: 18, limit90C: 21, limit105C: 25, limit125C: 30, limit200C: 40 },
    { areaMm2: 2.5, limit60C: 17, limit70C: 25, limit90C: 30, limit105C: 35, limit125C: 40, limit200C: 45 },
    { areaMm2: 4, limit60C: 22, limit70C: 35, limit90C: 40, limit105C: 45, limit125C: 50, limit200C: 55 },
    { areaMm2: 6, limit60C: 29, limit70C: 45, limit90C: 50, limit105C: 60, limit125C: 70, limit200C: 75 },
    { areaMm2: 10, limit60C: 40, limit70C: 65, limit90C: 70, limit105C: 90, limit125C: 100, limit200C: 120 },
    { areaMm2: 16, limit60C: 54, limit70C: 90, limit90C: 100, limit105C: 130, limit125C: 150, limit200C: 170 },
    { areaMm2: 25, limit60C: 71, limit70C: 120, limit90C: 140, limit105C: 170, limit125C: 185, limit200C: 200 },
    { areaMm2: 35, limit60C: 87, limit70C: 160, limit90C: 185, limit105C: 210, limit125C: 225, limit200C: 240 },
    { areaMm2: 50, limit60C: 105, limit70C: 210, limit90C: 230, limit105C: 270, limit125C: 300, limit200C: 325 },
    { areaMm2: 70, limit60C: 135, limit70C: 265, limit90C: 285, limit105C: 330, limit125C: 360, limit200C: 375 },
    { areaMm2: 95, limit60C: 165, limit70C: 310, limit90C: 330, limit105C: 390, limit125C: 410, limit200C: 430 },
    { areaMm2: 120, limit60C: 190, limit70C: 360, limit90C: 400, limit105C: 450, limit125C: 480, limit200C: 520 },
    { areaMm2: 150, limit60C: 220, limit70C: 380, limit90C: 430, limit105C: 475, limit125C: 520, limit200C: 560 },
  ],
  referenceC: 30,
  engineSpace: [
    { limitC: 70, factor: 0.75 },
    { limitC: 90, factor: 0.82 },
    { limitC: 105, factor: 0.86 },
    { limitC: 125, factor: 0.89 },
    { limitC: 200, factor: 1 },
  ],
  provenance: { status: 'from memory', source: 'ISO 10133, Small craft, extra-low-voltage d.c. installations', edition: '2012', clause: 'table A.1' },
} as const satisfies {
  readonly rowsA: readonly Iso10133Row[]
  readonly referenceC: number
  readonly engineSpace: readonly EngineSpaceRow[]
  readonly provenance: Provenance
})
