/** Why a value was refused; a stable code, so that callers can translate. */
export type DomainCode = 'not-a-number' | 'not-finite' | 'out-of-range' | 'not-whole' | 'missing' | 'contradiction' | 'wrong-choice'

/** A value outside the domain of a formula: names the parameter, the value, what is allowed and, where one says so, the source of the limit. */
export class DomainError extends RangeError {
  declare readonly name: 'DomainError'
  declare readonly parameter: string
  declare readonly value: unknown
  declare readonly allowed: string
  /** undefined without a source: stored anyway, which saves a condition. */
  declare readonly source?: string
  declare readonly code: DomainCode

  /** The default code is that of a refused number. Every function ships this, so it is kept short. */
  constructor(
    parameter: string,
    value: unknown,
    allowed: string,
    source?: string,
    // Of the non-finite numbers only NaN is falsy.
    code: DomainCode = Number.isFinite(value)
      ? 'out-of-range'
      : value === undefined
        ? 'missing'
        : typeof value === 'number' && value
          ? 'not-finite'
          : 'not-a-number',
  ) {
    // A text is quoted, so that "5" differs from 5; a value without a short text is named by its type.
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
