/** Which functions of the packages a check calls: outermost calls only, not what these call in turn. */
let called: Set<string> | undefined
let depth = 0

/** Runs a check; tells its result and the functions that it called. */
export function watched<T>(run: () => T): { readonly result: T; readonly functions: readonly string[] } {
  const names = new Set<string>()
  called = names
  depth = 0
  try {
    return { result: run(), functions: [...names] }
  } finally {
    called = undefined
  }
}

const isClass = (value: unknown): boolean => typeof value === 'function' && /^class\b/.test(Function.prototype.toString.call(value))

/** The export itself, or, where it is a function, one that notes its call. */
export function recorded(name: string, value: unknown): unknown {
  if (typeof value !== 'function' || isClass(value)) return value
  const original = value as (...inputs: readonly unknown[]) => unknown
  return (...inputs: readonly unknown[]) => {
    if (depth === 0) called?.add(name)
    depth += 1
    try {
      return original(...inputs)
    } finally {
      depth -= 1
    }
  }
}
