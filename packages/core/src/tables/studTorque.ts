import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** One thread of a stud and the least torque of the nut on it. */
export interface StudTorqueRow {
  readonly thread: string
  /** Nominal diameter of the thread. */
  readonly diameterMm: number
  readonly printedLbfIn: number
  readonly leastTorqueNm: number
}

const provenance = {
  status: 'published',
  source: 'Telecom rectifier manual, least torque of electrical connections',
  edition: 'October 1998',
  clause: 'table 8-E',
} as const

/** Newton metres in a pound-force inch, exactly. */
const nmPerLbfIn = 4.4482216152605 * 0.0254
/** Millimetres in an inch; numbered threads are 0.060 in and 0.013 in a number. */
const mmPerIn = 25.4
const row = (thread: string, diameterIn: number, printedLbfIn: number): StudTorqueRow => ({
  thread,
  diameterMm: diameterIn * mmPerIn,
  printedLbfIn,
  leastTorqueNm: printedLbfIn * nmPerLbfIn,
})

/**
 * Least torque of the nut that holds a lug on a stud, by thread; steel of grade 2, and other metals but aluminium. Inch threads only: no published row for metric ones was found.
 *
 * @source Telecom rectifier manual, October 1998, table 8-E
 */
export const studTorque: { readonly rows: readonly StudTorqueRow[]; readonly provenance: Provenance } = /* @__PURE__ */ frozen({
  rows: [
    row('8-32', 0.164, 19),
    row('10-24', 0.19, 27),
    row('1/4-20', 0.25, 65),
    row('5/16-18', 0.3125, 135),
    row('3/8-16', 0.375, 240),
    row('7/16-14', 0.4375, 385),
    row('1/2-13', 0.5, 585),
  ],
  provenance,
})
