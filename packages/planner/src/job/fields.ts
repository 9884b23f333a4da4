import type { QuantityKind } from '@strandwise/working/quantity'
import * as z from 'zod/mini'

/** Metadata of a field: the only source for form, messages and JSON Schema. */
export interface FieldMeta {
  readonly title: string
  /** One sentence of help below the question. */
  readonly description: string
  /** Allowed values in words. */
  readonly allowed: string
  /** A valid value as in a job file. */
  readonly example: string
  readonly kind?: QuantityKind
  readonly unit?: string
  readonly low?: number
  readonly high?: number
}

export const jobFields = z.registry<FieldMeta>()

const unitOf: Readonly<Record<QuantityKind, string>> = {
  areaMm2: 'mm²',
  lengthM: 'm',
  lengthMm: 'mm',
  temperatureC: '°C',
  temperatureDifferenceK: 'K',
  resistanceOhm: 'Ω',
  resistanceOhmPerM: 'Ω/m',
  currentA: 'A',
  voltageV: 'V',
  powerW: 'W',
  forceN: 'N',
  massKg: 'kg',
  timeS: 's',
  ratio: '',
  angleRad: 'rad',
  pressurePa: 'Pa',
  speedMPerS: 'm/s',
  volumeMm3: 'mm³',
  stressMPa: 'MPa',
  thermalResistanceKPerW: 'K/W',
  frequencyHz: 'Hz',
}

interface Range {
  readonly above?: number
  readonly from?: number
  readonly to: number
}

function rangeWords(range: Range, unit: string): string {
  const u = unit === '' ? '' : ` ${unit}`
  return range.above !== undefined ? `above ${range.above} and at most ${range.to}${u}` : `from ${range.from ?? 0} to ${range.to}${u}`
}

/** A number in the fixed unit of its kind, within a range. The field's name ends in the unit. */
export function quantity(kind: QuantityKind, range: Range, title: string, description: string, example: number) {
  const unit = unitOf[kind]
  const low = range.above ?? range.from ?? 0
  const schema = range.above !== undefined ? z.number().check(z.gt(low), z.lte(range.to)) : z.number().check(z.gte(low), z.lte(range.to))
  return schema.register(jobFields, { title, description, allowed: rangeWords(range, unit), example: String(example), kind, unit, low, high: range.to })
}

/** A count or a bare number. */
export function bare(range: Range, title: string, description: string, example: number, whole = false) {
  const low = range.above ?? range.from ?? 0
  const number = whole ? z.int() : z.number()
  const schema = range.above !== undefined ? number.check(z.gt(low), z.lte(range.to)) : number.check(z.gte(low), z.lte(range.to))
  return schema.register(jobFields, {
    title,
    description,
    allowed: `${whole ? 'a whole number ' : ''}${rangeWords(range, '')}`,
    example: String(example),
    low,
    high: range.to,
  })
}

/** One of the listed words. */
export function choice<const T extends readonly [string, ...string[]]>(values: T, title: string, description: string, example: T[number]) {
  return z.enum(values).register(jobFields, { title, description, allowed: values.join(', '), example: `"${example}"` })
}

/** Yes or no. */
export function yesNo(title: string, description: string) {
  return z.boolean().register(jobFields, { title, description, allowed: 'true or false', example: 'true' })
}

/** A short text. */
export function text(title: string, description: string, example: string, longest = 200) {
  return z
    .string()
    .check(z.minLength(1), z.maxLength(longest))
    .register(jobFields, {
      title,
      description,
      allowed: `a text of 1 to ${longest} characters`,
      example: `"${example}"`,
    })
}

/** Low and high of a quantity; low must not pass high. */
export function interval(
  kind: QuantityKind | null,
  range: Range,
  title: string,
  description: string,
  example: { readonly low: number; readonly high: number },
) {
  const unit = kind === null ? '' : unitOf[kind]
  const low = range.above ?? range.from ?? 0
  const end = () => (range.above !== undefined ? z.number().check(z.gt(low), z.lte(range.to)) : z.number().check(z.gte(low), z.lte(range.to)))
  const endMeta = { title, description, allowed: rangeWords(range, unit), unit, low, high: range.to, ...(kind === null ? {} : { kind }) }
  return z
    .strictObject({
      low: end().register(jobFields, { ...endMeta, title: `${title}, low`, example: String(example.low) }),
      high: end().register(jobFields, { ...endMeta, title: `${title}, high`, example: String(example.high) }),
    })
    .check(z.refine((value) => value.low <= value.high))
    .register(jobFields, {
      ...endMeta,
      allowed: `low and high, ${rangeWords(range, unit)}, low not above high`,
      example: `{ "low": ${example.low}, "high": ${example.high} }`,
    })
}
