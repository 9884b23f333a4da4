import type { JobFacts } from '../facts/inner.ts'

const words = { blade: 'blade fuse', 'bolt-down': 'bolt-down fuse', cartridge: 'cartridge fuse', breaker: 'circuit breaker' } as const

/** Kind of fuse to fetch: the job's, else a blade fuse. */
export const fuseKindText = ({ job }: JobFacts): string => words[job.circuit.fuseKind ?? 'blade']
