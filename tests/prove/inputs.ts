import type { Entry } from '../docs/extract.ts'
import type { Domain } from '../docs/grammar.ts'
import { copyOf, insideOf, never, outsideOf, withValue } from '../docs/vary.ts'
import type { Random } from '../random/random.ts'

/** Numbers that often break programs. */
const notorious = [
  ...never,
  0,
  -0,
  1,
  -1,
  Number.MIN_VALUE,
  Number.EPSILON,
  Number.MAX_VALUE,
  -Number.MAX_VALUE,
  Number.MAX_SAFE_INTEGER,
  2 ** 31,
  1e-300,
  1e300,
  0.1,
]
/** Words that often break programs. */
const notoriousWords = ['', ' ', '0', 'NaN', '__proto__', 'constructor', 'toString', '💡', 'x'.repeat(10_000), '\u0000', '1e400', '-1']
/** Values of wrong types. */
const strangers: readonly unknown[] = [null, undefined, {}, [], 'text', '1', true, Number.NaN]

/** A random number, mostly near the example's, sometimes anywhere in the domain, rarely outside. */
function numberFor(random: Random, before: unknown, domain: Domain | undefined): unknown {
  const kind = random.next()
  if (kind < 0.02) return random.of(notorious)
  if (kind < 0.03) return random.of(strangers)
  if (domain !== undefined && kind < 0.06) return random.of(outsideOf(domain))
  if (domain !== undefined && kind < 0.12) return random.of(insideOf(domain))
  const near = typeof before === 'number' && Number.isFinite(before) && before !== 0 ? before : random.of([1, 10, 0.1])
  const value = kind < 0.75 ? near * 10 ** (0.3 * random.normal()) : anywhere(random, domain)
  return domain?.whole === true ? Math.round(value) : value
}

function anywhere(random: Random, domain: Domain | undefined): number {
  const { low, high } = domain ?? {}
  if (low !== undefined && high !== undefined) return low + random.next() * (high - low)
  const size = 10 ** (24 * random.next() - 12)
  if (low !== undefined) return low + size
  if (high !== undefined) return high - size
  return random.chance(0.5) ? size : -size
}

/** Values of wrong types for text, except NaN, which may be passed through as a name. */
const noTexts: readonly unknown[] = [null, undefined, {}, [], 1, true]

/** A random text near the example's (a letter added, removed or changed), sometimes a word that breaks programs. */
function wordFor(random: Random, before: unknown, choices: readonly (string | number)[] | undefined): unknown {
  const kind = random.next()
  if (kind < 0.03) return random.of(notoriousWords)
  if (kind < 0.04) return random.of(noTexts)
  if (choices !== undefined) return random.of(choices)
  if (typeof before !== 'string' || kind < 0.4) return before
  const at = random.whole(before.length + 1)
  const letter = random.of(['0', '1', '9', '.', ',', '-', '/', ' ', 'A', 'm', 'µ', '²', 'x', 'e', '%', '"'])
  return random.of([
    before.slice(0, at) + letter + before.slice(at),
    before.slice(0, at) + before.slice(at + 1),
    before.slice(0, at) + letter + before.slice(at + 1),
  ])
}

/** Randomly grows, shrinks and empties lists. */
function stretchLists(random: Random, value: unknown): unknown {
  if (Array.isArray(value)) {
    const list = value.map((one) => stretchLists(random, one))
    if (random.chance(0.05) && list.length > 0) list.push(copyOf(random.of(list)))
    if (random.chance(0.03)) list.pop()
    return list
  }
  if (typeof value !== 'object' || value === null || Object.getPrototypeOf(value) !== Object.prototype) return value
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, stretchLists(random, inner)]))
}

function valueAt(inputs: readonly unknown[], path: readonly string[]): unknown {
  let value: unknown = inputs
  for (const segment of path) value = typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[segment] : undefined
  return value
}

interface Place {
  readonly path: string
  readonly steps: readonly string[]
  readonly kind: 'number' | 'string' | 'boolean'
  readonly optional: boolean
  readonly choices: readonly (string | number)[] | undefined
  readonly domain: Domain | undefined
}

/** Every leaf of every parameter that can be varied, with its domain. */
export function placesOf(entry: Entry): readonly Place[] {
  return entry.parameters.flatMap(({ name, leaves }, position) =>
    leaves.map(({ path, kind, optional, choices }) => {
      const written = path === '' ? name : entry.parameters.length === 1 && !/^\d/.test(path) ? path : `${name}.${path}`
      const domain = entry.doc.domains.find((line) => line.path === written)?.domain
      return {
        path: path === '' ? name : `${name}.${path}`,
        steps: [String(position), ...(path === '' ? [] : path.split('.'))],
        kind,
        optional,
        choices,
        domain,
      }
    }),
  )
}

/** One random call near an example: each value is kept, changed, or, if optional, removed. */
export function randomInputs(random: Random, entry: Entry, bases: readonly (readonly unknown[])[], places: readonly Place[]): readonly unknown[] {
  const names = entry.parameters.map(({ name }) => name)
  let inputs = copyOf(random.of(bases)) as unknown[]
  const share = random.of([0.15, 0.5, 1])
  for (const { path, steps, kind, optional, choices, domain } of places) {
    if (!random.chance(Math.min(share, 12 / places.length))) continue
    const before = valueAt(inputs, steps)
    if (optional && random.chance(0.15)) {
      inputs = withValue(inputs, names, path, undefined) ?? inputs
      continue
    }
    if (optional && before === undefined && !random.chance(0.3)) continue
    const value =
      kind === 'boolean'
        ? random.chance(0.5)
        : kind === 'string'
          ? wordFor(random, before, choices)
          : choices === undefined
            ? numberFor(random, before, domain)
            : wordFor(random, before, choices)
    inputs = withValue(inputs, names, path, value) ?? inputs
  }
  return random.chance(0.3) ? inputs.map((input) => stretchLists(random, input)) : inputs
}
