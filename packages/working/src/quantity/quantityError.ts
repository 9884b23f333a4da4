import { type QuantityKind, quantityKinds } from './kinds.ts'

/** Why a text was refused; stable, so that an embedder can translate. */
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

/** Text that is no quantity of its kind, or could be two: readings then lists texts that each say one of them. */
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

/** A message shows the start of a long text only. */
export function shortened(text: string): string {
  return text.length > 60 ? `${text.slice(0, 60)}…` : text
}
