/** Why a value was refused; stable, so that an embedder can translate. */
export type DomainCode = 'not-a-number' | 'not-finite' | 'out-of-range' | 'not-whole' | 'missing' | 'contradiction' | 'wrong-choice'

/** A value outside the domain of a formula: names the parameter, the value, what is allowed and, where one says so, the source of the limit. */
export class DomainError extends RangeError {
  override readonly name = 'DomainError'
  readonly code: DomainCode
  readonly parameter: string
  readonly value: unknown
  readonly allowed: string
  readonly source?: string

  constructor(parameter: string, value: unknown, allowed: string, source?: string, code: DomainCode = 'out-of-range') {
    super(`"${parameter}" is ${shown(value)}; allowed: ${allowed}${source === undefined ? '' : ` (${source})`}`)
    this.code = code
    this.parameter = parameter
    this.value = value
    this.allowed = allowed
    if (source !== undefined) this.source = source
  }
}

function shown(value: unknown): string {
  if (typeof value === 'string') return `"${value.length > 60 ? `${value.slice(0, 60)}…` : value}"`
  if (typeof value === 'number' || typeof value === 'boolean' || value === undefined || value === null) return String(value)
  return Array.isArray(value) ? 'a list' : typeof value === 'object' ? 'an object' : `a ${typeof value}`
}
