import * as z from 'zod/mini'
import { jobFields } from './fields.ts'
import { repairJobShape } from './repairJobSchema.ts'

/** JSON Schema (draft 2020-12) of a job in its fixed units, with title, unit and allowed range beside each field. */
export const repairJobJsonSchema: Readonly<Record<string, unknown>> = z.toJSONSchema(repairJobShape, { io: 'input', metadata: jobFields }) as Readonly<
  Record<string, unknown>
>
