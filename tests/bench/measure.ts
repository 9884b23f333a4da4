/** A candidate runs its work `count` times and returns something that depends on all of it. */
export type Candidate = (count: number) => number

export interface Timing {
  readonly name: string
  /** Median over the rounds, in nanoseconds a call. */
  readonly nsPerCall: number
  /** Share between the quarter and three-quarter points: how noisy the machine was. */
  readonly spread: number
}

/** Much shorter than the slice of time that a busy machine gives to one program: most rounds then run through undisturbed. */
const roundMs = 0.4
const rounds = 401

let sink = 0

function timed(candidate: Candidate, count: number): number {
  const start = process.hrtime.bigint()
  sink += candidate(count)
  return Number(process.hrtime.bigint() - start)
}

/** Calls a round: enough of them to last as long as a round, found by doubling; this also warms the candidate up. The quickest of a few counts: a pause of the machine would pass for work. */
function countFor(candidate: Candidate): number {
  let count = 1
  while (Math.min(...Array.from({ length: 5 }, () => timed(candidate, count))) < roundMs * 1e6) count *= 2
  for (let i = 0; i < 30; i += 1) timed(candidate, count)
  return count
}

const at = (sorted: readonly number[], share: number): number => sorted[Math.floor(share * (sorted.length - 1))] as number

/** Times candidates in turn, round after round, so that a slow moment of the machine meets all of them: the ratios hold where the times don't. */
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

/** Candidates that take long: each is run `times` times, one after the other; median and worst in milliseconds. */
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
