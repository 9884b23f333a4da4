/** Functions that a figure calls directly, and the numbers passed to them. */
let called: Set<string> | undefined
let given: number[] = []
let depth = 0
/** The function whose results are scaled, and the factor. */
let changed: { readonly name: string; readonly factor: number } | undefined

/** Runs a figure and lists the functions it called, with the numbers passed. */
export function watched<T>(run: () => T): { readonly result: T; readonly functions: readonly string[]; readonly inputs: readonly number[] } {
  const names = new Set<string>()
  called = names
  given = []
  depth = 0
  try {
    return { result: run(), functions: [...names], inputs: given }
  } finally {
    called = undefined
  }
}

/** Runs a figure with every number that the named function returns multiplied by the factor. */
export function withChanged<T>(name: string, factor: number, run: () => T): T {
  changed = { name, factor }
  try {
    return run()
  } finally {
    changed = undefined
  }
}

function multiplied(value: unknown, factor: number): unknown {
  if (typeof value === 'number') return value * factor
  if (Array.isArray(value)) return value.map((item) => multiplied(item, factor))
  if (typeof value === 'object' && value !== null) return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, multiplied(item, factor)]))
  return value
}

function numbersIn(value: unknown, into: number[]): void {
  if (typeof value === 'number') into.push(value)
  else if (typeof value === 'object' && value !== null) for (const part of Object.values(value)) numbersIn(part, into)
}

const isClass = (value: unknown): boolean => typeof value === 'function' && /^class\b/.test(Function.prototype.toString.call(value))

/** The export itself; a function is wrapped to record its calls and scale its results. */
export function recorded(name: string, value: unknown): unknown {
  if (typeof value !== 'function' || isClass(value)) return value
  const original = value as (...inputs: readonly unknown[]) => unknown
  return (...inputs: readonly unknown[]) => {
    if (depth === 0 && called !== undefined) {
      called.add(name)
      numbersIn(inputs, given)
    }
    depth += 1
    try {
      const result = original(...inputs)
      return changed?.name === name ? multiplied(result, changed.factor) : result
    } finally {
      depth -= 1
    }
  }
}
