import { lapLengthForStrengthMm } from '../packages/core/src/solder/index.ts'
import type { Reference } from './compare.ts'

/** A solid wire of diameter 1 with a bond as wide as the wire, or half as wide. */
const length = (bondWidthMm: number): number => lapLengthForStrengthMm({ tensileMPa: 220, areaMm2: Math.PI / 4, shearMPa: 30, safetyFactor: 1, bondWidthMm })

export const reference: Reference = {
  source: 'equal forces in lap and conductor, worked by hand: L/d = (pi/4) sigma/tau',
  clause: 'copper of 220 MPa, solder of 30 MPa',
  status: 'derived',
  cases: [
    { title: 'bond as wide as the wire, lap in diameters', printed: '5.8', unit: '1', got: () => length(1) },
    { title: 'bond half as wide, lap in diameters', printed: '11.5', unit: '1', got: () => length(0.5) },
  ],
}
