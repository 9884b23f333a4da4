import type { Sleeve } from '@strandwise/core'

/** True if adhesive seals the sleeve's ends: by its material, or by the lining given. */
export const isLined = ({ material, adhesiveWallMm = 0 }: Sleeve): boolean => material === 'polyolefin-adhesive-lined' || adhesiveWallMm > 0

/** Thickness of the lining once the sleeve sits on a core: its cross-section is the same as after free recovery. */
export const liningMm = (recoveredInsideMm: number, wallMm: number, ontoMm: number): number =>
  (Math.sqrt(ontoMm ** 2 + 4 * wallMm * (recoveredInsideMm + wallMm)) - ontoMm) / 2
