import { DomainError, requireChoice, requireFinite, requireWhole } from '@strandwise/core/errors'
import { matrixOf } from './correlations.ts'
import { linear } from './linear.ts'
import { monteCarlo } from './monteCarlo.ts'
import { coverageFactor } from './studentT.ts'
import { known, type Uncertain } from './uncertain.ts'

/** Defaults of propagate. */
export const propagationDefaults = {
  method: 'linear',
  coverage: 0.95,
  draws: 10_000,
  seed: 1,
  provenance: { status: 'common practice', source: 'GUM 6.3.3 for 95 %; JCGM 101, 7.2, for a number of draws far above 1/(1 - coverage)' },
} as const

/** More draws would fill the memory of a small machine. */
const mostDraws = 10_000_000
const fewestDraws = 100
/** A result is skewed if its shortest interval is this much shorter than the equal-tailed one, and its mean is this share of the width off the middle: more than sampling noise, and not two equal peaks. */
const shorter = 0.97
const offMiddle = 0.03

/** Result of propagate. */
export interface Propagated<K extends string> {
  readonly value: number
  readonly standardUncertainty: number
  readonly low: number
  readonly high: number
  readonly coverage: number
  /** Shares of the variance; they add up to 1, or are all 0 without uncertainty. */
  readonly shares: Readonly<Record<K, number>>
  /** Effective degrees of freedom of the linear method's interval; null means infinite, as always with draws. */
  readonly degreesOfFreedom: number | null
}

/**
 * Uncertainty of a result from that of its inputs: its standard uncertainty, an interval, and each input's contribution.
 * The linear method takes slopes by central differences and a Student interval with effective degrees of freedom.
 * By draws the interval has equal tails, unless the shortest one is clearly shorter (a lopsided result).
 *
 * @equation u^2 = sum (c_i u_i)^2 + 2 sum c_i c_j u_i u_j r_ij
 * @symbol u_i - inputs - 1 - standard uncertainty of an input
 * @symbol c_i - fn - 1 - slope of the model along an input
 * @symbol r_ij - options.correlations - 1 - correlation coefficient of two inputs
 * @symbol u - result.standardUncertainty - 1 - standard uncertainty of the result
 * @domain options.correlations.0.2: from -1 to 1
 * @domain optional options.coverage: above 0 below 1
 * @domain optional options.draws: whole from 100 to 10000000
 * @domain optional options.seed: whole at least 0
 * @throws DomainError outside the domain, for an input that is no finite number or whose uncertainty is below 0, for correlations that can't hold together, and where the model gives no finite number
 * @throws UnknownEntryError for a correlation of an input that isn't there
 * @example
 * propagate(({ volts, amperes }) => volts / amperes, { volts: { value: 0.21, halfWidth: 0.004, distribution: 'rectangular' }, amperes: { value: 4.2, standardUncertainty: 0.02, degreesOfFreedom: 9 } }, { coverage: 0.95, seed: 1, draws: 10000, correlations: [['volts', 'amperes', 0.1]] }) // { value: 0.05, standardUncertainty: 0.000577 }
 * @source JCGM 100:2008 (GUM) clauses 5 and G.4; JCGM 101:2008 for draws
 */
export function propagate<K extends string>(
  fn: (x: Readonly<Record<K, number>>) => number,
  inputs: Readonly<Record<K, Uncertain>>,
  options: {
    readonly method?: 'linear' | 'monte-carlo'
    readonly draws?: number
    readonly seed?: number
    readonly coverage?: number
    readonly correlations?: readonly (readonly [K, K, number])[]
  } = {},
): Propagated<K> {
  const { coverage, draws, seed, method } = { ...propagationDefaults, ...defined(options) }
  requireFinite('options.coverage', coverage)
  if (!(coverage > 0 && coverage < 1)) throw new DomainError('options.coverage', coverage, 'above 0 and below 1')
  requireWhole('options.draws', draws, fewestDraws, mostDraws)
  requireWhole('options.seed', seed, 0)
  requireChoice('options.method', method, ['linear', 'monte-carlo'])
  const names = Object.keys(inputs) as K[]
  const list = names.map((name) => known(name, inputs[name]))
  const matrix = matrixOf(list, options.correlations ?? [])
  const model = (values: readonly number[]): number => {
    const x = {} as Record<K, number>
    for (const [place, name] of names.entries()) x[name] = values[place] ?? 0
    const result = fn(x)
    if (!Number.isFinite(result)) throw new DomainError('fn', result, 'a function that gives a finite number at and around its inputs', undefined, 'not-finite')
    return result
  }
  const named = (shares: readonly number[]) => Object.fromEntries(names.map((name, place) => [name, shares[place] ?? 0])) as Record<K, number>
  if (method === 'linear') {
    const { value, uncertainty, degreesOfFreedom, shares } = linear(model, list, matrix)
    const reach = uncertainty === 0 ? 0 : coverageFactor(coverage, degreesOfFreedom) * uncertainty
    return { value, standardUncertainty: uncertainty, low: value - reach, high: value + reach, coverage, shares: named(shares), degreesOfFreedom }
  }
  const { value, uncertainty, sorted, shares } = monteCarlo(model, list, matrix, draws, seed)
  return { value, standardUncertainty: uncertainty, ...intervalOf(sorted, coverage, value), coverage, shares: named(shares), degreesOfFreedom: null }
}

/** Removes undefined fields, so that defaults apply. */
function defined<T extends object>(options: T): Partial<T> {
  return Object.fromEntries(Object.entries(options).filter(([, value]) => value !== undefined)) as Partial<T>
}

/** The equal-tailed interval, or the shortest one of a skewed result (JCGM 101, 7.7). */
function intervalOf(sorted: Float64Array, coverage: number, mean: number): { readonly low: number; readonly high: number } {
  const at = (place: number): number => sorted[Math.max(0, Math.min(sorted.length - 1, place))] ?? 0
  const inside = Math.min(sorted.length - 1, Math.round(coverage * sorted.length))
  const first = Math.floor((sorted.length - inside) / 2)
  let shortest = first
  for (let place = 0; place + inside < sorted.length; place++) if (at(place + inside) - at(place) < at(shortest + inside) - at(shortest)) shortest = place
  const equal = at(first + inside) - at(first)
  const middle = (at(first) + at(first + inside)) / 2
  const lopsided = at(shortest + inside) - at(shortest) < shorter * equal && Math.abs(mean - middle) > offMiddle * equal
  const start = lopsided ? shortest : first
  return { low: at(start), high: at(start + inside) }
}
