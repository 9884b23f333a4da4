/** Runs the work `count` times and returns something that depends on every result. */
export type Candidate = (count: number) => number

export interface Timing {
  readonly name: string
  /** Median over the rounds, in nanoseconds a call. */
  readonly nsPerCall: number
  /** Interquartile range over median: the machine's noise. */
  readonly spread: number
}

/** Much shorter than the scheduler's time slice, so that most rounds run undisturbed. */
const roundMs = 0.4
const rounds = 401

let sink = 0

function timed(candidate: Candidate, count: number): number {
  const start = process.hrtime.bigint()
  sink += candidate(count)
  return Number(process.hrtime.bigint() - start)
}

/** Calls per round, doubled until a round is long enough; also warms up. The fastest of several, as a pause of the machine would count as work. */
function countFor(candidate: Candidate): number {
  let count = 1
  while (Math.min(...Array.from({ length: 5 }, () => timed(candidate, count))) < roundMs * 1e6) count *= 2
  for (let i = 0; i < 30; i += 1) timed(candidate, count)
  return count
}

const at = (sorted: readonly number[], share: number): number => sorted[Math.floor(share * (sorted.length - 1))] as number

/** Times candidates in turn, round after round, so that a slow moment affects all of them: ratios stay valid when times don't. */
export function measure(candidates: Readonly<Record<string, Candidate>>): readonly Timing[] {
  const entries = Object.entries(candidates).map(([name, candidate]) => ({ name, candidate, count: countFor(candidate), times: [] as number[] }))
  for (let round = 0; round < rounds; round += 1) {
    for (const entry of entries) entry.times.push(timed(entry.candidate, entry.count) / entry.count)
  }
  if (!Number.isFinite(sink)) throw new Error('a candidate gave no number')
  return entries.map(({ name, times }) => {
    times.sort((a, b) => a - b)
    return { name, nsPerCall: at(times, 0.5), spread: (at(times, 0.75) - at(times, 0.25)) / at(times, 0.5) }
  })
}

/** For slow candidates: runs each `times` times; median and worst in milliseconds. */
export function measureOnce(work: () => unknown, times = 15): { readonly medianMs: number; readonly worstMs: number } {
  const found: number[] = []
  work()
  for (let i = 0; i < times; i += 1) {
    const start = process.hrtime.bigint()
    work()
    found.push(Number(process.hrtime.bigint() - start) / 1e6)
  }
  found.sort((a, b) => a - b)
  return { medianMs: at(found, 0.5), worstMs: found.at(-1) as number }
}
