import { parseArgs } from 'node:util'
import { calls } from './calls.ts'
import { consumers } from './consumers.ts'
import { corruptions } from './corruptions.ts'
import { goldens } from './goldens.ts'
import { jobs, spoilt } from './jobs.ts'
import { audits } from './lighthouse.ts'
import { mutate, rooms } from './mutation.ts'
import { planner } from './planner.ts'
import { recalled } from './recalled.ts'
import { isDone, keep, type PartResult, sourcesHash } from './results.ts'
import { rows } from './rows.ts'

const { values } = parseArgs({
  options: {
    part: { type: 'string', multiple: true },
    count: { type: 'string', default: '1000000' },
    seed: { type: 'string', default: '1' },
    again: { type: 'boolean', default: false },
  },
})

const since = Date.now()
const live = process.stdout.isTTY === true
const say = (text: string): void => {
  if (live) process.stdout.write(`\r\u001b[2K  ${((Date.now() - since) / 1000).toFixed(0)} s  ${text}`)
}

const count = Number(values.count)
const seed = Number(values.seed)
if (!Number.isSafeInteger(count) || count < 1 || !Number.isSafeInteger(seed)) throw new Error('--count and --seed are whole numbers')

/** Parts are independent: an interrupted run continues with those not yet done on these sources. */
const parts: Readonly<Record<string, () => Promise<PartResult>>> = {
  calls: () => calls(count, seed, say),
  // A job takes milliseconds, a call microseconds.
  jobs: async () => jobs(Math.ceil(count / 10), seed, say),
  'spoilt jobs': async () => spoilt(Math.ceil(count / 10), seed, say),
  planner: () => planner(seed, say),
  consumers: () => consumers(say),
  corruptions: () => corruptions(Math.ceil(count / 10), seed, say),
  rows: () => rows(count * 10, say),
  goldens: async () => goldens(),
  recalled: () => recalled(say),
  lighthouse: () => audits(say),
  ...Object.fromEntries(rooms().map((room) => [`mutation ${room}`, () => mutate(room, say)])),
}

/** "mutation" means all rooms. */
const wanted = (values.part ?? Object.keys(parts)).flatMap((name) =>
  name === 'mutation' ? Object.keys(parts).filter((part) => part.startsWith('mutation ')) : [name],
)
const unknown = wanted.filter((name) => !Object.hasOwn(parts, name))
if (unknown.length > 0) throw new Error(`no part is called "${unknown.join('", "')}"; there are: mutation, ${Object.keys(parts).join(', ')}`)

let failed = 0
for (const name of wanted) {
  const sources = sourcesHash()
  // A short run is labelled, as it does not count as the full proof.
  const label = ['calls', 'jobs', 'spoilt jobs', 'corruptions', 'rows'].includes(name) && count < 1_000_000 ? `${name} (${count})` : name
  if (!values.again && values.part === undefined && isDone(label, sources)) {
    process.stdout.write(`${label}: done on these sources; --again runs it once more\n`)
    continue
  }
  const start = Date.now()
  const result = await (parts[name] as () => Promise<PartResult>)().catch(
    (error: Error): PartResult => ({ ok: false, summary: error.message.split('\n')[0] ?? '', details: `\`\`\`text\n${error.stack ?? error.message}\n\`\`\`` }),
  )
  const file = keep(label, result, (Date.now() - start) / 1000, sources)
  say('')
  process.stdout.write(
    `${live ? '\r' : ''}${result.ok ? 'ok  ' : 'FAIL'} ${label}: ${result.summary} (${((Date.now() - start) / 1000).toFixed(0)} s, ${file})\n`,
  )
  if (!result.ok) failed += 1
}
process.exitCode = failed === 0 ? 0 : 1
