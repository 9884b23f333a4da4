/** A name or row that a table lacks; known lists the entries it has. */
export class UnknownEntryError extends RangeError {
  override readonly name = 'UnknownEntryError'
  readonly code = 'unknown-entry'
  readonly parameter: string
  readonly value: unknown
  readonly known: readonly string[]

  constructor(parameter: string, value: unknown, known: readonly string[]) {
    super(`"${parameter}" has no entry ${typeof value === 'string' ? `"${value.slice(0, 60)}"` : String(value)}; known: ${known.join(', ') || 'none'}`)
    this.parameter = parameter
    this.value = value
    this.known = known
  }
}

/** Looks up an entry; if the table refuses it, the error names the caller's field. */
export function entryAt<T>(parameter: string, lookUp: () => T): T {
  try {
    return lookUp()
  } catch (error) {
    if (!(error instanceof UnknownEntryError)) throw error
    throw new UnknownEntryError(parameter, error.value, error.known)
  }
}
