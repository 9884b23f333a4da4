/** What a reading settles: cannot tell is a good answer, it says that a better reading is needed. */
export type ProofVerdict = 'passes' | 'fails' | 'cannot tell'

/** Passes where even the high end keeps the limit, fails where even the low end breaks it. */
export function proofVerdict(low: number, high: number, allowed: number): ProofVerdict {
  if (high <= allowed) return 'passes'
  return low > allowed ? 'fails' : 'cannot tell'
}
