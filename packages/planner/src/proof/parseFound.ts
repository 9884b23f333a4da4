import * as z from 'zod/mini'
import { type CircuitInput, restingSupplyV } from '../circuit/inner.ts'
import { JobError, type JobIssue, type RepairJob } from '../job/index.ts'
import { schemaIssues } from '../job/inner.ts'
import { foundShape } from './foundShape.ts'

type ReadonlyDeep<T> = T extends readonly (infer Item)[]
  ? readonly ReadonlyDeep<Item>[]
  : T extends object
    ? { readonly [Key in keyof T]: ReadonlyDeep<T[Key]> }
    : T

/** Findings on the finished repair: readings with their intervals, and inspection by hand and eye. */
export interface FoundReadings extends ReadonlyDeep<z.output<typeof foundShape>> {}

const day = /^\d{4}-\d{2}-\d{2}$/
/** Readings above this share of the supply are impossible. */
const beyondShare = 1.05

function isDate(date: string): boolean {
  const found = new Date(`${date}T00:00:00Z`)
  return day.test(date) && !Number.isNaN(found.getTime()) && found.toISOString().startsWith(date)
}

/** Fields that contradict one another or the job. */
function contradictions(found: FoundReadings, job: RepairJob, input: CircuitInput): readonly JobIssue[] {
  const issues: JobIssue[] = []
  const add = (path: string, value: unknown, allowed: string, example: string) => issues.push({ path: `found.${path}`, value, allowed, example })
  if (!isDate(found.date)) add('date', found.date, 'a day as year-month-day', '"date": "2026-05-04"')
  if (found.title !== undefined && found.title !== job.title)
    add(
      'title',
      found.title,
      job.title === undefined ? 'none: the job has no title' : `the title of the job, "${job.title}"`,
      job.title === undefined ? '' : `"title": ${JSON.stringify(job.title)}`,
    )
  const mostV = beyondShare * restingSupplyV(input).high
  found.readings.forEach(({ kind, from, to, load, low, high }, n) => {
    const at = `readings.${n}`
    if (from === to) add(`${at}.to`, to, 'another place than from', '"to": "joint-out"')
    if (low > high) add(`${at}.low`, low, `at most high, ${high}`, `"low": ${high}`)
    if (kind === 'drop' && load !== 'on') add(`${at}.load`, load, 'on: a drop is read with the load on', '"load": "on"')
    if ((kind === 'resistance' || kind === 'four-wire' || kind === 'insulation') && load === 'on')
      add(`${at}.load`, load, 'off or unplugged: ohms are read on a dead circuit', '"load": "unplugged"')
    if ((kind === 'resistance' || kind === 'four-wire' || kind === 'insulation') && high < 0) add(`${at}.high`, high, 'at least 0 Ω', '"high": 0.01')
    if ((kind === 'drop' || kind === 'voltage') && Math.min(Math.abs(low), Math.abs(high)) > mostV)
      add(`${at}.high`, high, `at most ${mostV.toPrecision(3)} V, the most that this supply gives: another range, or another source`, '"high": 0.002')
  })
  const joints = (found.ratio ?? []).map(({ joint }) => joint)
  if (new Set(joints).size < joints.length) add('ratio.1.joint', joints[1], 'another joint than the first entry', '"joint": 2')
  return issues
}

/**
 * Parses the found file and checks it against its job.
 *
 * @throws JobError by field, with paths that begin with "found"
 */
export function parseFound(found: unknown, job: RepairJob, input: CircuitInput): FoundReadings {
  const result = z.safeParse(foundShape, found)
  if (!result.success) {
    const issues = schemaIssues(foundShape, result.error.issues, found)
    throw new JobError(issues.map((issue) => ({ ...issue, path: issue.path === '' ? 'found' : `found.${issue.path}` })))
  }
  const read = result.data as FoundReadings
  const issues = contradictions(read, job, input)
  if (issues.length > 0) throw new JobError(issues)
  return read
}
