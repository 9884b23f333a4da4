/** Why a value was refused; stable, so that an embedder can translate. */
export type DomainCode = 'not-a-number' | 'not-finite' | 'out-of-range' | 'not-whole' | 'missing' | 'contradiction' | 'wrong-choice'

/** A value outside the domain of a formula: names the parameter, the value, what is allowed and, where one says so, the source of the limit. */
export class DomainError extends RangeError {
  declare readonly name: 'DomainError'
  declare readonly code: DomainCode
  declare readonly parameter: string
  declare readonly value: unknown
  declare readonly allowed: string
  declare readonly source?: string

  /** Every function ships this: it is kept short. Without a code it takes the one of a number that was refused. */
  constructor(
    parameter: string,
    value: unknown,
    allowed: string,
    source?: string,
    code: DomainCode = Number.isFinite(value)
      ? 'out-of-range'
      : value === undefined
        ? 'missing'
        : typeof value === 'number' && !Number.isNaN(value)
          ? 'not-finite'
          : 'not-a-number',
  ) {
    // Quoted, "5" is told from 5; what has no short text of its own is named by its type.
    const shown = typeof value === 'string' ? `"${value}"` : Object(value) === value ? typeof value : String(value)
    super(`"${parameter}" is ${shown}; allowed: ${allowed}${source ? ` (${source})` : ''}`)
    Object.assign(this, { name: 'DomainError', code, parameter, value, allowed, source })
  }
}
