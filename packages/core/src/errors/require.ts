import { DomainError } from './domainError.ts'

/** Absolute zero in °C; no temperature lies at or below it. */
export const absoluteZeroC = -273.15

function refuse(parameter: string, value: unknown, allowed: string, source?: string): never {
  if (value === undefined) throw new DomainError(parameter, value, allowed, source, 'missing')
  if (typeof value !== 'number' || Number.isNaN(value)) throw new DomainError(parameter, value, allowed, source, 'not-a-number')
  throw new DomainError(parameter, value, allowed, source, Number.isFinite(value) ? 'out-of-range' : 'not-finite')
}

/** Any finite number. */
export function requireFinite(parameter: string, value: number, source?: string): number {
  if (typeof value !== 'number' || !(value > -Infinity && value < Infinity)) refuse(parameter, value, 'a finite number', source)
  return value
}

/** Above 0. */
export function requirePositive(parameter: string, value: number, source?: string): number {
  if (typeof value !== 'number' || !(value > 0 && value < Infinity)) refuse(parameter, value, 'a finite number above 0', source)
  return value
}

/** 0 or above. */
export function requireNotNegative(parameter: string, value: number, source?: string): number {
  if (typeof value !== 'number' || !(value >= 0 && value < Infinity)) refuse(parameter, value, 'a finite number, 0 or above', source)
  return value
}

/** From low to high, both included. */
export function requireBetween(parameter: string, value: number, low: number, high: number, source?: string): number {
  if (typeof value !== 'number' || !(value >= low && value <= high)) refuse(parameter, value, `from ${low} to ${high}`, source)
  return value
}

/** Above low and at most high. */
export function requireAboveUpTo(parameter: string, value: number, low: number, high: number, source?: string): number {
  if (typeof value !== 'number' || !(value > low && value <= high)) refuse(parameter, value, `above ${low} and at most ${high}`, source)
  return value
}

/** A temperature in °C above absolute zero. */
export function requireTemperature(parameter: string, value: number, source?: string): number {
  if (typeof value !== 'number' || !(value > absoluteZeroC && value < Infinity))
    refuse(parameter, value, `a finite temperature above ${absoluteZeroC} °C`, source)
  return value
}

/** A whole number from low to high. */
export function requireWhole(parameter: string, value: number, low: number, high: number = Number.MAX_SAFE_INTEGER, source?: string): number {
  const allowed = high === Number.MAX_SAFE_INTEGER ? `a whole number, ${low} or above` : `a whole number from ${low} to ${high}`
  if (typeof value !== 'number' || !(value >= low && value <= high)) refuse(parameter, value, allowed, source)
  if (!Number.isInteger(value)) throw new DomainError(parameter, value, allowed, source, 'not-whole')
  return value
}

/** One of the listed words. */
export function requireChoice<T extends string | number | boolean>(parameter: string, value: T, choices: readonly T[], source?: string): T {
  if (!choices.includes(value)) throw new DomainError(parameter, value, choices.join(', '), source, value === undefined ? 'missing' : 'wrong-choice')
  return value
}

/** A result that overflowed is the input's fault: names the parameter that is out of reach instead of returning Infinity or NaN. */
export function requireFiniteResult(parameter: string, value: unknown, result: number): number {
  if (!(result > -Infinity && result < Infinity)) throw new DomainError(parameter, value, 'values whose result is a finite number')
  return result
}
