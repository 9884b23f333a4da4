import type { Chain } from '../../circuit/inner.ts'
import type { Candidate } from './candidates.ts'
import { factor, normalEquations, solveFactored } from './linear.ts'
import { type Ask, CircuitModel, clearFault, noFault } from './model.ts'
import { type Observed, residual } from './observed.ts'
import { filler, unknownCount, unknownsInPlay } from './unknowns.ts'

/** A candidate fitted to the readings. */
export interface Fit {
  readonly candidate: Candidate
  /** Half the sum of squares: residuals, unknowns, and overstepped range ends. */
  readonly cost: number
  /** Parameters: unknowns of the circuit, then sizes of the fault. */
  readonly at: Float64Array
  /** Cholesky factor of the information matrix at the fit, for the parameters in `free`. */
  readonly information: Float64Array
  readonly free: readonly number[]
}

/** Softness of a range's ends, in the fault's logarithmic scale. */
const wallWidth = 0.35
const step = 1e-5
const mostRounds = 16
/** Least improvement of the log-likelihood that counts. */
const gain = 1e-4
/** A candidate this far behind the best is dropped without further fitting. */
const hopeless = 40
const hopelessRounds = 4
/** Starting points along each size; two minima this far apart are both tried. */
const starts = 9
const apart = 1.5

/** Fits candidates to one circuit and its readings. */
export class Fitter {
  readonly #observed: readonly Observed[]
  readonly #fill: (z: Float64Array) => void
  readonly #fault = noFault()
  readonly #unknowns: readonly number[]
  readonly #moved: boolean
  readonly model: CircuitModel
  #best = Number.POSITIVE_INFINITY

  constructor(chain: Chain, observed: readonly Observed[]) {
    const { filled, fill } = filler(chain)
    this.#observed = observed
    this.#fill = fill
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
    const note = (value: number): void => {
      into[n] = value
      sum += value * value
      n += 1
    }
    for (const item of this.#observed) note(residual(item, this.model.show(item.ask)))
    for (const k of this.#unknowns) note(point[k] as number)
    for (let k = 0; k < candidate.sizes.length; k += 1) {
      const { low, high } = candidate.sizes[k] as Candidate['sizes'][number]
      const size = point[unknownCount + k] as number
      note((size < low ? size - low : size > high ? size - high : 0) / wallWidth)
    }
    return sum / 2
  }

  /** The likeliest sizes of the fault on a grid, with the circuit at `point`; the middle one among equals. */
  #starts(candidate: Candidate, point: Float64Array, scratch: Float64Array): readonly Float64Array[] {
    const { sizes } = candidate
    if (sizes.length === 0) return [point]
    this.#fill(point)
    const tried: { readonly cost: number; readonly sizes: readonly number[] }[] = []
    const visit = (chosen: readonly number[]): void => {
      const wall = sizes[chosen.length]
      if (wall === undefined) {
        for (let k = 0; k < chosen.length; k += 1) point[unknownCount + k] = chosen[k] as number
        this.#place(candidate, point, this.#moved)
        tried.push({ cost: this.#residuals(candidate, point, scratch), sizes: chosen })
        return
      }
      for (let n = 0; n < starts; n += 1) visit([...chosen, wall.low + ((n + 0.5) / starts) * (wall.high - wall.low)])
    }
    visit([])
    const sorted = tried.toSorted((one, other) => one.cost - other.cost)
    const least = sorted[0]?.cost ?? 0
    const equal = sorted.filter(({ cost }) => cost <= least + 1e-9)
    const first = equal[Math.floor(equal.length / 2)]
    if (first === undefined) return [point]
    const second = sorted.find(
      ({ sizes: other, cost }) =>
        cost < 4 * least + hopeless && other.some((size, k) => Math.abs(size - (first.sizes[k] as number)) > apart) && cost > least + 1e-9,
    )
    return [first, ...(second === undefined ? [] : [second])].map((item) => {
      const from = Float64Array.from(point)
      item.sizes.forEach((size, k) => {
        from[unknownCount + k] = size
      })
      return from
    })
  }

  /** Levenberg-Marquardt from the likeliest sizes of the fault. */
  fit(candidate: Candidate, seed: Float64Array): Fit {
    const size = unknownCount + candidate.sizes.length
    const free = [...this.#unknowns, ...candidate.sizes.map((_, k) => unknownCount + k)]
    const from = new Float64Array(size)
    from.set(seed)
    const space = new Space(this.#observed.length + free.length, free.length, size)
    let best: { readonly cost: number; readonly point: Float64Array } | null = null
    for (const point of this.#starts(candidate, from, space.here)) {
      const cost = this.#descend(candidate, point, free, space)
      if (best === null || cost < best.cost) best = { cost, point }
    }
    const { cost, point } = best as { readonly cost: number; readonly point: Float64Array }
    this.#best = Math.min(this.#best, cost)
    return { candidate, cost, at: point, information: this.#information(candidate, point, free, space), free }
  }

  #descend(candidate: Candidate, point: Float64Array, free: readonly number[], space: Space): number {
    const { here, there, slopes, normal, damped, gradient, move, next } = space
    const n = free.length
    this.set(candidate, point)
    let cost = this.#residuals(candidate, point, here)
    let damping = 1e-3
    for (let round = 0; round < mostRounds; round += 1) {
      if (round >= hopelessRounds && cost > this.#best + hopeless) break
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
      this.set(candidate, point)
      this.#residuals(candidate, point, there)
      for (let row = 0; row < here.length; row += 1) slopes[row * n + k] = ((there[row] as number) - (here[row] as number)) / step
      point[index] = kept
    }
  }
}

/** Work arrays of a fit, so that steps allocate nothing. */
class Space {
  readonly here: Float64Array
  readonly there: Float64Array
  readonly slopes: Float64Array
  readonly normal: Float64Array
  readonly damped: Float64Array
  readonly gradient: Float64Array
  readonly move: Float64Array
  readonly next: Float64Array

  constructor(rows: number, free: number, size: number) {
    this.here = new Float64Array(rows)
    this.there = new Float64Array(rows)
    this.slopes = new Float64Array(rows * free)
    this.normal = new Float64Array(free * free)
    this.damped = new Float64Array(free * free)
    this.gradient = new Float64Array(free)
    this.move = new Float64Array(free)
    this.next = new Float64Array(size)
  }
}
