import { fuseBands } from '@strandwise/core'
import type { RepairJob } from '../job/index.ts'
import type { Assume } from '../job/inner.ts'

/** Kind of fuse or breaker. */
export type FuseKind = NonNullable<RepairJob['circuit']['fuseKind']>

export const fuseKindWords: Readonly<Record<FuseKind, string>> = {
  blade: 'blade fuse',
  'bolt-down': 'bolt-down fuse',
  cartridge: 'cartridge fuse',
  breaker: 'circuit breaker',
}

/** Kind that a rating suggests: blade fuses and glass cartridges are made in fixed ratings, other fuses are bolted down. */
function usualKind(ratedA: number): FuseKind {
  const isMade = (name: keyof typeof fuseBands) => fuseBands[name].ratingsA.some((rating) => rating === ratedA)
  if (isMade('ISO 8820-3') || isMade('ISO 8820-3 type E')) return 'blade'
  return isMade('IEC 60127-2 F') ? 'cartridge' : 'bolt-down'
}

/** The fuse's kind: given, else that of its series, else assumed by its rating; null if neither kind nor fuse is given. */
export function fuseKindOf({ circuit }: RepairJob, assume: Assume): FuseKind | null {
  const { fuseA, fuseKind, fuseSeries } = circuit
  const stated = fuseKind ?? (fuseSeries === undefined ? undefined : 'blade')
  if (fuseA === undefined) return stated ?? null
  return assume('circuit.fuseKind', stated, usualKind(fuseA), 'the kind that is made in this rating; other kinds open later or sooner')
}
