import { closest } from 'fastest-levenshtein'
import { demoJobs } from '../demo/index.ts'
import { issueLine, JobError } from '../job/jobError.ts'
import { parseRepairJob } from '../job/parseRepairJob.ts'
import { planRepair } from '../plan/planRepair.ts'
import type { PlanVerdict, RepairPlan } from '../plan/repairPlan.ts'
import { reportMarkdown } from '../report/reportMarkdown.ts'
import { reportText } from '../report/reportText.ts'
import { readJobText, UnusableFile } from './readJobText.ts'
import { exitCodes, type Streams } from './streams.ts'

const formats: Readonly<Record<string, (plan: RepairPlan) => string>> = {
  text: reportText,
  markdown: (plan) => `${reportMarkdown(plan)}\n`,
  json: (plan) => `${JSON.stringify(plan, null, 2)}\n`,
}

interface PlanOptions {
  readonly format: string
  readonly strict: boolean
  readonly demo?: string
}

function exitCodeFor(verdict: PlanVerdict, strict: boolean): number {
  if (verdict === 'unsound' || verdict === 'refused') return exitCodes.unsound
  return strict && verdict === 'cannot tell' ? exitCodes.unsound : exitCodes.sound
}

/** strandwise plan: one job in, its plan out. */
export async function planCommand(files: readonly string[], options: PlanOptions, streams: Streams): Promise<number> {
  const print = Object.hasOwn(formats, options.format) ? formats[options.format] : undefined
  if (print === undefined) return unusable(streams, `--format: is "${options.format}"; allowed: ${Object.keys(formats).join(', ')}`)
  const name = options.demo === undefined ? files[0] : `demo ${options.demo}`
  if ((options.demo === undefined ? 1 : 0) !== files.length || name === undefined)
    return unusable(streams, 'plan: give one job file, or - for standard input, or --demo NAME')
  try {
    const plan = planRepair(parseRepairJob(options.demo === undefined ? await readJson(name, streams) : demoJob(options.demo)))
    streams.stdout.write(print(plan))
    return exitCodeFor(plan.verdict, options.strict)
  } catch (error) {
    if (error instanceof JobError) return unusable(streams, ...error.issues.map((issue) => `${name}: ${issueLine(issue)}`))
    if (error instanceof UnusableFile) return unusable(streams, `${name}: ${error.message}`)
    throw error
  }
}

/** A demo job by its name; the closest is offered where there is none. */
export function demoJob(name: string): unknown {
  const names = Object.keys(demoJobs)
  if (Object.hasOwn(demoJobs, name)) return demoJobs[name]
  throw new UnusableFile(`no such demo job; there are ${names.join(', ')}; the closest is ${closest(name.slice(0, 60), names)}`)
}

async function readJson(name: string, streams: Streams): Promise<unknown> {
  const text = await readJobText(name, streams.stdin)
  try {
    return JSON.parse(text)
  } catch (error) {
    if (!(error instanceof SyntaxError) && !(error instanceof RangeError)) throw error
    throw new UnusableFile(`is not JSON: ${error.message.replace(/\s+/g, ' ').slice(0, 160)}; allowed: a job as "strandwise demo bilge-pump-feed" prints one`)
  }
}

function unusable(streams: Streams, ...lines: readonly string[]): number {
  for (const line of lines) streams.stderr.write(`${line}\n`)
  return exitCodes.unusable
}
