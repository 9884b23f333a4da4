import type { Chain } from '../../circuit/inner.ts'
import type { Candidate } from './candidates.ts'
import { factor, normalEquations, solveFactored } from './linear.ts'
import { type Ask, CircuitModel, clearFault, noFault } from './model.ts'
import { type Observed, residual } from './observed.ts'
import { Space } from './space.ts'
import { filler, firstAlone, unknownCount, unknownsInPlay } from './unknowns.ts'

/** A candidate fitted to the readings. */
export interface Fit {
  readonly candidate: Candidate
  /** Half the sum of squares: residuals, unknowns, and overstepped range ends. */
  readonly cost: number
  /** Parameters: unknowns of the circuit, then sizes of the fault. */
  readonly at: Float64Array
  /** Cholesky factor of the information matrix at the fit, for the parameters in `free`; computed when asked for. */
  readonly information: () => Float64Array
  readonly free: readonly number[]
}

/** A candidate with the points to descend from, and the cost of the best. */
interface Start {
  readonly candidate: Candidate
  readonly cost: number
  readonly points: readonly Float64Array[]
}

/** Softness of a range's ends, in the fault's logarithmic scale. */
const wallWidth = 0.35
const step = 1e-5
const mostRounds = 16
/** Least improvement of the log-likelihood that counts. */
const gain = 1e-4
/** A candidate this far behind the best is dropped without further fitting. */
const hopeless = 40
const hopelessRounds = 2
/** Starting points along each size; two minima this far apart are both tried. */
const starts = 9
const apart = 1.5

/** Fits candidates to one circuit and its readings. */
export class Fitter {
  readonly #observed: readonly Observed[]
  readonly #fill: (z: Float64Array) => void
  readonly #fillOne: (index: number, z: number) => void
  readonly #fault = noFault()
  readonly #unknowns: readonly number[]
  readonly #moved: boolean
  readonly #spaces = new Map<number, Space>()
  readonly model: CircuitModel
  readonly #thorough: boolean
  #best = Number.POSITIVE_INFINITY

