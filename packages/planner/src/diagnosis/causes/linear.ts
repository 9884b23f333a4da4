/** Cholesky factorisation in place of a symmetric positive definite matrix; false if it is not. The factor is in the lower triangle. */
export function factor(matrix: Float64Array, n: number): boolean {
  for (let column = 0; column < n; column += 1) {
    let pivot = matrix[column * n + column] as number
    for (let k = 0; k < column; k += 1) pivot -= (matrix[column * n + k] as number) ** 2
    if (!(pivot > 0)) return false
    const root = Math.sqrt(pivot)
    matrix[column * n + column] = root
    for (let row = column + 1; row < n; row += 1) {
      let sum = matrix[row * n + column] as number
      for (let k = 0; k < column; k += 1) sum -= (matrix[row * n + k] as number) * (matrix[column * n + k] as number)
      matrix[row * n + column] = sum / root
    }
  }
  return true
}

/** Solves with a factor; `x` holds the right-hand side, then the solution. */
export function solveFactored(factored: Float64Array, n: number, x: Float64Array): void {
  for (let row = 0; row < n; row += 1) {
    let sum = x[row] as number
    for (let k = 0; k < row; k += 1) sum -= (factored[row * n + k] as number) * (x[k] as number)
    x[row] = sum / (factored[row * n + row] as number)
  }
  for (let row = n - 1; row >= 0; row -= 1) {
    let sum = x[row] as number
    for (let k = row + 1; k < n; k += 1) sum -= (factored[k * n + row] as number) * (x[k] as number)
    x[row] = sum / (factored[row * n + row] as number)
  }
}

/** Variance of a linear form under the inverse of the factored matrix. */
export function varianceOf(factored: Float64Array, n: number, gradient: Float64Array): number {
  let sum = 0
  const y = new Float64Array(n)
  for (let row = 0; row < n; row += 1) {
    let value = gradient[row] as number
    for (let k = 0; k < row; k += 1) value -= (factored[row * n + k] as number) * (y[k] as number)
    y[row] = value / (factored[row * n + row] as number)
    sum += (y[row] as number) ** 2
  }
  return sum
}

/** J'J and J'r of `n` columns. */
export function normalEquations(slopes: Float64Array, residuals: Float64Array, n: number, normal: Float64Array, gradient: Float64Array): void {
  normal.fill(0)
  gradient.fill(0)
  for (let row = 0; row < residuals.length; row += 1) {
    const base = row * n
    const away = residuals[row] as number
    for (let i = 0; i < n; i += 1) {
      const slope = slopes[base + i] as number
      if (slope === 0) continue
      gradient[i] = (gradient[i] as number) + slope * away
      for (let j = 0; j <= i; j += 1) normal[i * n + j] = (normal[i * n + j] as number) + slope * (slopes[base + j] as number)
    }
  }
  for (let i = 0; i < n; i += 1) for (let j = i + 1; j < n; j += 1) normal[i * n + j] = normal[j * n + i] as number
}
