/** Outcome of a call: a finite value, a named error, or a fault. */
export type Outcome =
  | { readonly kind: 'value'; readonly value: unknown }
  | { readonly kind: 'refused'; readonly name: string; readonly parameter: string | undefined; readonly code: string | undefined; readonly message: string }
  | { readonly kind: 'wrong'; readonly why: string }

const named = new Set(['DomainError', 'UnknownEntryError', 'ConvergenceError', 'NoSteadyStateError', 'QuantityError', 'JobError'])

/** Path of the first NaN or infinity in a result; undefined if all is finite. */
export function unfinite(value: unknown, path = 'result'): string | undefined {
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : `${path} is ${value}`
  if (typeof value !== 'object' || value === null) return undefined
  for (const [name, inner] of Object.entries(value)) {
    const found = unfinite(inner, `${path}.${name}`)
    if (found !== undefined) return found
  }
  return undefined
}

export async function outcomeOf(call: (...inputs: unknown[]) => unknown, inputs: readonly unknown[]): Promise<Outcome> {
  try {
    const value = await call(...inputs)
    const why = unfinite(value)
    return why === undefined ? { kind: 'value', value } : { kind: 'wrong', why }
  } catch (error) {
    if (!(error instanceof Error)) return { kind: 'wrong', why: `threw ${String(error)}` }
    if (!named.has(error.name)) return { kind: 'wrong', why: `threw ${error.name}: ${error.message}` }
    const { parameter, code, text } = error as Error & { readonly parameter?: string; readonly code?: string; readonly text?: string }
    return { kind: 'refused', name: error.name, parameter: parameter ?? text, code, message: error.message }
  }
}

/** True if the parameter was refused by itself. A relation between inputs, or an overflow of the result, may refuse values within each domain: such an error has the code "contradiction", names the other input, or says that the result would not be finite. */
export function refusesItself(outcome: Outcome, path: string, others: readonly string[]): boolean {
  if (outcome.kind !== 'refused' || outcome.name !== 'DomainError' || outcome.parameter !== path || outcome.code === 'contradiction') return false
  const allowed = outcome.message.slice(outcome.message.indexOf('allowed:'))
  return !/result is a finite number/.test(allowed) && !others.some((name) => new RegExp(`\\b${name}\\b`).test(allowed))
}

/** Errors missing from the function's `@throws` lines are faults: callers could not have known. */
export function asDocumented(outcome: Outcome, throws: readonly string[]): Outcome {
  if (outcome.kind !== 'refused' || throws.some((line) => /^\w+/.exec(line)?.[0] === outcome.name)) return outcome
  return { kind: 'wrong', why: `threw ${outcome.name}, which no @throws line names: ${outcome.message}` }
}
