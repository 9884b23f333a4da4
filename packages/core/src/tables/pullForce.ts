import { frozen } from '../errors/inner.ts'
import { pullForceAs7928 } from './pullForceAs7928.ts'
import { pullForceClamped } from './pullForceClamped.ts'
import { pullForceIec60352 } from './pullForceIec60352.ts'
import { pullForceNasa8739 } from './pullForceNasa8739.ts'
import type { PullForceTable } from './pullForceTable.ts'
import { pullForceUl486 } from './pullForceUl486.ts'

/**
 * Least pull-out forces by standard: four for crimps, two for wires in screw or clamp terminals. A destructive test of a sample, never a load in service.
 *
 * @source UL 486A-486B, SAE AS7928, IEC 60352-2, NASA-STD-8739.4; UL 486E and EN 60999-1 for clamped wires
 */
export const pullForce = /* @__PURE__ */ frozen({
  'UL 486A-486B': pullForceUl486,
  'SAE AS7928': pullForceAs7928,
  'IEC 60352-2': pullForceIec60352,
  'NASA-STD-8739.4': pullForceNasa8739,
  ...pullForceClamped,
} as const satisfies Readonly<Record<string, PullForceTable>>)
