import type { QuantityKind } from './kinds.ts'
import { type QuantityCode, QuantityError } from './quantityError.ts'
import type { NumberRead } from './readNumber.ts'
import { findUnit, namesInOtherCase, type Unit } from './units.ts'

/** A value and half of its last printed digit, both in the kind's own unit. */
export interface Reading {
  readonly value: number
  readonly half: number
}

/** The request: the original text, for messages, and the kind. */
export interface Asked {
  readonly text: string
  readonly kind: QuantityKind
}

/** The error for a text that is refused. */
export function refusal(asked: Asked, code: QuantityCode, reason: string, readings?: readonly string[]): QuantityError {
  const shown = readings?.map((reading) => reading.replace('^2', '²').replace('^3', '³'))
  return new QuantityError(code, asked.text, asked.kind, reason, shown)
}

/** Converts a number from a unit to the kind's own. */
export function inOwnUnit(number: Pick<NumberRead, 'value' | 'halfDigit' | 'digits' | 'exponent'>, unit: Unit): Reading {
  const half = (number.halfDigit * unit.times) / unit.over
  if (number.digits === undefined || unit.power === undefined) return { value: ((number.value + unit.offset) * unit.times) / unit.over, half }
  return { value: unit.power === 0 ? number.value : Number(`${number.digits}e${(number.exponent ?? 0) + unit.power}`), half }
}

/** Finds a unit by name, ignoring case if exactly one fits; the candidates if several do; undefined if none. */
export function resolveUnit(kind: QuantityKind, name: string): Unit | readonly string[] | undefined {
  const unit = findUnit(kind, name)
  if (unit !== undefined) return unit
  const names = namesInOtherCase(kind, name)
  return names.length > 1 ? names : names[0] === undefined ? undefined : findUnit(kind, names[0])
}

/** True if resolveUnit found one unit. */
export function isUnit(found: Unit | readonly string[] | undefined): found is Unit {
  return found !== undefined && 'times' in found
}
