import type * as z from 'zod/mini'
import type { repairJobShape } from './repairJobShape.ts'
import type { places, readingKinds } from './words.ts'

type ReadonlyDeep<T> = T extends readonly (infer Item)[]
  ? readonly ReadonlyDeep<Item>[]
  : T extends object
    ? { readonly [Key in keyof T]: ReadonlyDeep<T[Key]> }
    : T

/** The repair job in its fixed units. Eight answers are required: circuit kind, supply, load, wire size, insulation, length, damage and its distance from the plug. */
export interface RepairJob extends ReadonlyDeep<z.output<typeof repairJobShape>> {}
/** Places along the circuit, in the order of the current. */
export type Place = (typeof places)[number]
/** Kind of reading: ohms with two leads, a drop under load, ohms with four wires, a plain voltage, insulation, a clamped current or a temperature. */
export type ReadingKind = (typeof readingKinds)[number]
/** Known properties of a tool; unknown ones are assumed as a band (contact: a factor 3 either way) and listed. */
export type JobTool = NonNullable<RepairJob['tools']>[number]
/** One reading: kind, value, places, state of the load, and accuracy of the meter. */
export type JobReading = NonNullable<RepairJob['readings']>[number]
