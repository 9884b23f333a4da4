import { requireFiniteResult } from '../errors/index.ts'
import { recoveredWallMm } from './recoveredWall.ts'
import type { Sleeve } from './sleeve.ts'

/** State of a tube on a core: shrunk onto it, or loose at its recovered size. */
export interface OnCore {
  readonly wallMm: number
  readonly outsideMm: number
  readonly grips: boolean
}

/** Wall and outside of a tube on a core; a tube that does not reach the core keeps its recovered inside and wall. */
export function onCore(sleeve: Sleeve, ontoMm: number): OnCore {
  const grips = sleeve.recoveredInsideMm < ontoMm
  const wallMm = grips
    ? recoveredWallMm({ recoveredWallMm: sleeve.recoveredWallMm, recoveredInsideMm: sleeve.recoveredInsideMm, ontoMm })
    : sleeve.recoveredWallMm
  const insideMm = grips ? ontoMm : sleeve.recoveredInsideMm
  return { wallMm, outsideMm: requireFiniteResult('recoveredWallMm', sleeve.recoveredWallMm, insideMm + 2 * wallMm), grips }
}