  /** `thorough` fits candidates to the end that cannot become likely, too. */
  constructor(chain: Chain, observed: readonly Observed[], thorough: boolean) {
    const { filled, fill, fillOne } = filler(chain)
    this.#observed = observed
    this.#fill = fill
    this.#fillOne = fillOne
    this.#thorough = thorough
    const asks: readonly Ask[] = observed.map(({ ask }) => ask)
    this.#unknowns = unknownsInPlay(chain, asks)
    this.#moved = asks.some(({ when }) => when === 'moved')
    this.model = new CircuitModel(chain, filled, this.#fault)
  }

  /** Sets the circuit to a candidate and its parameters, and solves it. */
  set(candidate: Candidate, point: Float64Array, moved: boolean = this.#moved): void {
    this.#fill(point)
    this.#place(candidate, point, moved)
  }

  #place(candidate: Candidate, point: Float64Array, moved: boolean): void {
    clearFault(this.#fault)
    candidate.apply(this.#fault, point.subarray(unknownCount))
    this.model.solve(moved)
  }

  /** Fills the residuals (readings, unknowns, ranges); returns half their sum of squares. */
  #residuals(candidate: Candidate, point: Float64Array, into: Float64Array): number {
    let sum = 0
    let n = 0
    for (let k = 0; k < this.#observed.length; k += 1, n += 1) {
      const item = this.#observed[k] as Observed
      const away = residual(item, this.model.show(item.ask))
      into[n] = away
      sum += away * away
    }
    for (let k = 0; k < this.#unknowns.length; k += 1, n += 1) {
      const away = point[this.#unknowns[k] as number] as number
      into[n] = away
      sum += away * away
    }
    for (let k = 0; k < candidate.sizes.length; k += 1, n += 1) {
      const { low, high } = candidate.sizes[k] as Candidate['sizes'][number]
      const size = point[unknownCount + k] as number
      const away = (size < low ? size - low : size > high ? size - high : 0) / wallWidth
      into[n] = away
      sum += away * away
    }
    return sum / 2
  }

  /** The likeliest sizes of the fault on a grid, in the circuit of `seed`; the middle one among equals, and the next best that lies apart. */
  start(candidate: Candidate, seed: Float64Array): Start {
    const { sizes } = candidate
    const point = new Float64Array(unknownCount + sizes.length)
    point.set(seed)
    const { here } = this.#space(sizes.length)
    this.#fill(point)
    const count = starts ** sizes.length
    const tried = Array.from({ length: count }, (_, index) => {
      for (let k = 0, rest = index; k < sizes.length; k += 1) {
        // The last size varies fastest.
        const place = Math.floor(rest / starts ** (sizes.length - 1 - k))
        rest -= place * starts ** (sizes.length - 1 - k)
        const { low, high } = sizes[k] as Candidate['sizes'][number]
        point[unknownCount + k] = low + ((place + 0.5) / starts) * (high - low)
      }
      this.#place(candidate, point, this.#moved)
      return { cost: this.#residuals(candidate, point, here), sizes: point.slice(unknownCount) }
    })
    const sorted = tried.sort((one, other) => one.cost - other.cost)
    const least = sorted[0]?.cost ?? 0
    const equal = sorted.filter(({ cost }) => cost <= least + 1e-9)
    const first = equal[Math.floor(equal.length / 2)] as (typeof tried)[number]
    const second = sorted.find(
      ({ sizes: other, cost }) =>
        cost < 4 * least + hopeless && cost > least + 1e-9 && other.some((size, k) => Math.abs(size - (first.sizes[k] as number)) > apart),
    )
    const points = [first, ...(second === undefined ? [] : [second])].map((item) => {
      const from = Float64Array.from(point)
      from.set(item.sizes, unknownCount)
      return from
    })
    return { candidate, cost: least, points }
  }

  /** Levenberg-Marquardt from each start; the likeliest candidates first, so that hopeless ones are dropped early. */
  fit({ candidate, points }: Start): Fit {
    const free = [...this.#unknowns, ...candidate.sizes.map((_, k) => unknownCount + k)]
    const space = this.#space(candidate.sizes.length)
    let cost = Number.POSITIVE_INFINITY
    let at = points[0] as Float64Array
    for (const point of points) {
      const found = this.#descend(candidate, point, free, space)
      if (found < cost) [cost, at] = [found, point]
    }
    this.#best = Math.min(this.#best, cost)
    let known: Float64Array | null = null
    const information = (): Float64Array => {
      known ??= this.#information(candidate, at, free, space)
      return known
    }
    return { candidate, cost, at, information, free }
  }

  /** Work arrays for so many sizes of a fault. */
  #space(sizes: number): Space {
    const kept = this.#spaces.get(sizes)
    if (kept !== undefined) return kept
    const free = this.#unknowns.length + sizes
    const made = new Space(this.#observed.length + free, free, unknownCount + sizes)
    this.#spaces.set(sizes, made)
    return made
  }

  #descend(candidate: Candidate, point: Float64Array, free: readonly number[], space: Space): number {
    const { here, there, slopes, normal, damped, gradient, move, next } = space
    const n = free.length
    this.set(candidate, point)
    let cost = this.#residuals(candidate, point, here)
    let damping = 1e-3
    for (let round = 0; round < mostRounds; round += 1) {
      this.#slopes(candidate, point, free, space)
      normalEquations(slopes, here, n, normal, gradient)
      let gained = 0
      for (let attempt = 0; attempt < 5 && gained === 0; attempt += 1) {
        damped.set(normal)
        for (let k = 0; k < n; k += 1) damped[k * n + k] = (normal[k * n + k] as number) * (1 + damping) + 1e-9 + damping * 1e-3
        if (factor(damped, n)) {
          for (let k = 0; k < n; k += 1) move[k] = -(gradient[k] as number)
          solveFactored(damped, n, move)
          next.set(point)
          free.forEach((index, k) => {
            next[index] = (point[index] as number) + Math.max(-3, Math.min(3, move[k] as number))
          })
          this.set(candidate, next)
          const found = this.#residuals(candidate, next, there)
          if (found < cost) {
            gained = cost - found
            damping = Math.max(1e-7, damping / 6)
            cost = found
            point.set(next)
            here.set(there)
            continue
          }
        }
        damping *= 10
      }
      if (gained < gain) break
      // At this pace it will not come near the best.
      const behind = cost - this.#best - hopeless
      if (!this.#thorough && round >= hopelessRounds && behind > gained * (mostRounds - round)) break
    }
    return cost
  }

  #information(candidate: Candidate, point: Float64Array, free: readonly number[], space: Space): Float64Array {
    const n = free.length
    const normal = new Float64Array(n * n)
    this.set(candidate, point)
    this.#residuals(candidate, point, space.here)
    this.#slopes(candidate, point, free, space)
    normalEquations(space.slopes, space.here, n, normal, space.gradient)
    // Sizes the readings leave free have a uniform prior between their ends: use its spread.
    candidate.sizes.forEach(({ low, high }, size) => {
      const k = n - candidate.sizes.length + size
      normal[k * n + k] = (normal[k * n + k] as number) + 12 / (high - low + wallWidth) ** 2
    })
    factor(normal, n)
    return normal
  }

  #slopes(candidate: Candidate, point: Float64Array, free: readonly number[], { here, there, slopes }: Space): void {
    const n = free.length
    for (let k = 0; k < n; k += 1) {
      const index = free[k] as number
      const kept = point[index] as number
      point[index] = kept + step
      // What the parameter decides alone is set alone, and back again.
      const alone = index >= firstAlone && index < unknownCount
      if (alone) this.#fillOne(index, kept + step)
      else if (index < firstAlone) this.#fill(point)
      this.#place(candidate, point, this.#moved)
      this.#residuals(candidate, point, there)
      for (let row = 0; row < here.length; row += 1) slopes[row * n + k] = ((there[row] as number) - (here[row] as number)) / step
      point[index] = kept
      if (alone) this.#fillOne(index, kept)
      else if (index < firstAlone && k + 1 < n && (free[k + 1] as number) >= firstAlone) this.#fill(point)
    }
  }
}
