import { parseArgs } from 'node:util'
import { planCommand } from './plan.ts'
import { schemaCommand } from './schema.ts'
import { exitCodes, type Streams } from './streams.ts'

const usage = `strandwise plan JOB.json [--format text|markdown|json] [--strict]
strandwise plan --demo NAME      the plan of a demo job
strandwise demo [NAME]           the names of the demo jobs, or one as a job file to start from
strandwise schema                the JSON Schema of a job

JOB.json may be - for standard input. --strict: "cannot tell" counts as unsound.
Exit codes: 0 nothing unsound, 1 something unsound or refused, 2 unusable input.
`

/** The command behind `strandwise`: reads arguments, answers with an exit code, and never shows a stack. */
export async function run(args: readonly string[], streams: Streams): Promise<number> {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        format: { type: 'string', default: 'text' },
        strict: { type: 'boolean', default: false },
        demo: { type: 'string' },
        help: { type: 'boolean', short: 'h', default: false },
      },
    })
    const [command, ...rest] = positionals
    if (values.help || command === 'help') {
      streams.stdout.write(usage)
      return exitCodes.sound
    }
    if (command === 'plan')
      return await planCommand(rest, { format: values.format, strict: values.strict, ...(values.demo === undefined ? {} : { demo: values.demo }) }, streams)
    if (command === 'demo' || command === 'schema') return schemaCommand(command, rest, streams)
    streams.stderr.write(`${command === undefined ? 'no command' : `no command "${command}"`}\n${usage}`)
    return exitCodes.unusable
  } catch (error) {
    if (error instanceof TypeError && 'code' in error && String(error.code).startsWith('ERR_PARSE_ARGS')) {
      streams.stderr.write(`${error.message}\n`)
      return exitCodes.unusable
    }
    throw error
  }
}
