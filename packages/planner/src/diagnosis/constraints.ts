/** The tightest bounds on every potential difference, with the readings that each depends on. */
export interface Bounds {
  /** Upper bound of the potential of `from` above `to`; Infinity if unbounded. */
  readonly most: (from: number, to: number) => number
  /** Lower bound of the potential of `from` above `to`. */
  readonly least: (from: number, to: number) => number
  readonly reasons: (from: number, to: number) => readonly number[]
  /** Readings that contradict one another; null if none. */
  readonly contradiction: readonly number[] | null
}

export interface Difference {
  readonly from: number
  readonly to: number
  readonly low: number
  readonly high: number
  /** Index of the reading; absent for a bound of the healthy circuit. */
  readonly reading?: number
}

const together = (one: readonly number[], other: readonly number[]): readonly number[] =>
  other.length === 0 ? one : one.length === 0 ? other : [...new Set([...one, ...other])]

/** Tolerance for rounding in a contradiction. */
const roundingShare = 1e-12

/** Combines bounds on differences by shortest paths over the places (Floyd and Warshall); a negative cycle is a contradiction. */
export function combine(count: number, differences: readonly Difference[]): Bounds {
  const bound = new Float64Array(count * count).fill(Number.POSITIVE_INFINITY)
  const why: (readonly number[])[] = Array.from({ length: count * count }, () => [])
  let scale = 0
  const set = (from: number, to: number, value: number, reading: number | undefined) => {
    const at = from * count + to
    if (!(value < (bound[at] as number))) return
    bound[at] = value
    why[at] = reading === undefined ? [] : [reading]
    if (Number.isFinite(value)) scale = Math.max(scale, Math.abs(value))
  }
  for (let n = 0; n < count; n += 1) bound[n * count + n] = 0
  for (const { from, to, low, high, reading } of differences) {
    set(from, to, high, reading)
    set(to, from, -low, reading)
  }
  for (let k = 0; k < count; k += 1)
    for (let i = 0; i < count; i += 1) {
      const first = bound[i * count + k] as number
      if (first === Number.POSITIVE_INFINITY) continue
      for (let j = 0; j < count; j += 1) {
        const through = first + (bound[k * count + j] as number)
        if (through < (bound[i * count + j] as number)) {
          bound[i * count + j] = through
          why[i * count + j] = together(why[i * count + k] as readonly number[], why[k * count + j] as readonly number[])
        }
      }
    }
  let contradiction: readonly number[] | null = null
  for (let n = 0; n < count; n += 1)
    if ((bound[n * count + n] as number) < -roundingShare * scale) contradiction = together(contradiction ?? [], why[n * count + n] as readonly number[])
  return {
    most: (from, to) => bound[from * count + to] as number,
    least: (from, to) => -(bound[to * count + from] as number),
    reasons: (from, to) => together(why[from * count + to] as readonly number[], why[to * count + from] as readonly number[]),
    contradiction: contradiction === null ? null : contradiction.toSorted((a, b) => a - b),
  }
}
