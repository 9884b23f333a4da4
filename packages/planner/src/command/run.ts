import { debuglog, parseArgs } from 'node:util'
import { closest } from 'fastest-levenshtein'
import { printable } from '../job/inner.ts'
import { demo } from './demo.ts'
import { plan } from './plan.ts'
import { prove } from './prove.ts'
import { schema } from './schema.ts'
import { type Command, exitCodes, type Options, type Streams } from './streams.ts'
import { Unusable } from './unusable.ts'
import { version } from './version.ts'

const usage = `strandwise plan JOB.json [--all] [--format text|markdown|html|json] [--strict]
strandwise plan --demo NAME      the plan of a demo job
strandwise audit WIRES           [--format csv|ndjson|json|markdown] [--workers N] [--no-lines] [--strict]
                                 a verdict a row for a list of wires, as CSV or one JSON object a line
strandwise explain FORMULA name="quantity"…   [--format text|markdown|json]
                                 a formula with its numbers, steps and source; without a name the formulas there are
strandwise prove JOB.json FOUND.json [--format markdown|html|json] [--strict]
                                 what was read on the finished repair: proven, not proven or failed, and its record
strandwise demo [NAME]           the names of the demo jobs, or one as a job file to start from
strandwise schema                the JSON Schema of a job
strandwise --version

JOB.json and WIRES may be - for standard input. --strict: "cannot tell" and "not proven" count as unsound.
--all: every ground, not the card, cautions and steps alone.
--no-lines leaves the line numbers out, for parts of a list that are joined again.
Exit codes: 0 nothing unsound, 1 something unsound or refused, 2 unusable input or output, 3 an error of the program itself.
`

// Commands, loaded on demand: loading the formulas takes as long as making a plan.
const commands: Readonly<Record<string, Command>> = {
  plan: { options: ['format', 'strict', 'demo', 'all'], mostNames: 1, run: plan },
  audit: { options: ['format', 'workers', 'no-lines', 'strict'], mostNames: 1, run: async (...given) => (await import('./audit.ts')).audit(...given) },
  explain: { options: ['format'], mostNames: 100, run: async (...given) => (await import('./explain.ts')).explain(...given) },
  prove: { options: ['format', 'strict'], mostNames: 2, run: prove },
  demo: { options: [], mostNames: 1, run: demo },
  schema: { options: [], mostNames: 0, run: schema },
}

const debug = debuglog('strandwise')

/** An internal error as one line with what a bug report needs. NODE_DEBUG=strandwise shows the stack. */
export function internalError(error: unknown, args: readonly string[]): string {
  debug('%s', error instanceof Error ? error.stack : error)
  const what = error instanceof Error ? `${error.name}: ${error.message}` : String(error)
  const call = ['strandwise', ...args].join(' ')
  return printable(
    `strandwise ${version} failed by an error of its own: ${what.slice(0, 300)}; please report it to the maintainers of @strandwise/planner with this line, the file and the call: ${call.slice(0, 300)}`,
  )
}

/** Parses command, names and options; refuses anything else. */
function read(args: readonly string[]) {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      format: { type: 'string' },
      strict: { type: 'boolean' },
      all: { type: 'boolean' },
      demo: { type: 'string' },
      workers: { type: 'string' },
      'no-lines': { type: 'boolean' },
      help: { type: 'boolean', short: 'h' },
      version: { type: 'boolean' },
    },
  })
  const { help, version: wantsVersion, ...options } = values
  return { help, wantsVersion, options: options as Options, names: positionals }
}

async function answer(args: readonly string[], streams: Streams): Promise<number> {
  const { help, wantsVersion, options, names } = read(args)
  const [name, ...rest] = names
  if (help || name === 'help') {
    streams.stdout.write(usage)
    return exitCodes.sound
  }
  if (wantsVersion) {
    streams.stdout.write(`${version}\n`)
    return exitCodes.sound
  }
  if (name === undefined) throw new Unusable('no command', ...usage.trimEnd().split('\n'))
  const command = Object.hasOwn(commands, name) ? commands[name] : undefined
  if (command === undefined) {
    const known = Object.keys(commands)
    throw new Unusable(`no command "${name.slice(0, 60)}"; there are ${known.join(', ')}; the closest is ${closest(name.slice(0, 60), known)}`)
  }
  for (const option of Object.keys(options) as (keyof Options)[]) {
    if (command.options.includes(option)) continue
    const takes = command.options.length === 0 ? 'no option' : command.options.map((one) => `--${one}`).join(', ')
    throw new Unusable(`--${option}: ${name} does not take it; allowed: ${takes}`)
  }
  if (rest.length > command.mostNames) {
    const most = command.mostNames === 0 ? 'nothing more' : `at most ${command.mostNames}`
    throw new Unusable(`${name}: "${rest[command.mostNames]?.slice(0, 60)}" is one argument too many; allowed: ${most}`)
  }
  return await command.run(rest, options, streams)
}

/** The command behind `strandwise`: reads arguments, returns an exit code, and never shows a stack. */
export async function run(args: readonly string[], streams: Streams): Promise<number> {
  const say = (line: string) => streams.stderr.write(`${printable(line)}\n`)
  try {
    return await answer(args, streams)
  } catch (error) {
    if (error instanceof Unusable) {
      for (const line of error.lines) say(line)
      return exitCodes.unusable
    }
    if (error instanceof TypeError && 'code' in error && String(error.code).startsWith('ERR_PARSE_ARGS')) {
      say(error.message)
      return exitCodes.unusable
    }
    if (isWriteError(error)) throw error
    say(internalError(error, args))
    return exitCodes.internal
  }
}

/** A system error on writing; the owner of the stream words it. */
export const isWriteError = (error: unknown): error is NodeJS.ErrnoException => error instanceof Error && 'syscall' in error && error.syscall === 'write'
