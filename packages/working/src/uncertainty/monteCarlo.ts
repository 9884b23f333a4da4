import { DomainError } from '@strandwise/core/errors'
import { groupsOf, type Matrix, triangleOf } from './correlations.ts'
import type { Model } from './linear.ts'
import { chiSquared, normalsOf, type Stream, streamOf } from './random.ts'
import { normalWithin } from './studentT.ts'
import { type Known, widths } from './uncertain.ts'

/** Mean, standard deviation, sorted values, and each input's share of the variance by linear regression. */
interface Drawn {
  readonly value: number
  readonly uncertainty: number
  readonly sorted: Float64Array
  readonly shares: readonly number[]
}

/** A t distribution with so few degrees of freedom has no standard deviation. */
const fewestDegreesOfFreedom = 2

/** Propagation of distributions (JCGM 101): the model at random draws of its inputs. */
export function monteCarlo(model: Model, inputs: readonly Known[], matrix: Matrix, draws: number, seed: number): Drawn {
  inputs.forEach(({ name, degreesOfFreedom }) => {
    if (degreesOfFreedom !== null && degreesOfFreedom <= fewestDegreesOfFreedom) {
      throw new DomainError(
        `inputs.${name}.degreesOfFreedom`,
        degreesOfFreedom,
        'above 2 for monte-carlo: with fewer the t distribution has no standard deviation',
      )
    }
  })
  const values = inputs.map(() => 0)
  const draw = drawer(inputs, matrix, streamOf(seed), values)
  const results = new Float64Array(draws)
  const covariances = inputs.map(() => 0)
  // Sums are taken about the value at the estimates, so that a small spread about a large value keeps its digits.
  const centre = model(inputs.map((input) => input.value))
  let sum = 0
  let squares = 0
  for (let index = 0; index < draws; index++) {
    draw()
    const result = model(values)
    const apart = result - centre
    results[index] = result
    sum += apart
    squares += apart * apart
    for (let place = 0; place < inputs.length; place++)
      covariances[place] = (covariances[place] ?? 0) + apart * ((values[place] ?? 0) - (inputs[place]?.value ?? 0))
  }
  const mean = sum / draws
  const variance = Math.max(0, (squares - draws * mean * mean) / (draws - 1))
  return { value: centre + mean, uncertainty: Math.sqrt(variance), sorted: results.sort(), shares: sharesOf(inputs, matrix, covariances) }
}

/** Returns a function that draws all inputs: correlated normal draws transformed to each input's distribution. */
function drawer(inputs: readonly Known[], matrix: Matrix, stream: Stream, values: number[]): () => void {
  const normals = normalsOf(stream)
  const triangle = triangleForNormals(inputs, matrix)
  const independent = inputs.map(() => 0)
  // Inputs observed together share one chi-squared draw, as in a multivariate t distribution.
  const groups = groupsOf(matrix)
  const leader = inputs.map(({ degreesOfFreedom }, place) => {
    const group = groups.find((places) => places.includes(place)) ?? [place]
    return degreesOfFreedom === null ? -1 : (group.find((other) => inputs[other]?.degreesOfFreedom === degreesOfFreedom) ?? place)
  })
  const scales = inputs.map(() => 1)
  return () => {
    for (let place = 0; place < inputs.length; place++) independent[place] = normals()
    for (const [place, { value, uncertainty, shape, degreesOfFreedom }] of inputs.entries()) {
      const row = triangle[place] ?? []
      let normal = 0
      for (let column = 0; column <= place; column++) normal += (row[column] ?? 0) * (independent[column] ?? 0)
      const first = leader[place] ?? -1
      if (first === place && degreesOfFreedom !== null) scales[place] = Math.sqrt((degreesOfFreedom - 2) / chiSquared(degreesOfFreedom, stream, normals))
      values[place] = value + uncertainty * (first < 0 ? shaped(normal, shape) : normal * (scales[first] ?? 1))
    }
  }
}

/** A draw of that shape with standard deviation 1, at the quantile of the normal draw. */
function shaped(normal: number, shape: Known['shape']): number {
  if (shape === 'normal') return normal
  const within = Math.sign(normal) * normalWithin(Math.abs(normal))
  if (shape === 'rectangular') return widths.rectangular * within
  if (shape === 'triangular') return widths.triangular * Math.sign(normal) * (1 - Math.sqrt(1 - Math.abs(within)))
  return widths['u-shaped'] * Math.sin((Math.PI / 2) * within)
}

function triangleForNormals(inputs: readonly Known[], matrix: Matrix): Matrix {
  try {
    return triangleOf(matrix.map((row, at) => row.map((coefficient, column) => (at === column ? 1 : forNormals(coefficient, inputs[at], inputs[column])))))
  } catch {
    // Coefficients at the limit of what is possible leave no room for the correction: drawn uncorrected, 5 % too weak.
    return triangleOf(matrix)
  }
}

/** Correlation of the normal draws that gives the requested one: exact for normal and rectangular inputs; up to 10 % weaker for others. */
function forNormals(asked: number, first: Known | undefined, second: Known | undefined): number {
  const rectangles = Number(first?.shape === 'rectangular') + Number(second?.shape === 'rectangular')
  if (rectangles === 2) return 2 * Math.sin((Math.PI * asked) / 6)
  return rectangles === 1 ? Math.max(-1, Math.min(1, asked * Math.sqrt(Math.PI / 3))) : asked
}

/** Shares by linear regression on the inputs: slope times covariance. Equal to the linear method's for a linear model. */
function sharesOf(inputs: readonly Known[], matrix: Matrix, covariances: readonly number[]): readonly number[] {
  const scaled = covariances.map((covariance, place) => ((inputs[place]?.uncertainty ?? 0) > 0 ? covariance / (inputs[place]?.uncertainty ?? 1) : 0))
  const slopes = solve(triangleOf(matrix), scaled)
  const shares = scaled.map((covariance, place) => covariance * (slopes[place] ?? 0))
  const total = shares.reduce((sum, share) => sum + share, 0)
  return shares.map((share) => (total > 0 ? share / total : 0))
}

/** Solves (L L') x = b by forward and back substitution; a pivot of 0 belongs to an input fully determined by another, which then takes both shares. */
function solve(triangle: Matrix, right: readonly number[]): readonly number[] {
  const half: number[] = []
  for (const [row, line] of triangle.entries()) {
    const pivot = line[row] ?? 0
    const sum = half.reduce((rest, known, column) => rest - (line[column] ?? 0) * known, right[row] ?? 0)
    half.push(pivot > 1e-9 ? sum / pivot : 0)
  }
  const solution = half.slice()
  for (let row = triangle.length - 1; row >= 0; row--) {
    const pivot = triangle[row]?.[row] ?? 0
    let sum = half[row] ?? 0
    for (let below = row + 1; below < triangle.length; below++) sum -= (triangle[below]?.[row] ?? 0) * (solution[below] ?? 0)
    solution[row] = pivot > 1e-9 ? sum / pivot : 0
  }
  return solution
}
