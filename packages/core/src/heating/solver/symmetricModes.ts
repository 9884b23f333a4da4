import { ConvergenceError } from '../../errors/index.ts'

const sweepsPerValue = 60

/** Householder: brings the symmetric matrix to three diagonals and applies the same reflections to each row. */
function tridiagonalise(n: number, matrix: Float64Array, rows: readonly Float64Array[], off: Float64Array): void {
  const v = new Float64Array(n)
  const p = new Float64Array(n)
  for (let k = 0; k < n - 2; k++) {
    let norm = 0
    for (let i = k + 1; i < n; i++) {
      const x = matrix[i * n + k] as number
      v[i] = x
      norm += x * x
    }
    const first = v[k + 1] as number
    // A column that is tridiagonal already needs no reflection.
    if (norm - first * first === 0) {
      off[k] = first
      continue
    }
    norm = Math.sqrt(norm)
    const pivot = first > 0 ? -norm : norm
    v[k + 1] = first - pivot
    const scale = 1 / (norm * (norm + Math.abs(first)))
    let vp = 0
    for (let i = k + 1; i < n; i++) {
      let sum = 0
      const row = i * n
      for (let j = k + 1; j < n; j++) sum += (matrix[row + j] as number) * (v[j] as number)
      p[i] = scale * sum
      vp += (v[i] as number) * (p[i] as number)
    }
    const half = 0.5 * scale * vp
    for (let i = k + 1; i < n; i++) p[i] = (p[i] as number) - half * (v[i] as number)
    for (let i = k + 1; i < n; i++) {
      const vi = v[i] as number
      const pi = p[i] as number
      const row = i * n
      for (let j = k + 1; j < n; j++) matrix[row + j] = (matrix[row + j] as number) - vi * (p[j] as number) - pi * (v[j] as number)
    }
    for (const r of rows) {
      let dot = 0
      for (let i = k + 1; i < n; i++) dot += (r[i] as number) * (v[i] as number)
      dot *= scale
      for (let i = k + 1; i < n; i++) r[i] = (r[i] as number) - dot * (v[i] as number)
    }
    off[k] = pivot
  }
  if (n > 1) off[n - 2] = matrix[(n - 1) * n + n - 2] as number
}

/** QL with implicit shifts on diagonal d and off-diagonal e; each plane rotation turns the rows too. */
function diagonalise(n: number, d: Float64Array, e: Float64Array, rows: readonly Float64Array[]): void {
  for (let l = 0; l < n; l++) {
    for (let sweep = 0; ; sweep++) {
      let m = l
      while (m < n - 1) {
        const size = Math.abs(d[m] as number) + Math.abs(d[m + 1] as number)
        if (Math.abs(e[m] as number) <= Number.EPSILON * size) break
        m++
      }
      if (m === l) break
      if (sweep === sweepsPerValue) throw new ConvergenceError('the modes of a wire', Math.abs(e[l] as number))
      let g = ((d[l + 1] as number) - (d[l] as number)) / (2 * (e[l] as number))
      let r = Math.sqrt(g * g + 1)
      g = (d[m] as number) - (d[l] as number) + (e[l] as number) / (g + (g >= 0 ? r : -r))
      let s = 1
      let c = 1
      let p = 0
      for (let i = m - 1; i >= l; i--) {
        let f = s * (e[i] as number)
        const b = c * (e[i] as number)
        r = Math.sqrt(f * f + g * g)
        e[i + 1] = r
        s = f / r
        c = g / r
        g = (d[i + 1] as number) - p
        r = ((d[i] as number) - g) * s + 2 * c * b
        p = s * r
        d[i + 1] = g + p
        g = c * r - b
        for (const row of rows) {
          f = row[i + 1] as number
          const h = row[i] as number
          row[i + 1] = s * h + c * f
          row[i] = c * h - s * f
        }
      }
      d[l] = (d[l] as number) - p
      e[l] = g
      e[m] = 0
    }
  }
}

/**
 * The rates of a symmetric matrix (row-major, overwritten). Each of the rows, a list of n numbers against the matrix's own base, is turned in place
 * into the base of the modes; only the rows asked for are turned, never the whole base.
 */
export function symmetricModes(n: number, matrix: Float64Array, rows: readonly Float64Array[]): Float64Array {
  const rates = new Float64Array(n)
  const off = new Float64Array(n)
  tridiagonalise(n, matrix, rows, off)
  for (let i = 0; i < n; i++) rates[i] = matrix[i * n + i] as number
  diagonalise(n, rates, off, rows)
  return rates
}
