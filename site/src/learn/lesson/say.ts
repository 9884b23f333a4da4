/** Units that take a prefix, and the prefix for each power of a thousand. */
const prefixed = new Set(['Ω', 'V', 'A', 'W', 'S/m', 'Ω/m'])
const prefixes: Readonly<Record<number, string>> = { 6: 'M', 3: 'k', 0: '', [-3]: 'm', [-6]: 'µ', [-9]: 'n' }
const thousand = 3

const signed = (text: string): string => text.replace('-', '−')

/** A number to so many significant digits, without exponent and with trailing zeros: 1.20, not 1.2. */
export function figures(value: number, count = 3): string {
  if (value === 0) return '0'
  const decimals = Math.max(0, count - 1 - Math.floor(Math.log10(Math.abs(Number(value.toPrecision(count))))))
  return signed(Number(value.toPrecision(count)).toFixed(Math.min(decimals, 12)))
}

/** A value as lessons print it: significant digits, a space, and a unit with prefix. */
export function say(value: number, unit: string, count = 3): string {
  const symbol = unit === '' ? '' : ` ${unit}`
  if (!prefixed.has(unit) || value === 0) return figures(value, count) + symbol
  const power = Math.floor(Math.log10(Math.abs(Number(value.toPrecision(count)))))
  const step = Math.min(6, Math.max(-9, thousand * Math.floor(power / thousand)))
  return `${figures(value / 10 ** step, count)} ${prefixes[step] ?? ''}${unit}`
}

/** An interval with its unit once. */
export const span = (low: number, high: number, unit: string, count = 2): string => `${figures(low, count)} to ${figures(high, count)} ${unit}`

/** A space between a number and its unit. */
const beforeUnit = /(\d) (?=(?:[kMmµn]?(?:Ω|V|A|W)|m{1,2}[²³]?|K|N|s|°[CF]|%)(?![\p{L}²³]))/gu

/** A text in which no line ends between a number and its unit. */
export const tied = (text: string): string => text.replace(beforeUnit, '$1\u00a0')

export const percent = (share: number, count = 2): string => `${figures(100 * share, count)} %`
