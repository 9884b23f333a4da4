import { strandedDiameterMm } from '@strandwise/core'
import type { Assume } from './assume.ts'
import { commonInsulationThicknessMm } from './assumed.ts'
import type { RepairJob } from './repairJob.ts'
import type { WireSize } from './wireSize.ts'

/** Across strands that are not counted, over the solid round of their metal: they lie loosely. Common practice, no published source. */
const looseShare = 1.13
/** The same where they are pressed as far as they go; below 1, for a nominal area is a little more than the metal. A limit of ours. */
const pressedShare = 0.9
/** Of insulation whose thickness is not given: a limit of ours. */
const thinnestWallMm = 0.05

/** Metal and insulation across. */
interface WireShape {
  readonly conductorDiameterMm: number
  readonly insulationThicknessMm: number
  readonly outsideMm: number
  /** Over the insulation at the least: less holds neither the metal nor the wall that the job gives. */
  readonly leastOutsideMm: number
}

/** How thick the wire is: as measured, else as metal of that area with a common wall. */
export function wireShape(wire: Partial<RepairJob['wire']>, size: WireSize, assume: Assume): WireShape {
  const solidMm = Math.sqrt((4 * size.areaMm2) / Math.PI)
  const { strandCount, strandDiameterMm } = size
  const looseMm = strandCount !== undefined && strandDiameterMm !== undefined ? strandedDiameterMm({ strandCount, strandDiameterMm }) : looseShare * solidMm
  const pressedMm = Math.min(looseMm, pressedShare * solidMm)
  const leastOutsideMm = pressedMm + 2 * (wire.insulationThicknessMm ?? 0)
  const outsideMm = wire.outsideDiameterMm
  if (outsideMm === undefined) {
    const wallMm = assume(
      'wire.insulationThicknessMm',
      wire.insulationThicknessMm,
      commonInsulationThicknessMm(size.areaMm2),
      'a common wall for wire of this area',
    )
    return { conductorDiameterMm: looseMm, insulationThicknessMm: wallMm, outsideMm: looseMm + 2 * wallMm, leastOutsideMm }
  }
  // Strands that would leave the wall no room are pressed.
  const roomMm = outsideMm - 2 * (wire.insulationThicknessMm ?? thinnestWallMm)
  const conductorDiameterMm = Math.max(pressedMm, Math.min(looseMm, roomMm))
  const insulationThicknessMm = wire.insulationThicknessMm ?? Math.max(0, (outsideMm - conductorDiameterMm) / 2)
  return { conductorDiameterMm, insulationThicknessMm, outsideMm, leastOutsideMm }
}
