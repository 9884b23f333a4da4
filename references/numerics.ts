/** Plain numerical methods for independent solutions: slow but simple. */

/** Integral by Simpson's rule on n even intervals. */
export function integral(f: (x: number) => number, from: number, to: number, n = 2000): number {
  const h = (to - from) / n
  let sum = f(from) + f(to)
  for (let k = 1; k < n; k += 1) sum += (k % 2 === 1 ? 4 : 2) * f(from + k * h)
  return (sum * h) / 3
}

/** Root of a monotonic function in a bracket: Illinois variant of regula falsi. */
export function root(f: (x: number) => number, from: number, to: number): number {
  let [a, b] = [from, to]
  let [fa, fb] = [f(a), f(b)]
  for (let n = 0; n < 200 && fa !== fb; n += 1) {
    // Every fourth step bisects, so that curvature cannot stall it.
    const x = n % 4 === 3 ? 0.5 * (a + b) : b - (fb * (b - a)) / (fb - fa)
    const fx = f(x)
    if (fx > 0 === fb > 0) fa *= 0.5
    else [a, fa] = [b, fb]
    ;[b, fb] = [x, fx]
    if (fx === 0 || Math.abs(b - a) <= 4e-16 * Math.abs(b)) return b
  }
  return b
}

/** Solves A x = b by Gaussian elimination with pivoting. */
export function solve(matrix: readonly (readonly number[])[], right: readonly number[]): readonly number[] {
  const rows = matrix.map((row, k) => [...row, right[k] ?? 0])
  const n = rows.length
  for (let column = 0; column < n; column += 1) {
    let pivot = column
    for (let k = column + 1; k < n; k += 1) if (Math.abs(rows[k]?.[column] ?? 0) > Math.abs(rows[pivot]?.[column] ?? 0)) pivot = k
    const top = rows[pivot] as number[]
    rows[pivot] = rows[column] as number[]
    rows[column] = top
    for (let k = column + 1; k < n; k += 1) {
      const row = rows[k] as number[]
      const factor = (row[column] as number) / (top[column] as number)
      for (let c = column; c <= n; c += 1) row[c] = (row[c] as number) - factor * (top[c] as number)
    }
  }
  const x = new Array<number>(n).fill(0)
  for (let k = n - 1; k >= 0; k -= 1) {
    const row = rows[k] as number[]
    let sum = row[n] as number
    for (let c = k + 1; c < n; c += 1) sum -= (row[c] as number) * (x[c] as number)
    x[k] = sum / (row[k] as number)
  }
  return x
}

/** A solved figure as a reference prints it. */
export const digits = (value: number, count = 10): string => value.toPrecision(count)
