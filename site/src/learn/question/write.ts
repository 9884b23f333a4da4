import { formatQuantity, type QuantityKind } from '@strandwise/working/quantity'
import type { Inputs } from './question.ts'

export type Write = (value: number, kind: QuantityKind) => string

/** Prints quantities in the chosen units, without trailing zeros. */
export function writer(inputs: Inputs, significant: number): Write {
  const { units } = inputs
  const system = units === 'inch' || units === 'both' ? units : 'metric'
  return (value, kind) => formatQuantity(Number(value.toPrecision(significant)), kind, { system })
}
