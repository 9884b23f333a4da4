import { formatQuantity, type QuantityKind } from '@strandwise/working/quantity'
import type { Inputs } from './question.ts'

export type Write = (value: number, kind: QuantityKind) => string

/** Prints quantities in the units that the form asks for; a zero at the end says nothing here and is dropped. */
export function writer(inputs: Inputs, significant: number): Write {
  const { units } = inputs
  const system = units === 'inch' || units === 'both' ? units : 'metric'
  return (value, kind) => formatQuantity(Number(value.toPrecision(significant)), kind, { system })
}
