import { fuseKindWords, type JobFacts } from '../facts/inner.ts'

/** Kind of fuse to fetch: the job's, else a blade fuse. */
export const fuseKindText = ({ fuseKind }: JobFacts): string => fuseKindWords[fuseKind ?? 'blade']
