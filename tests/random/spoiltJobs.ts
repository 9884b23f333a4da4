import { JobError, parseRepairJob, planRepair } from '@strandwise/planner'
import { demoJobs } from '@strandwise/planner/demo'
import { Random, seedOf } from './random.ts'

type Key = string | number
type Holder = Record<Key, unknown>

/** What may stand where a job has something else. */
const odd: readonly unknown[] = [
  null,
  undefined,
  true,
  '',
  '4 V',
  '1e999',
  '\u0000',
  '\u001b[31m',
  '<script>',
  '10'.repeat(5000),
  0,
  -0,
  -1,
  1e300,
  5e-324,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  2 ** 53,
  [],
  {},
  [[[]]],
  { version: 2 },
  JSON.parse('{"__proto__": {"currentA": 4}, "constructor": 1}'),
  () => 4,
  4n,
  Symbol('odd'),
]

/** Every place of a value, by the object or list that holds it. */
function places(holder: Holder): readonly (readonly [Holder, Key])[] {
  return Object.keys(holder).flatMap((key) => {
    const value = holder[key]
    const inside = typeof value === 'object' && value !== null ? places(value as Holder) : []
    return [[holder, key] as const, ...inside]
  })
}

const spoilings: Readonly<Record<string, (random: Random, holder: Holder, key: Key) => void>> = {
  odd: (random, holder, key) => {
    holder[key] = random.of(odd)
  },
  gone: (_random, holder, key) => {
    delete holder[key]
  },
  misspelt: (random, holder, key) => {
    const name = String(key)
    const at = random.whole(name.length + 1)
    holder[`${name.slice(0, at)}${random.of(['x', '', '_', 'Mm', ' '])}${name.slice(at + 1)}`] = holder[key]
    delete holder[key]
  },
  scaled: (random, holder, key) => {
    const value = holder[key]
    holder[key] = typeof value === 'number' ? value * random.of([-1, 0, 1e-9, 1e-3, 0.5, 2, 1e3, 1e9]) : [value, value]
  },
  elsewhere: (random, holder, key) => {
    const [other, otherKey] = random.of(places(holder))
    const moved = holder[key]
    // An object in two places could stand inside itself, which no file can hold.
    if (typeof moved !== 'object') other[otherKey] = moved
  },
}

/** A demo job spoilt in one to three places. */
function spoiltJob(random: Random): { readonly job: unknown; readonly how: readonly string[] } {
  const job = structuredClone(random.of(Object.values(demoJobs))) as unknown as Holder
  const how: string[] = []
  for (let times = 1 + random.whole(3); times > 0; times -= 1) {
    const [holder, key] = random.of(places(job))
    const name = random.of(Object.keys(spoilings))
    how.push(`${name} ${String(key)}`)
    spoilings[name]?.(random, holder, key)
  }
  return { job, how }
}

/** The first number within a plan that is no finite one. */
function notFinite(value: unknown, path = ''): string | undefined {
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : `${path} is ${value}`
  if (typeof value !== 'object' || value === null) return undefined
  for (const [key, inside] of Object.entries(value)) {
    const found = notFinite(inside, `${path}.${key}`)
    if (found !== undefined) return found
  }
  return undefined
}

/** What is wrong with the answer to a job; undefined if it is planned, or refused by field. */
function faultOf(job: unknown): { readonly refused: boolean; readonly fault?: string | undefined } {
  try {
    return { refused: false, fault: notFinite(planRepair(parseRepairJob(job))) }
  } catch (error) {
    if (!(error instanceof JobError)) return { refused: true, fault: error instanceof Error ? error.stack : String(error) }
    const bare = error.issues.length === 0 || error.issues.some(({ allowed }) => allowed === '')
    return { refused: true, fault: bare ? 'refused without saying what is allowed' : undefined }
  }
}

/** Spoils so many jobs: each is planned with finite numbers or refused by field; what else happens is told, with the case that repeats it. */
export function spoiltJobs(count: number, seed: number): { readonly planned: number; readonly refused: number; readonly wrong: readonly string[] } {
  let [planned, refused] = [0, 0]
  const wrong: string[] = []
  for (let index = 0; index < count; index += 1) {
    const { job, how } = spoiltJob(new Random(seedOf(seed, 'spoilt', index)))
    const answer = faultOf(job)
    if (answer.refused) refused += 1
    else planned += 1
    if (answer.fault !== undefined) wrong.push(`case ${index} of seed ${seed}, ${how.join(', ')}: ${answer.fault}`)
  }
  return { planned, refused, wrong }
}
