import { parseQuantity, QuantityError, type QuantityKind } from '@strandwise/working/quantity'

export type ReadUnit = (text: string, quantity: QuantityKind) => number | null

/** Parses a number with its unit; null if it is none. Loaded when a unit is typed. */
export const readUnit: ReadUnit = (text, quantity) => {
  try {
    return parseQuantity(text, quantity)
  } catch (error) {
    if (error instanceof QuantityError) return null
    throw error
  }
}
