import { metaOf, schemaAt } from './fieldAt.ts'
import type { FieldMeta } from './fields.ts'
import { repairJobShape } from './repairJobShape.ts'

/** Metadata of a job field, by its dotted path outside lists. */
export function fieldMetaAt(path: string): FieldMeta {
  const meta = metaOf(schemaAt(repairJobShape, path.split('.'), {}))
  if (meta === undefined) throw new Error(`the job has no field ${path}`)
  return meta
}
