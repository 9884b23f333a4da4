import { formatQuantity } from '@strandwise/working/quantity'
import type { RepairJob } from '../job/index.ts'
import type { PlanValue } from './finding.ts'

/** Units in which a plan prints lengths, temperatures and forces. */
export type Units = NonNullable<RepairJob['units']>

/** A number rounded to significant digits, without exponent. */
function digits(value: number, significant = 3): string {
  if (value === 0) return '0'
  const rounded = Number(value.toPrecision(significant))
  const decimals = Math.max(0, significant - 1 - Math.floor(Math.log10(Math.abs(rounded))))
  return rounded.toFixed(Math.min(decimals, 12)).replace('-', '−')
}

/** Without trailing zeros: "4.2", "15", "0.36". */
const short = (value: number, significant = 3): string => String(Number(value.toPrecision(significant))).replace('-', '−')

function scaled(value: number, unit: string): string {
  const size = Math.abs(value)
  if (size >= 1e6) return `${digits(value / 1e6)} M${unit}`
  if (size >= 1e4) return `${digits(value / 1e3)} k${unit}`
  if (size >= 0.1 || size === 0) return `${digits(value)} ${unit}`
  return size >= 1e-3 ? `${digits(1e3 * value)} m${unit}` : `${digits(1e6 * value)} µ${unit}`
}

/** In metric units with a prefix: "157 µΩ", "36.0 mV", "47 °C", "12 mm". */
function inMetric(value: number, unit: string): string {
  switch (unit) {
    case 'Ω':
    case 'V':
      return scaled(value, unit)
    case '°C':
    case 'K':
    case 'N':
      return `${String(Math.round(value)).replace('-', '−')} ${unit}`
    case 'mm':
      return `${digits(value, Math.abs(value) >= 100 ? 3 : 2)} mm`
    case 's':
      return value >= 120 ? `${short(value / 60, 2)} min` : `${short(value, 2)} s`
    case '%':
      return `${short(value, 2)} %`
    case '':
      return short(value)
    default:
      return `${short(value)} ${unit}`
  }
}

const inchKinds = { mm: 'lengthMm', m: 'lengthM', '°C': 'temperatureC', K: 'temperatureDifferenceK', N: 'forceN' } as const

function inInch(value: number, unit: string): string | null {
  if (!Object.hasOwn(inchKinds, unit)) return null
  const kind = inchKinds[unit as keyof typeof inchKinds]
  // Temperatures in whole degrees, lengths with two digits or to 1/100 inch.
  const significant = kind === 'temperatureC' ? Math.max(1, Math.ceil(Math.log10(Math.abs((value * 9) / 5 + 32) + 1))) : 2
  return formatQuantity(value, kind, { system: 'inch', significant: Math.min(4, significant) })
}

/** A number with its unit, in the job's units. */
export function printed(value: number, unit: string, units: Units = 'metric'): string {
  const metric = inMetric(value, unit)
  if (units === 'metric') return metric
  const inch = inInch(value, unit)
  if (inch === null) return metric
  return units === 'inch' ? inch : `${metric} (${inch})`
}

/** "60 to 66 °C" if the ends of the band differ in print, else the value. */
export function printedValue(value: PlanValue, units: Units = 'metric'): string {
  const { low, high, unit } = value
  if (low === undefined || high === undefined) return printed(value.value, unit, units)
  const [from, to] = [printed(low, unit, units), printed(high, unit, units)]
  if (from === to) return from
  const [number, ...rest] = from.split(' ')
  return units !== 'both' && to.endsWith(` ${rest.join(' ')}`) ? `${number} to ${to}` : `${from} to ${to}`
}
