const shownDigits = 5

/** A number outside this range gets a unit prefix or a power of ten. */
const long = { from: 1e6, below: 1e-4 } as const
const isLong = (value: number): boolean => value !== 0 && (Math.abs(value) >= long.from || Math.abs(value) < long.below)

const thousand = 3
/** Prefixes by power of ten; squared units such as mm², and units with a prefix, take none. */
const prefixes: Readonly<Record<number, string>> = { 9: 'G', 6: 'M', [-6]: 'µ', [-9]: 'n', [-12]: 'p' }
const takesPrefix = /^(?:Ω|S|W|V|A|J|N|Pa|Hz)(?![\w²³^])/

/** Units in words, so that a number does not run into "1/m". */
const spoken: Readonly<Record<string, string>> = { '1/m': 'per metre', '1/mm': 'per mm', '1/K': 'per kelvin', '1/s': 'per second' }

/** A unit as shown to readers. */
export const unitText = (unit: string): string => spoken[unit] ?? unit

const signed = (digits: number): string => String(digits).replace('-', '−')
const raised = (power: number): string => [...String(power)].map((sign) => (sign === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(sign)])).join('')
const withUnit = (number: string, unit: string): string => (unit === '1' ? number : `${number} ${unitText(unit)}`)

/** A value as a page prints it, without long rows of zeros. */
export function quantityText(value: number, unit: string): string {
  if (!isLong(value)) return withUnit(signed(Number(value.toPrecision(shownDigits))), unit)
  const [mantissa = '0', exponent = '0'] = value.toExponential(shownDigits - 1).split('e')
  const power = Number(exponent)
  const step = thousand * Math.floor(power / thousand)
  const prefix = takesPrefix.test(unit) ? prefixes[step] : undefined
  if (prefix !== undefined) return `${signed(Number((Number(mantissa) * 10 ** (power - step)).toPrecision(shownDigits)))} ${prefix}${unit}`
  return withUnit(`${signed(Number(mantissa))} · 10${raised(power)}`, unit)
}
