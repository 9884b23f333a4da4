import { repairJobJsonSchema } from '../job/index.ts'
import { exitCodes, type Options, type Streams } from './streams.ts'

/** strandwise schema: the JSON Schema of a job. */
export function schema(_names: readonly string[], _options: Options, { stdout }: Streams): number {
  stdout.write(`${JSON.stringify(repairJobJsonSchema, null, 2)}\n`)
  return exitCodes.sound
}
