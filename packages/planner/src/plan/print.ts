/** Numbers in sentences: as many digits as the models deserve, never an exponent. */
function digits(value: number, significant = 3): string {
  if (value === 0) return '0'
  const rounded = Number(value.toPrecision(significant))
  const decimals = Math.max(0, significant - 1 - Math.floor(Math.log10(Math.abs(rounded))))
  return rounded.toFixed(Math.min(decimals, 12)).replace('-', '−')
}

export const mm = (value: number): string => `${digits(value, Math.abs(value) >= 100 ? 3 : 2)} mm`
export const degrees = (value: number): string => `${Math.round(value)} °C`.replace('-', '−')
export const ampere = (value: number): string => `${digits(value)} A`
export const percent = (share: number): string => `${digits(100 * share, 2)} %`

export function volt(value: number): string {
  return Math.abs(value) < 0.1 && value !== 0 ? `${digits(1000 * value)} mV` : `${digits(value)} V`
}

export function ohm(value: number): string {
  const size = Math.abs(value)
  if (size >= 0.1 || size === 0) return `${digits(value)} Ω`
  return size >= 1e-3 ? `${digits(1000 * value)} mΩ` : `${digits(1e6 * value)} µΩ`
}

export function seconds(value: number): string {
  return value >= 120 ? `about ${digits(value / 60, 2)} minutes` : `about ${digits(value, 2)} s`
}

/** A value in its unit, small ohms and volts in thousandths and millionths: "157 µΩ", "36.0 mV", "47 °C". */
export function inUnit(value: number, unit: string): string {
  if (unit === 'Ω') return ohm(value)
  if (unit === 'V') return volt(value)
  if (unit === '°C') return degrees(value)
  return `${digits(value)} ${unit}`.trim()
}

/** "3 to 5 A" where they differ in print, else "3 A". */
export function span(low: number, high: number, print: (value: number) => string): string {
  const a = print(low)
  const b = print(high)
  return a === b ? a : `${a} to ${b}`
}
