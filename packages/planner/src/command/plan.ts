import type { PlanVerdict } from '../facts/index.ts'
import { issueLine, JobError, migrateJob, parseRepairJob } from '../job/index.ts'
import { planRepair, type RepairPlan, reportHtml, reportMarkdown, reportText } from '../report/index.ts'
import { demoJob } from './demo.ts'
import { formatOf } from './format.ts'
import { readJson } from './readText.ts'
import { exitCodes, type Options, type Streams } from './streams.ts'
import { named, Unusable } from './unusable.ts'

const formats: Readonly<Record<string, (plan: RepairPlan, length: { readonly all: boolean }) => string>> = {
  text: reportText,
  markdown: (plan, length) => `${reportMarkdown(plan, length)}\n`,
  html: reportHtml,
  json: (plan) => `${JSON.stringify(plan, null, 2)}\n`,
}

function exitCodeFor(verdict: PlanVerdict, strict: boolean): number {
  if (verdict === 'unsound' || verdict === 'refused') return exitCodes.unsound
  return strict && verdict === 'cannot tell' ? exitCodes.unsound : exitCodes.sound
}

/** strandwise plan: reads a job, prints its plan. */
export async function plan(files: readonly string[], { format, demo, strict = false, all = false }: Options, streams: Streams): Promise<number> {
  const print = formatOf(formats, format)
  const name = demo === undefined ? files[0] : `demo ${demo}`
  if ((demo === undefined ? 1 : 0) !== files.length || name === undefined)
    throw new Unusable('plan: give one job file, or - for standard input, or --demo NAME')
  try {
    const input = demo === undefined ? await readJson(name, streams.stdin, 'a job as "strandwise demo bilge-pump-feed" prints one') : demoJob(demo)
    const found = planRepair(parseRepairJob(migrateJob(input)))
    streams.stdout.write(print(found, { all }))
    return exitCodeFor(found.verdict, strict)
  } catch (error) {
    if (error instanceof JobError) throw named(name, new Unusable(...error.issues.map(issueLine)))
    if (error instanceof Unusable) throw named(name, error)
    throw error
  }
}
