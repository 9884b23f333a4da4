import type { QuantityKind } from './kinds.ts'
import { type QuantityCode, QuantityError } from './quantityError.ts'
import type { NumberRead } from './readNumber.ts'
import { findUnit, namesInOtherCase, type Unit } from './units.ts'

/** A value and half of its last printed digit, both in the kind's own unit. */
export interface Reading {
  readonly value: number
  readonly half: number
}

/** What is being read: the text as it was given, for messages, and its kind. */
export interface Asked {
  readonly text: string
  readonly kind: QuantityKind
}

/** The error for a text that can't be taken. */
export function refusal(asked: Asked, code: QuantityCode, reason: string, readings?: readonly string[]): QuantityError {
  const shown = readings?.map((reading) => reading.replace('^2', '²').replace('^3', '³'))
  return new QuantityError(code, asked.text, asked.kind, reason, shown)
}

/** A number from a unit to the kind's own. */
export function inOwnUnit(number: Pick<NumberRead, 'value' | 'halfDigit' | 'digits' | 'exponent'>, unit: Unit): Reading {
  const half = (number.halfDigit * unit.times) / unit.over
  if (number.digits === undefined || unit.power === undefined) return { value: ((number.value + unit.offset) * unit.times) / unit.over, half }
  return { value: unit.power === 0 ? number.value : Number(`${number.digits}e${(number.exponent ?? 0) + unit.power}`), half }
}

/** The unit of that name, in another case of letters if exactly one fits; the names if several do; undefined if none. */
export function resolveUnit(kind: QuantityKind, name: string): Unit | readonly string[] | undefined {
  const unit = findUnit(kind, name)
  if (unit !== undefined) return unit
  const names = namesInOtherCase(kind, name)
  return names.length > 1 ? names : names[0] === undefined ? undefined : findUnit(kind, names[0])
}

/** Whether resolveUnit found one unit. */
export function isUnit(found: Unit | readonly string[] | undefined): found is Unit {
  return found !== undefined && 'times' in found
}
