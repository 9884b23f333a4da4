/** A stream of numbers from 0 up to, not including, 1; the same for the same seed. Mixes a counter with multiply and shift, which is random enough for a worksheet. */
export function streamOf(seed: number): () => number {
  let counter = seed | 0
  return () => {
    counter = (counter + 0x9e3779b9) | 0
    let mixed = Math.imul(counter ^ (counter >>> 16), 0x21f0aaad)
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97)
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 2 ** 32
  }
}

/** One of a list. */
export function oneOf<const L extends readonly [unknown, ...unknown[]]>(list: L, stream: () => number): L[number] {
  return list[Math.floor(stream() * list.length)] ?? list[0]
}
