import { metaOf, schemaAt } from './fieldAt.ts'
import type { FieldMeta } from './fields.ts'
import { repairJobShape } from './repairJobShape.ts'

/** What the schema says of a field of the job, by its dotted path outside any list. */
export function fieldMetaAt(path: string): FieldMeta {
  const meta = metaOf(schemaAt(repairJobShape, path.split('.'), {}))
  if (meta === undefined) throw new Error(`the job has no field ${path}`)
  return meta
}
