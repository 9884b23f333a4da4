import type { PlanValue } from '@strandwise/planner/facts'
import { valueText } from '@strandwise/planner/report'
import { formatQuantity, type QuantityKind } from '@strandwise/working/quantity'

export type UnitSystem = 'metric' | 'inch' | 'both'

export const unitSystem = (text: string | undefined): UnitSystem => (text === 'inch' || text === 'both' ? text : 'metric')

/** True if a quantity was typed in inch units. */
export const isInch = (text: string): boolean => /\d\s*(?:["″'′]|in\b|ft\b|mils?\b|°?F\b|lbf?\b|awg\b|cmil\b|kcmil\b)/i.test(text)

/** Units with an inch counterpart; a plan prints no others. */
const kinds: Readonly<Record<string, QuantityKind>> = {
  mm: 'lengthMm',
  m: 'lengthM',
  '°C': 'temperatureC',
  K: 'temperatureDifferenceK',
  'mm²': 'areaMm2',
  N: 'forceN',
  'mm³': 'volumeMm3',
}

const significant = 3

const inch = (value: number, kind: QuantityKind): string => formatQuantity(value, kind, { system: 'inch', significant })

/** "(a to b) unit" in a sentence: numbers with a true minus sign, without thousands separators. */
const measured = /(−|-)?(\d+(?:\.\d+)?)(?: to (−|-)?(\d+(?:\.\d+)?))? (mm²|mm³|mm|m|°C|K|N)(?![\w²³/])/g

const number = (sign: string | undefined, digits: string): number => (sign === undefined ? 1 : -1) * Number(digits)

/** Lengths, areas, temperatures and forces of a sentence in the units chosen. */
export function inUnits(sentence: string, system: UnitSystem): string {
  if (system === 'metric') return sentence
  return sentence.replace(
    measured,
    (whole: string, sign: string | undefined, first: string, sign2: string | undefined, second: string | undefined, unit: string) => {
      const kind = kinds[unit]
      if (kind === undefined) return whole
      const ends = [inch(number(sign, first), kind), ...(second === undefined ? [] : [inch(number(sign2, second), kind)])]
      const other = ends.join(' to ')
      return system === 'inch' ? other : `${whole} (${other})`
    },
  )
}

/** A value of the plan as the command prints it, in the chosen units; marked if from memory. */
export function valueIn(value: PlanValue, system: UnitSystem): string {
  const text = valueText(value, system)
  return value.provenance.status === 'from memory' ? `${text} (from memory)` : text
}

const derived = { status: 'derived', source: 'computed' } as const

/** A number of the plan that stands alone, in the units chosen. */
export const printed = (value: number, unit: string, system: UnitSystem, band: { readonly low?: number; readonly high?: number } = {}): string =>
  valueIn({ name: '', value, unit, ...band, provenance: derived }, system)
