import type { SectionId } from '@strandwise/planner/facts'

export const parts = { see: 'What you see', measured: 'What you measured', have: 'What you have', work: 'What to do' } as const

export type Stop =
  | { readonly kind: 'part'; readonly part: keyof typeof parts }
  | { readonly kind: 'answers'; readonly id: string }
  | { readonly kind: 'before' }
  | { readonly kind: 'section'; readonly id: SectionId }
  | { readonly kind: 'after'; readonly id: 'steps' | 'parts' | 'weighed' | 'sources' }

/** The order of work down the wire: each section of the plan hangs beneath the answers that it rests on. */
export const layout: readonly Stop[] = [
  { kind: 'part', part: 'see' },
  { kind: 'answers', id: 'circuit' },
  { kind: 'before' },
  { kind: 'answers', id: 'damage' },
  { kind: 'answers', id: 'wire' },
  { kind: 'answers', id: 'wire-beyond' },
  { kind: 'answers', id: 'terminal' },
  { kind: 'answers', id: 'surroundings' },
  { kind: 'part', part: 'measured' },
  { kind: 'answers', id: 'load' },
  { kind: 'answers', id: 'readings' },
  { kind: 'section', id: 'readings' },
  { kind: 'section', id: 'wire-and-protection' },
  { kind: 'section', id: 'cut-back' },
  { kind: 'part', part: 'have' },
  { kind: 'answers', id: 'way' },
  { kind: 'answers', id: 'solder-sleeve' },
  { kind: 'section', id: 'method' },
  { kind: 'answers', id: 'tools' },
  { kind: 'answers', id: 'solders' },
  { kind: 'section', id: 'joint' },
  { kind: 'section', id: 'heating' },
  { kind: 'answers', id: 'sleeves' },
  { kind: 'section', id: 'covering' },
  { kind: 'section', id: 'strain-relief' },
  { kind: 'section', id: 'proof' },
  { kind: 'part', part: 'work' },
  { kind: 'after', id: 'steps' },
  { kind: 'after', id: 'parts' },
  { kind: 'after', id: 'weighed' },
  { kind: 'after', id: 'sources' },
]
