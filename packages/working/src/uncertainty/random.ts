/** A stream of numbers from 0 up to, not including, 1; the same for the same seed. */
export type Stream = () => number

/** 2^32: a seed has two such words, a draw one. */
const words = 2 ** 32

/** The generator sfc32 (public domain, three words of state and a counter), mixed twelve times before use. */
export function streamOf(seed: number): Stream {
  let a = (seed % words) | 0
  let b = Math.floor(seed / words) | 0
  let c = 0x9e3779b9 | 0
  let counter = 1
  const next = (): number => {
    const sum = (a + b + counter) | 0
    counter = (counter + 1) | 0
    a = b ^ (b >>> 9)
    b = (c + (c << 3)) | 0
    c = ((c << 21) | (c >>> 11)) + sum
    return (sum >>> 0) / words
  }
  for (let mix = 0; mix < 12; mix++) next()
  return next
}

/** Standard normal draws by the Marsaglia-Bray polar method; draws come in pairs, so each stream keeps its own spare. */
export function normalsOf(stream: Stream): Stream {
  let spare: number | undefined
  return () => {
    if (spare !== undefined) {
      const kept = spare
      spare = undefined
      return kept
    }
    for (;;) {
      const x = 2 * stream() - 1
      const y = 2 * stream() - 1
      const square = x * x + y * y
      if (square >= 1 || square === 0) continue
      const scale = Math.sqrt((-2 * Math.log(square)) / square)
      spare = y * scale
      return x * scale
    }
  }
}

/** Chi-squared draws by the gamma method of Marsaglia and Tsang; only for more than 2 degrees of freedom. */
export function chiSquared(degreesOfFreedom: number, stream: Stream, normals: Stream): number {
  const d = degreesOfFreedom / 2 - 1 / 3
  const c = 1 / Math.sqrt(9 * d)
  for (;;) {
    const x = normals()
    const v = (1 + c * x) ** 3
    if (v > 0 && Math.log(1 - stream()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return 2 * d * v
  }
}
