/** Gauss with partial pivoting on the leading n by n of a 4 by 4 list; the answer replaces the right side. */
export function solveLinear(n: number, a: Float64Array, b: Float64Array): void {
  for (let k = 0; k < n; k++) {
    let pivot = k
    for (let i = k + 1; i < n; i++) if (Math.abs(a[i * 4 + k] as number) > Math.abs(a[pivot * 4 + k] as number)) pivot = i
    if (pivot !== k) {
      for (let j = k; j < n; j++) {
        const t = a[k * 4 + j] as number
        a[k * 4 + j] = a[pivot * 4 + j] as number
        a[pivot * 4 + j] = t
      }
      const t = b[k] as number
      b[k] = b[pivot] as number
      b[pivot] = t
    }
    for (let i = k + 1; i < n; i++) {
      const factor = (a[i * 4 + k] as number) / (a[k * 4 + k] as number)
      if (factor === 0) continue
      for (let j = k + 1; j < n; j++) a[i * 4 + j] = (a[i * 4 + j] as number) - factor * (a[k * 4 + j] as number)
      b[i] = (b[i] as number) - factor * (b[k] as number)
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    let sum = b[k] as number
    for (let j = k + 1; j < n; j++) sum -= (a[k * 4 + j] as number) * (b[j] as number)
    b[k] = sum / (a[k * 4 + k] as number)
  }
}
