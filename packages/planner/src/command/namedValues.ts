import { parseQuantity, QuantityError, type QuantityKind, quantityKinds } from '@strandwise/working/quantity'
import { Unusable } from './unusable.ts'

type Tree = Record<string, unknown>

/** Unit suffixes by quantity kind, longest first: `OhmPerM` before `M`. */
const kindByEnd: readonly (readonly [string, QuantityKind])[] = (Object.keys(quantityKinds) as QuantityKind[])
  .map((kind): readonly [string, QuantityKind] => [/[A-Z].*$/.exec(kind.replace(/^(?:temperatureDifference|thermalResistance)/, ''))?.[0] ?? kind, kind])
  .sort(([a], [b]) => b.length - a.length)

/** Suffixes that take only a bare number. */
const bareUnits: Readonly<Record<string, string>> = {
  SPerM: 'S/m',
  WPerM: 'W/m',
  WPerMK: 'W/(m K)',
  WPerM2K: 'W/(m² K)',
  OhmM: 'Ω m',
  OhmM2: 'Ω m²',
  KgPerM: 'kg/m',
  KgPerM3: 'kg/m³',
  JPerKgK: 'J/(kg K)',
}

const number = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i
const mostIndex = 999

function kindOf(name: string): QuantityKind | undefined {
  if (Object.keys(bareUnits).some((end) => name.endsWith(end))) return undefined
  return kindByEnd.find(([end]) => name.endsWith(end))?.[1]
}

/** A value as it is typed: a number in the unit of its name, a quantity with another unit, true or false, or a word. */
function readValue(name: string, path: string, text: string): unknown {
  if (number.test(text)) return Number(text)
  const kind = kindOf(name)
  if (kind !== undefined) {
    try {
      return parseQuantity(text, kind)
    } catch (error) {
      if (!(error instanceof QuantityError)) throw error
      throw new Unusable(`${path}: is "${text.slice(0, 60)}"; allowed: ${error.allowed}`)
    }
  }
  const unit = Object.entries(bareUnits).find(([end]) => name.endsWith(end))?.[1]
  if (unit !== undefined) throw new Unusable(`${path}: is "${text.slice(0, 60)}"; allowed: a bare number in ${unit}`)
  if (text === 'true' || text === 'false') return text === 'true'
  return text === 'null' ? null : text
}

function put(tree: Tree, [key = '', ...rest]: readonly string[], value: unknown, path: string): void {
  if (Array.isArray(tree) && !(/^\d{1,3}$/.test(key) && Number(key) <= mostIndex))
    throw new Unusable(`${path}: allowed: a place in a list is a number, as in conductors.0`)
  if (rest.length === 0) {
    if (Object.hasOwn(tree, key)) throw new Unusable(`${path}: is given twice; allowed: once`)
    tree[key] = value
    return
  }
  if (!Object.hasOwn(tree, key)) tree[key] = /^\d+$/.test(rest[0] ?? '') ? [] : Object.create(null)
  const inside = tree[key]
  if (typeof inside !== 'object' || inside === null) throw new Unusable(`${path}: stands inside ${key}, which is given as a value; allowed: one of the two`)
  put(inside as Tree, rest, value, path)
}

/** The inputs of a formula from `name="quantity"`; a dot gives a nested field: `tool.setC=360`, `conductors.0.areaMm2="18 AWG"`. */
export function namedValues(given: readonly string[]): Readonly<Record<string, unknown>> {
  const tree: Tree = Object.create(null)
  for (const text of given) {
    const at = text.indexOf('=')
    if (at < 1) throw new Unusable(`"${text.slice(0, 60)}": allowed: name="quantity", as in overlapMm="6 mm"`)
    const path = text.slice(0, at)
    const keys = path.split('.')
    const name = keys.findLast((key) => !/^\d+$/.test(key)) ?? path
    put(tree, keys, readValue(name, path, text.slice(at + 1).trim()), path)
  }
  return tree
}
