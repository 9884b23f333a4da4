import { requireFiniteResult } from '../errors/index.ts'
import { recoveredWallMm } from './recoveredWall.ts'
import type { Sleeve } from './sleeve.ts'

/** How a tube sits on a core: shrunk onto it, or loose round it at its own recovered size. */
export interface OnCore {
  readonly wallMm: number
  readonly outsideMm: number
  readonly grips: boolean
}

/** The wall and outside of a tube on a core; one that doesn't reach the core stands at its recovered inside and wall. */
export function onCore(sleeve: Sleeve, ontoMm: number): OnCore {
  const grips = sleeve.recoveredInsideMm < ontoMm
  const wallMm = grips
    ? recoveredWallMm({ recoveredWallMm: sleeve.recoveredWallMm, recoveredInsideMm: sleeve.recoveredInsideMm, ontoMm })
    : sleeve.recoveredWallMm
  const insideMm = grips ? ontoMm : sleeve.recoveredInsideMm
  return { wallMm, outsideMm: requireFiniteResult('recoveredWallMm', sleeve.recoveredWallMm, insideMm + 2 * wallMm), grips }
}
