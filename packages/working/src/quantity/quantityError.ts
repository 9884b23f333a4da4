import { type QuantityKind, quantityKinds } from './kinds.ts'

/** Why a text was refused; a stable code, so that callers can translate. */
export type QuantityCode =
  | 'not-text'
  | 'empty'
  | 'too-long'
  | 'no-number'
  | 'no-unit'
  | 'unknown-unit'
  | 'wrong-unit'
  | 'ambiguous'
  | 'malformed'
  | 'out-of-range'

/** Text that is no quantity of its kind, or is ambiguous: readings then lists one unambiguous text for each meaning. */
export class QuantityError extends Error {
  override readonly name = 'QuantityError'
  readonly code: QuantityCode
  readonly text: string
  readonly kind: QuantityKind
  readonly reason: string
  readonly allowed: string
  readonly readings?: readonly string[]

  constructor(code: QuantityCode, text: string, kind: QuantityKind, reason: string, readings?: readonly string[]) {
    const allowed = `a ${quantityKinds[kind].name} such as ${quantityKinds[kind].examples}`
    super(`"${shortened(text)}": ${reason}${readings ? `: ${readings.map((reading) => `"${reading}"`).join(' or ')}` : ''}; allowed: ${allowed}`)
    this.code = code
    this.text = text
    this.kind = kind
    this.reason = reason
    this.allowed = allowed
    if (readings) this.readings = readings
  }
}

/** The start of a long text, for messages. */
export function shortened(text: string): string {
  return text.length > 60 ? `${text.slice(0, 60)}…` : text
}
