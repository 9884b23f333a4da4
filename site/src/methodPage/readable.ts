/** Unit suffixes of identifiers and their written form; longest first. */
const units: readonly (readonly [string, string])[] = [
  ['OhmPer1000Ft', 'Ω/1000 ft'],
  ['OhmGPerM2', 'Ω g/m²'],
  ['LbfIn', 'lbf in'],
  ['Nm', 'N m'],
  ['JPerKgK', 'J/(kg K)'],
  ['JPerKMm3', 'J/(K mm³)'],
  ['WPerM2K', 'W/(m² K)'],
  ['WPerMK', 'W/(m K)'],
  ['KgPerM3', 'kg/m³'],
  ['KgPerM', 'kg/m'],
  ['MKPerW', 'm K/W'],
  ['PerM3', 'per m³'],
  ['OhmPerKm', 'Ω/km'],
  ['OhmPerM', 'Ω/m'],
  ['JPerKg', 'J/kg'],
  ['SPerM', 'S/m'],
  ['VPerK', 'V/K'],
  ['NPerM', 'N/m'],
  ['MPerS', 'm/s'],
  ['WPerK', 'W/K'],
  ['WPerM2', 'W/m²'],
  ['WPerM', 'W/m'],
  ['KPerW', 'K/W'],
  ['PerMm', 'per mm'],
  ['PerK', 'per K'],
  ['OhmMm2', 'Ω mm²'],
  ['OhmMm', 'Ω mm'],
  ['OhmM2', 'Ω m²'],
  ['OhmM', 'Ω m'],
  ['Percent', '%'],
  ['Rad', 'rad'],
  ['Ohm', 'Ω'],
  ['MPa', 'MPa'],
  ['Mm3', 'mm³'],
  ['Mm2', 'mm²'],
  ['Lbf', 'lbf'],
  ['Ft', 'ft'],
  ['In', 'in'],
  ['Mm', 'mm'],
  ['Pa', 'Pa'],
  ['Hz', 'Hz'],
  ['M', 'm'],
  ['C', '°C'],
  ['K', 'K'],
  ['A', 'A'],
  ['V', 'V'],
  ['W', 'W'],
  ['N', 'N'],
  ['S', 's'],
]

/** A unit must follow a word; a single letter behind a number belongs to the number, as in "limit70C". */
const isWord = (start: string, end: string): boolean => (end.length > 1 ? /[a-z0-9]$/ : /[a-z]$/).test(start)

/** Splits "wallToleranceMm" into words and unit. */
export function wordsOf(key: string): { readonly words: string; readonly unit: string } {
  // "limit105CA": the current at a limit of 105 °C.
  if (/\dCA$/.test(key)) return { words: wordsOf(key.slice(0, -1)).words, unit: 'A' }
  const [suffix, unit] = units.find(([end]) => key.endsWith(end) && isWord(key.slice(0, -end.length), end)) ?? ['', '']
  const words = key
    .slice(0, key.length - suffix.length)
    .replace(/([a-z])([A-Z0-9])/g, '$1 $2')
    .toLowerCase()
    .replace(/(\d)c$/, '$1 °C')
    .replace(/^resistivity (?=20$)/, 'resistivity at ')
    .replace(/ 20$/, ' 20 °C')
  return { words, unit }
}

const print = (value: number): string =>
  String(value === 0 || (Math.abs(value) >= 1e-4 && Math.abs(value) < 1e6) ? Number(value.toPrecision(6)) : value.toPrecision(4)).replace('-', '−')

/** A value of the data in words: numbers with the unit of their key. */
export function shown(value: unknown, key = ''): string {
  const { unit } = wordsOf(key)
  if (value === null) return 'not known'
  if (typeof value === 'number') return unit === '' ? print(value) : `${print(value)} ${unit}`
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (Array.isArray(value)) return value.every((item) => typeof item !== 'object') ? value.map((item) => shown(item, key)).join(', ') : `${value.length} rows`
  if (typeof value !== 'object') return String(value)
  return fields(value as Readonly<Record<string, unknown>>, key)
}

function fields(value: Readonly<Record<string, unknown>>, key: string): string {
  const { low, nominal, high } = value
  if (typeof low === 'number' && typeof high === 'number') {
    const middle = typeof nominal === 'number' ? shown(nominal, key) : undefined
    const span = low === high ? shown(low, key) : `${shown(low, key)} to ${shown(high, key)}`
    return middle === undefined || middle === span ? span : `${middle} (${span})`
  }
  if (typeof value.value === 'number') return shown(value.value, key)
  return Object.entries(value)
    .filter(([name]) => !/^(name|provenance|sure)$|[sS]tatus$|Provenance$/.test(name))
    .map(([name, item]) => `${wordsOf(name).words} ${shown(item, name)}`)
    .join(', ')
}
