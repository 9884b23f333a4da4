import type { Domain } from './grammar.ts'

/** The next number above or below: the finest step past an edge. */
export function nextUp(x: number): number {
  return step(x, 1)
}

export function nextDown(x: number): number {
  return step(x, -1)
}

const view = new DataView(new ArrayBuffer(8))

function step(x: number, direction: 1 | -1): number {
  if (x === 0) return direction * Number.MIN_VALUE
  view.setFloat64(0, x)
  view.setBigInt64(0, view.getBigInt64(0) + BigInt(x > 0 ? direction : -direction))
  return view.getFloat64(0)
}

/** Values outside every domain. */
export const never = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY] as const

/** Values just past each edge and far past it; a fraction for whole numbers. */
export function outsideOf(domain: Domain): readonly number[] {
  const found: number[] = [...never]
  const { low, high } = domain
  if (low !== undefined) found.push(domain.whole ? low - 1 : domain.lowIncluded ? nextDown(low) : low, low - 1 - Math.abs(low), -Number.MAX_VALUE)
  if (high !== undefined) found.push(domain.whole ? high + 1 : domain.highIncluded ? nextUp(high) : high, high + 1 + Math.abs(high), Number.MAX_VALUE)
  if (domain.whole) found.push((low ?? high ?? 0) + (low === undefined ? -0.5 : 0.5))
  return found
}

/** Values at each included edge, just inside each excluded one, and far out on an unbounded side. */
export function insideOf(domain: Domain): readonly number[] {
  const { low, high } = domain
  const far = domain.whole ? Number.MAX_SAFE_INTEGER : Number.MAX_VALUE
  return [
    low === undefined ? -far : domain.lowIncluded ? low : nextUp(low),
    high === undefined ? far : domain.highIncluded ? high : nextDown(high),
    ...(contains(domain, 0) ? [0, -0] : []),
  ]
}

export function contains(domain: Domain, value: number): boolean {
  const { low = Number.NEGATIVE_INFINITY, high = Number.POSITIVE_INFINITY, whole } = domain
  if (!Number.isFinite(value) || (whole && !Number.isInteger(value))) return false
  return (domain.lowIncluded ? value >= low : value > low) && (domain.highIncluded ? value <= high : value < high)
}

/** A deep copy of plain data; functions are shared. */
export function copyOf(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(copyOf)
  if (typeof value !== 'object' || value === null || Object.getPrototypeOf(value) !== Object.prototype) return value
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, copyOf(inner)]))
}

/** A deep copy of the inputs with one value set or removed; undefined if the path does not exist. */
export function withValue(inputs: readonly unknown[], names: readonly string[], path: string, value: unknown): unknown[] | undefined {
  const copy = copyOf(inputs) as unknown[]
  const segments = path.split('.')
  const position = names.indexOf(segments[0] as string)
  // The first segment is the parameter's name, unless it is a field of the single input object.
  const steps: (string | number)[] = position === -1 ? [0, ...segments] : [position, ...segments.slice(1)]
  let holder: unknown = copy
  for (const one of steps.slice(0, -1)) {
    if (typeof holder !== 'object' || holder === null) return undefined
    holder = (holder as Record<string | number, unknown>)[one]
  }
  if (typeof holder !== 'object' || holder === null) return undefined
  const last = steps.at(-1) as string | number
  if (Array.isArray(holder) && holder !== copy && !(Number(last) < holder.length)) return undefined
  if (value === undefined && !Array.isArray(holder)) Reflect.deleteProperty(holder, last)
  else (holder as Record<string | number, unknown>)[last] = value
  return copy
}
