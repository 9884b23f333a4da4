/** Seeded generator (mulberry32), so that a failing call can be repeated. */
export class Random {
  #state: number

  constructor(seed: number) {
    this.#state = seed >>> 0
  }

  /** Uniform on [0, 1). */
  next(): number {
    this.#state = (this.#state + 0x6d2b79f5) >>> 0
    let t = this.#state
    t = Math.imul(t ^ (t >>> 15), t | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }

  chance(share: number): boolean {
    return this.next() < share
  }

  whole(below: number): number {
    return Math.floor(this.next() * below)
  }

  of<T>(list: readonly T[]): T {
    return list[this.whole(list.length)] as T
  }

  /** Approximately normal: sum of twelve uniform numbers. */
  normal(): number {
    let sum = -6
    for (let i = 0; i < 12; i += 1) sum += this.next()
    return sum
  }
}

/** A seed for each call of each function. */
export function seedOf(seed: number, name: string, index: number): number {
  let hash = seed ^ Math.imul(index + 1, 0x9e3779b1)
  for (const letter of name) hash = Math.imul(hash ^ letter.charCodeAt(0), 0x01000193)
  return hash >>> 0
}
