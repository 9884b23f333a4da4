import { recoveredWallMm, type Sleeve } from '@strandwise/core'

/** The wall of a sleeve as supplied: it keeps its volume, so it is the recovered wall stretched onto the supplied inside. */
export function suppliedWallMm(sleeve: Sleeve): number {
  return recoveredWallMm({ recoveredWallMm: sleeve.recoveredWallMm, recoveredInsideMm: sleeve.recoveredInsideMm, ontoMm: sleeve.suppliedInsideMm })
}
