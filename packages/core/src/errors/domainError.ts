/** Why a value was refused; stable, so that an embedder can translate. */
export type DomainCode = 'not-a-number' | 'not-finite' | 'out-of-range' | 'not-whole' | 'missing' | 'contradiction' | 'wrong-choice'

/** A value outside the domain of a formula: names the parameter, the value, what is allowed and, where one says so, the source of the limit. */
export class DomainError extends RangeError {
  declare readonly name: 'DomainError'
  declare readonly parameter: string
  declare readonly value: unknown
  declare readonly allowed: string
  /** undefined where none says so: stored all the same, which is shorter than a condition. */
  declare readonly source?: string
  declare readonly code: DomainCode

  /** Without a code it takes the one of a number that was refused. Every function ships this, so it is kept short. */
  constructor(
    parameter: string,
    value: unknown,
    allowed: string,
    source?: string,
    // Of the numbers that are not finite, NaN alone is falsy.
    code: DomainCode = Number.isFinite(value)
      ? 'out-of-range'
      : value === undefined
        ? 'missing'
        : typeof value === 'number' && value
          ? 'not-finite'
          : 'not-a-number',
  ) {
    // A text is quoted, so that "5" is told from 5; what has no short text of its own is named by its type.
    super(
      `"${parameter}" is ${typeof value === 'string' ? `"${value}"` : value === Object(value) ? typeof value : String(value)}; allowed: ${source ? `${allowed}, ${source}` : allowed}`,
    )
    this.name = 'DomainError'
    this.parameter = parameter
    this.value = value
    this.allowed = allowed
    this.source = source as string
    this.code = code
  }
}
