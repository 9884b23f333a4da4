import { JobError, jobForm, parseRepairJob } from '@strandwise/planner'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { anyJob } from '../../random/anyJob.ts'

/** Every path of a job with the values that stand there, entries of a list together. */
function gather(value: unknown, path: string, into: Map<string, Set<string>>): void {
  if (Array.isArray(value)) {
    for (const entry of value) gather(entry, path, into)
    return
  }
  const seen = into.get(path) ?? new Set()
  into.set(path, seen.add(JSON.stringify(value)))
  if (typeof value === 'object' && value !== null) for (const [key, inside] of Object.entries(value)) gather(inside, path === '' ? key : `${path}.${key}`, into)
}

test('random jobs draw every field of the schema, every choice of it, and both spellings; every field in jobs that are planned', { timeout: 120_000 }, () => {
  const drawn = new Map<string, Set<string>>()
  const accepted = new Map<string, Set<string>>()
  for (const job of fc.sample(anyJob, { numRuns: 4000, seed: 1 })) {
    gather(job, '', drawn)
    try {
      gather(parseRepairJob(job), '', accepted)
    } catch (error) {
      if (!(error instanceof JobError)) throw error
    }
  }
  const missing = jobForm.flatMap(({ at, fields }) =>
    fields.flatMap(({ path, values = [], written, shape }) => {
      const whole = at === '' ? path : `${at}.${path}`
      const found = drawn.get(whole) ?? new Set()
      const lacks = values.filter((value) => !found.has(JSON.stringify(value))).map((value) => `${whole}: ${value}`)
      const spelt = written === undefined || shape === 'interval' || drawn.has(whole.replace(/\w+$/, written)) ? [] : [`${whole} as ${written}`]
      const differ = (accepted.get(whole)?.size ?? 0) >= (values.length === 1 ? 1 : 2) ? [] : [`${whole}: two values in jobs that are planned`]
      return [...lacks, ...spelt, ...differ]
    }),
  )
  expect(missing).toEqual([])
})
