import * as z from 'zod/mini'
import { repairJobShape } from './repairJobShape.ts'
import { canonicalSpelling } from './spellings.ts'

/** Parses both spellings of a field into a job in fixed units. A Standard Schema. */
export const repairJobSchema = z.pipe(z.transform(canonicalSpelling), repairJobShape)
