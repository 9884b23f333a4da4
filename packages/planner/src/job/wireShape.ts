import { commonWallMm, strandedDiameterMm } from '@strandwise/core'
import type { Assume } from './assume.ts'
import type { RepairJob } from './repairJob.ts'
import type { WireSize } from './wireSize.ts'

/** Diameter of loose stranding over a solid round of the same metal, for unknown strands. Common practice, no published source. */
const looseShare = 1.13
/** The same for fully compacted strands; below 1, as a nominal area may exceed the metal. A limit of ours. */
const pressedShare = 0.9
/** Least wall if the thickness is not given: a limit of ours. */
const thinnestWallMm = 0.05

/** Diameters of conductor and insulation. */
interface WireShape {
  readonly conductorDiameterMm: number
  readonly insulationThicknessMm: number
  readonly outsideMm: number
  /** Least outside diameter that holds the metal and the wall given. */
  readonly leastOutsideMm: number
}

/** Diameters of the wire: measured, else metal of that area with a common wall. */
export function wireShape(wire: Partial<RepairJob['wire']>, size: WireSize, assume: Assume): WireShape {
  const solidMm = Math.sqrt((4 * size.areaMm2) / Math.PI)
  const { strandCount, strandDiameterMm } = size
  const looseMm = strandCount !== undefined && strandDiameterMm !== undefined ? strandedDiameterMm({ strandCount, strandDiameterMm }) : looseShare * solidMm
  const pressedMm = Math.min(looseMm, pressedShare * solidMm)
  const leastOutsideMm = pressedMm + 2 * (wire.insulationThicknessMm ?? 0)
  const outsideMm = wire.outsideDiameterMm
  if (outsideMm === undefined) {
    const wallMm = assume('wire.insulationThicknessMm', wire.insulationThicknessMm, commonWallMm(size.areaMm2), 'a common wall for wire of this area')
    return { conductorDiameterMm: looseMm, insulationThicknessMm: wallMm, outsideMm: looseMm + 2 * wallMm, leastOutsideMm }
  }
  // If loose strands leave no room for the wall, they are compacted.
  const roomMm = outsideMm - 2 * (wire.insulationThicknessMm ?? thinnestWallMm)
  const conductorDiameterMm = Math.max(pressedMm, Math.min(looseMm, roomMm))
  const insulationThicknessMm = wire.insulationThicknessMm ?? Math.max(0, (outsideMm - conductorDiameterMm) / 2)
  return { conductorDiameterMm, insulationThicknessMm, outsideMm, leastOutsideMm }
}
