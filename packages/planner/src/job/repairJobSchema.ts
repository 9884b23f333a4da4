import * as z from 'zod/mini'
import { repairJobShape } from './repairJobShape.ts'
import { canonicalSpelling } from './spellings.ts'

/** Takes both spellings of a field and gives the job in its fixed units. A Standard Schema. */
export const repairJobSchema = z.pipe(z.transform(canonicalSpelling), repairJobShape)
