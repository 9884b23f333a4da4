import { demoJobs } from '../demo/index.ts'
import { repairJobJsonSchema } from '../job/jsonSchema.ts'
import { demoJob } from './plan.ts'
import { UnusableFile } from './readJobText.ts'
import { exitCodes, type Streams } from './streams.ts'

/** strandwise schema and strandwise demo: what a job looks like. */
export function schemaCommand(command: 'schema' | 'demo', names: readonly string[], streams: Streams): number {
  if (command === 'schema') {
    streams.stdout.write(`${JSON.stringify(repairJobJsonSchema, null, 2)}\n`)
    return exitCodes.sound
  }
  const [name] = names
  if (name === undefined) {
    streams.stdout.write(`${Object.keys(demoJobs).join('\n')}\n`)
    return exitCodes.sound
  }
  try {
    streams.stdout.write(`${JSON.stringify(demoJob(name), null, 2)}\n`)
    return exitCodes.sound
  } catch (error) {
    if (!(error instanceof UnusableFile)) throw error
    streams.stderr.write(`demo ${name}: ${error.message}\n`)
    return exitCodes.unusable
  }
}
