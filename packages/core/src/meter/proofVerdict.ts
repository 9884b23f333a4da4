/** Outcome of a reading; "cannot tell" means that a better reading is needed. */
export type ProofVerdict = 'passes' | 'fails' | 'cannot tell'

/** Passes if even the high end is within the limit, fails if even the low end is above it. */
export function proofVerdict(low: number, high: number, allowed: number): ProofVerdict {
  if (high <= allowed) return 'passes'
  return low > allowed ? 'fails' : 'cannot tell'
}
