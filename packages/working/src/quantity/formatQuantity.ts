import { DomainError, requireChoice, requireFinite, requireNotNegative, requireWhole, UnknownEntryError } from '@strandwise/core/errors'
import { type Shown, shownUnits } from './display.ts'
import { type QuantityKind, quantityKinds } from './kinds.ts'
import { normalise } from './normalise.ts'
import { findUnit, type Unit, unitName } from './units.ts'

/** Defaults of formatQuantity: enough digits for a workshop, trailing zeros dropped. */
export const formatDefaults = {
  system: 'metric',
  significant: 4,
  provenance: { status: 'common practice', source: 'four figures are finer than any wire or meter that this is for' },
} as const

/** Two digits of an uncertainty are printed (GUM 7.2.6). */
const uncertaintyDigits = 2
/** More decimals are meaningless in a double. */
const mostDecimals = 20

type System = 'metric' | 'inch' | 'both'

/**
 * Writes a quantity in a unit that suits its size; reading the text back gives the value within its printed digits.
 * Whole digits are never rounded away; `significant` keeps zeros at the end, `uncertainty` prints "± u" with two digits.
 *
 * @equation x = y/f - b
 * @symbol y - value - 1 - value in the unit that ends the kind's name
 * @symbol f - kind - 1 - factor of the printed unit
 * @symbol b - kind - 1 - offset of that unit, 0 but for temperatures
 * @symbol x - result - 1 - the number printed
 * @domain value: finite
 * @domain optional options.significant: whole from 1 to 15
 * @domain optional options.uncertainty: at least 0
 * @throws DomainError outside the domain, or for a value that the kind can't have (an area below 0)
 * @throws UnknownEntryError for a kind that does not exist
 * @example
 * formatQuantity(0.0042, 'currentA', { significant: 3, uncertainty: 0.00021 }) // "4.20 ± 0.21 mA"
 * @source ISO 80000-1 for the order of number, uncertainty and unit
 */
export function formatQuantity(
  value: number,
  kind: QuantityKind,
  options: { readonly system?: System; readonly significant?: number; readonly uncertainty?: number } = {},
): string {
  if (!Object.hasOwn(quantityKinds, kind)) throw new UnknownEntryError('kind', kind, Object.keys(quantityKinds))
  requireFinite('value', value)
  const lowest = quantityKinds[kind].lowest
  if (lowest !== undefined && value < lowest) throw new DomainError('value', value, `${lowest} or above for a ${quantityKinds[kind].name}`)
  const { significant, uncertainty = 0 } = options
  if (significant !== undefined) requireWhole('options.significant', significant, 1, 15)
  requireNotNegative('options.uncertainty', uncertainty)
  const system = requireChoice<System>('options.system', options.system ?? formatDefaults.system, ['metric', 'inch', 'both'])
  const { metric, inch } = shownUnits[kind]
  const write = (units: Shown['metric']): string => inUnits(value, kind, units, significant, uncertainty)
  if (inch === undefined || system === 'metric') return write(metric)
  return system === 'inch' ? write(inch) : `${write(metric)} (${write(inch)})`
}

function inUnits(value: number, kind: QuantityKind, units: Shown['metric'], significant: number | undefined, uncertainty: number): string {
  const size = Math.max(Math.abs(value), uncertainty)
  // Zero has no suitable size: it takes the kind's own unit, or the inch.
  const fits = units.find(([from, name]) => (size === 0 ? from <= 1 && name !== 'ft in' : size >= from))
  const symbol = fits?.[1] ?? ''
  if (symbol === 'ft in' && uncertainty === 0) return inFeetAndInches(value, significant)
  const unit = symbol === '' ? { times: 1, over: 1, offset: 0 } : unitShown(kind, symbol === 'ft in' ? 'in' : symbol)
  const number = (value * unit.over) / unit.times - unit.offset
  const spread = (uncertainty * unit.over) / unit.times
  const digits = spread > 0 ? withSpread(number, spread) : printed(number, significant)
  return `${digits}${symbol === '' || symbol === '°' ? '' : ' '}${symbol === 'ft in' ? 'in' : symbol}`
}

function unitShown(kind: QuantityKind, symbol: string): Unit {
  const unit = findUnit(kind, unitName(normalise(symbol)))
  if (unit === undefined) throw new UnknownEntryError('unit', symbol, [])
  return unit
}

/** Prints all whole digits and at least the significant ones asked for; by default trailing zeros are dropped. */
function printed(number: number, significant: number | undefined): string {
  const digits = significant ?? formatDefaults.significant
  const [mantissa = '0', power = '0'] = number.toExponential(digits - 1).split('e')
  const exponent = Number(power)
  if (exponent < -6 || exponent > 14) return `${significant === undefined ? String(Number(mantissa)) : mantissa}e${exponent}`
  const fixed = number.toFixed(Math.max(0, digits - 1 - exponent))
  return significant === undefined && fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed
}

/** The uncertainty to two digits, the value to the same decimal; a value that rounds to 0 has no sign. */
function withSpread(number: number, spread: number): string {
  const exponent = Number(spread.toExponential(uncertaintyDigits - 1).split('e')[1])
  const decimals = Math.min(mostDecimals, Math.max(0, uncertaintyDigits - 1 - exponent))
  const value = number.toFixed(decimals)
  return `${Number(value) === 0 ? value.replace('-', '') : value} ± ${spread.toFixed(decimals)}`
}

/** Feet, then inches to the significant digits that inches alone would have, at least to the inch. */
function inFeetAndInches(valueM: number, significant: number | undefined): string {
  const inchesPerM = 5000 / 127
  const inchesPerFoot = 12
  const inches = Math.abs(valueM) * inchesPerM
  const digits = significant ?? formatDefaults.significant
  const decimals = Math.max(0, digits - 1 - Math.floor(Math.log10(inches)))
  const rounded = Number(inches.toFixed(decimals))
  const feet = Math.floor(rounded / inchesPerFoot)
  const rest = (rounded - feet * inchesPerFoot).toFixed(decimals)
  const shown = significant === undefined ? String(Number(rest)) : rest
  return `${valueM < 0 ? '-' : ''}${feet} ft ${shown} in`
}
