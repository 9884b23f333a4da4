import { DomainError } from '@strandwise/core/errors'
import { groupsOf, type Matrix } from './correlations.ts'
import type { Known } from './uncertain.ts'

/** The measurement model with its inputs in one list. */
export type Model = (values: readonly number[]) => number

/** First-order result: value, standard uncertainty, effective degrees of freedom (null: infinite) and each input's share of the variance. */
interface Linear {
  readonly value: number
  readonly uncertainty: number
  readonly degreesOfFreedom: number | null
  readonly shares: readonly number[]
}

/** Step of the derivative over the standard uncertainty: small against the model's curvature, large against solver noise. */
const shareOfUncertainty = 0.01
/** Least relative step of a central difference: cube root of the machine epsilon. */
const leastRelativeStep = 6e-6
/** Below this relative step, rounding dominates. */
const rounding = 1e-8

/** The law of propagation of uncertainty (GUM 5.1 and 5.2) with slopes by central differences. */
export function linear(model: Model, inputs: readonly Known[], matrix: Matrix): Linear {
  const values = inputs.map((input) => input.value)
  const value = model(values)
  const parts = inputs.map((input, place) => (input.uncertainty > 0 ? slope(model, values, place, input.uncertainty) * input.uncertainty : 0))
  // Contribution of an input: its own variance and half of each cross term; contributions add up to the total.
  const added = parts.map((part, row) => part * parts.reduce((sum, other, column) => sum + (matrix[row]?.[column] ?? 0) * other, 0))
  const variance = Math.max(
    0,
    added.reduce((sum, own) => sum + own, 0),
  )
  const uncertainty = Math.sqrt(variance)
  return { value, uncertainty, degreesOfFreedom: effective(inputs, added, variance, matrix), shares: added.map((own) => (variance > 0 ? own / variance : 0)) }
}

/** Welch-Satterthwaite (GUM G.4.1). Correlated inputs count as one component with the fewest degrees of freedom among them: means of values observed together (GUM H.2) keep the degrees of freedom of their observations. */
function effective(inputs: readonly Known[], added: readonly number[], variance: number, matrix: Matrix): number | null {
  let sum = 0
  for (const group of groupsOf(matrix)) {
    const finite = group.flatMap((place) => inputs[place]?.degreesOfFreedom ?? [])
    const own = group.reduce((total, place) => total + (added[place] ?? 0), 0)
    if (finite.length > 0) sum += own ** 2 / Math.min(...finite)
  }
  return sum > 0 ? variance ** 2 / sum : null
}

/** Derivative by a five-point central difference; at an edge of the model's domain by three points on the allowed side. */
function slope(model: Model, values: readonly number[], place: number, uncertainty: number): number {
  const at = values[place] ?? 0
  const wanted = Math.min(uncertainty, Math.max(shareOfUncertainty * uncertainty, leastRelativeStep * Math.abs(at)))
  // Rounds the step to one that is exact in floating point: (x + h) - x.
  const step = at + Math.max(wanted, rounding * Math.abs(at)) - at
  const moved = (steps: number): number => model(values.map((value, other) => (other === place ? value + steps * step : value)))
  try {
    return (8 * (moved(1) - moved(-1)) - (moved(2) - moved(-2))) / (12 * step)
  } catch (refused) {
    const side = sideAllowed(moved)
    if (side === 0) throw refused
    return (side * (4 * moved(side) - 3 * moved(0) - moved(2 * side))) / (2 * step)
  }
}

/** Domains have no holes: if two steps are allowed, one is. */
function sideAllowed(moved: (steps: number) => number): -1 | 0 | 1 {
  for (const side of [1, -1] as const) {
    try {
      moved(2 * side)
      return side
    } catch (refused) {
      if (!(refused instanceof DomainError)) throw refused
    }
  }
  return 0
}
