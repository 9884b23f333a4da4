import type { QuantityKind } from '@strandwise/working/quantity'
import type { Entry } from '../../../tests/docs/extract.ts'
import { printedUnit } from '../../../tests/docs/working.ts'
import { wordsOf } from '../methodPage/readable.ts'
import type { HandField } from './facts.ts'

/** Quantity kind by unit of a field. */
const kinds: Readonly<Record<string, QuantityKind>> = {
  'mm²': 'areaMm2',
  m: 'lengthM',
  mm: 'lengthMm',
  '°C': 'temperatureC',
  Ω: 'resistanceOhm',
  'Ω/m': 'resistanceOhmPerM',
  A: 'currentA',
  V: 'voltageV',
  W: 'powerW',
  N: 'forceN',
  s: 'timeS',
  Pa: 'pressurePa',
  'm/s': 'speedMPerS',
  'mm³': 'volumeMm3',
  MPa: 'stressMPa',
  'K/W': 'thermalResistanceKPerW',
  Hz: 'frequencyHz',
}

type Path = readonly (string | number)[]
interface Found {
  readonly path: Path
  readonly value: unknown
}

const isNumbers = (value: unknown): value is readonly number[] => Array.isArray(value) && value.length > 0 && value.every((item) => typeof item === 'number')

/** Every value for a form, with its path; a list of numbers is one value. */
function leavesIn(value: unknown, path: Path): readonly Found[] {
  if (typeof value !== 'object' || value === null || isNumbers(value)) return [{ path, value }]
  return Object.entries(value).flatMap(([key, inner]) => leavesIn(inner, [...path, Array.isArray(value) ? Number(key) : key]))
}

/** The path as written: prefixed by the parameter's name if there are several parameters or a list. */
function writtenPath(entry: Entry, [position = 0, ...rest]: Path): string {
  const parameter = entry.parameters[Number(position)]
  const bare = entry.parameters.length === 1 && rest.length > 0 && typeof rest[0] === 'string'
  return [...(bare ? [] : [parameter?.name ?? '']), ...rest].join('.')
}

const general = (path: string): string => path.replace(/(^|\.)\d+(?=\.|$)/g, '$10')

/** "conductors.1.areaMm2" as "area of the conductor, conductor 2". */
function labelOf(entry: Entry, written: string, value: unknown): string {
  const line = entry.doc.symbols.find(({ path }) => general(path.split(' else ')[0] ?? '') === general(written))
  const keys = written.split('.')
  const [last = ''] = keys.filter((key) => !/^\d+$/.test(key)).slice(-1)
  // A choice is labelled by its field's name; its symbol line may say what is read from it.
  const words = typeof value === 'string' ? wordsOf(last).words : (line?.meaning ?? wordsOf(last).words)
  const at = keys.findIndex((key) => /^\d+$/.test(key))
  const list = at > 0 ? wordsOf(keys[at - 1] ?? '').words.replace(/s$/, '') : ''
  const owner = keys.length > 1 && line === undefined && at === -1 ? `${wordsOf(keys.at(-2) ?? '').words}: ` : ''
  return `${owner}${words}${at === -1 ? '' : `, ${list === '' ? 'item' : list} ${Number(keys[at]) + 1}`}`
}

function fieldOf(entry: Entry, path: Path, value: unknown): HandField | undefined {
  const written = writtenPath(entry, path)
  const leaf = entry.parameters
    .flatMap(({ leaves, name }) =>
      leaves.map((one) => ({
        ...one,
        full: entry.parameters.length === 1 && one.path !== '' && !/^\d/.test(one.path) ? one.path : [name, one.path].filter((part) => part !== '').join('.'),
      })),
    )
    .find(({ full }) => general(full) === general(isNumbers(value) ? `${written}.0` : written))
  const [last = ''] = written
    .split('.')
    .filter((key) => !/^\d+$/.test(key))
    .slice(-1)
  const line = entry.doc.symbols.find(
    ({ path: place }) => general(place.split(' else ')[0] ?? '') === general(isNumbers(value) ? `${written}.0` : written) || place === written,
  )
  const own = wordsOf(last).unit
  const unit = line !== undefined && typeof value !== 'string' ? (line.unit === '1' ? '' : printedUnit(line.unit)) : own
  const choices = (leaf?.choices ?? []).map(String)
  const kind =
    typeof value === 'boolean'
      ? 'yes-no'
      : choices.length > 0 && !isNumbers(value)
        ? 'choice'
        : isNumbers(value)
          ? 'numbers'
          : typeof value === 'number'
            ? 'number'
            : typeof value === 'string'
              ? 'text'
              : undefined
  if (kind === undefined) return undefined
  const domain =
    entry.doc.domains.find((one) => general(one.path).replaceAll('*', '0') === general(isNumbers(value) ? `${written}.0` : written))?.domain.text ?? ''
  const quantity = kinds[unit]
  return {
    id: `f-${path.join('-')}`,
    path,
    written,
    kind,
    label: labelOf(entry, written, value),
    unit,
    ...(quantity === undefined ? {} : { quantity }),
    domain,
    choices,
    optional: (leaf?.optional ?? false) || (path.length === 1 && entry.parameters[Number(path[0])]?.optional === true),
    typed: isNumbers(value) ? value.join(', ') : String(value),
  }
}

/** Fields that may be added to the example: plain values missing from its object, or from an object inside. */
function addable(entry: Entry, inputs: readonly unknown[], known: ReadonlySet<string>): readonly HandField[] {
  return entry.parameters.flatMap(({ leaves }, position) =>
    leaves.flatMap(({ path, kind, choices, optional }): readonly HandField[] => {
      const keys = path.split('.')
      if (!optional || path === '' || keys.some((key) => /^\d+$/.test(key))) return []
      const full: Path = [position, ...keys]
      const holder = keys.slice(0, -1).reduce<unknown>((found, key) => (found as Readonly<Record<string, unknown>> | undefined)?.[key], inputs[position])
      // Fields of unions are left out: which belong to which kind is not known here.
      if (typeof holder !== 'object' || holder === null || 'kind' in holder || known.has(writtenPath(entry, full)) || keys.at(-1) === 'kind') return []
      const field = fieldOf(entry, full, kind === 'number' ? 0 : kind === 'boolean' ? false : '')
      if (field === undefined || (kind === 'string' && choices === undefined)) return []
      return [{ ...field, optional: true, typed: '', ...(kind === 'boolean' ? { kind: 'choice' as const, choices: ['true', 'false'] } : {}) }]
    }),
  )
}

/** Most fields of a form. */
const mostFields = 48

/** The form of a function, filled with its example; undefined if an argument is no plain data, or there are too many fields. */
export function formOf(entry: Entry, inputs: readonly unknown[]): { readonly fields: readonly HandField[]; readonly inputs: readonly unknown[] } | undefined {
  let plain: readonly unknown[]
  try {
    plain = JSON.parse(JSON.stringify(inputs)) as readonly unknown[]
  } catch {
    return undefined
  }
  const holdsFunction = (value: unknown): boolean =>
    typeof value === 'function' || (typeof value === 'object' && value !== null && Object.values(value).some(holdsFunction))
  if (inputs.some(holdsFunction) || inputs.length === 0) return undefined
  const found = inputs.flatMap((value, position) => leavesIn(value, [position]))
  const shown = found.flatMap(({ path, value }) => fieldOf(entry, path, value) ?? [])
  if (shown.length === 0 || shown.length > mostFields) return undefined
  return { fields: [...shown, ...addable(entry, inputs, new Set(shown.map(({ written }) => written)))], inputs: plain }
}
