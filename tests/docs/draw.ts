import fc from 'fast-check'
import { writtenPaths } from './complete.ts'
import { evaluate, parseExample } from './example.ts'
import type { Entry } from './extract.ts'
import type { Domain } from './grammar.ts'
import { scope } from './scope.ts'
import { nextDown, nextUp, withValue } from './vary.ts'

/** Unbounded values are drawn within a factor e^reach of the example's. */
const reach = 1.2
/** One draw in so many is exactly on an included edge. */
const edgeWeight = 12

/** Smallest magnitude drawn, above the loss of digits. */
const smallest = 1e-30
const withAllDigits = (value: number): number => (value !== 0 && Math.abs(value) < smallest ? smallest : value)

/** Draws a number of the domain: uniform between two bounds, else near the example's. */
function numberOf(domain: Domain, given: number): fc.Arbitrary<number> {
  const { low, high } = domain
  if (domain.whole) return fc.integer({ min: low ?? Math.min(0, given), max: high ?? Math.max(low ?? 0, 3 * Math.abs(given)) })
  if (low !== undefined && high !== undefined)
    return fc.double({ min: domain.lowIncluded ? low : nextUp(low), max: domain.highIncluded ? high : nextDown(high), noNaN: true }).map(withAllDigits)
  const size = Math.max(Math.abs(given - (low ?? high ?? 0)), 1e-9)
  const spread = fc.double({ min: -reach, max: reach, noNaN: true }).map((power) => size * Math.exp(power))
  const away = low === undefined && high === undefined ? fc.double({ min: -3 * size, max: 3 * size, noNaN: true }) : spread
  const inside = away.map((distance) => (low !== undefined ? low + distance : high !== undefined ? high - distance : distance))
  const edge = low !== undefined ? domain.lowIncluded && low : domain.highIncluded && high
  return typeof edge === 'number' ? fc.oneof({ weight: edgeWeight, arbitrary: inside }, { weight: 1, arbitrary: fc.constant(edge) }) : inside
}

/** Paths with the indices of the inputs' lists: "links.0.factor" also stands for "links.1.factor". */
function placesOf(inputs: unknown, segments: readonly string[]): readonly string[] {
  const [first, ...rest] = segments
  if (first === undefined) return ['']
  const keys = Array.isArray(inputs) && (first === '*' || first === '0') ? inputs.map((_, at) => String(at)) : [first]
  return keys.flatMap((key) =>
    placesOf((inputs as Readonly<Record<string, unknown>> | undefined)?.[key], rest).map((tail) => (tail === '' ? key : `${key}.${tail}`)),
  )
}

function valueAt(inputs: readonly unknown[], names: readonly string[], path: string): unknown {
  const [head = '', ...rest] = path.split('.')
  const position = names.indexOf(head)
  let found: unknown = position === -1 ? inputs[0] : inputs[position]
  for (const key of position === -1 ? [head, ...rest] : rest) found = (found as Readonly<Record<string, unknown>> | null | undefined)?.[key]
  return found
}

/** Every value that a draw may change, with its possible values; undefined removes it. */
function variationsOf(entry: Entry, inputs: readonly unknown[]): readonly (readonly [string, fc.Arbitrary<unknown>])[] {
  const names = entry.parameters.map(({ name }) => name)
  const holder =
    names.length === 1 && !Array.isArray(inputs[0]) && typeof inputs[0] === 'object'
      ? inputs[0]
      : Object.fromEntries(names.map((name, at) => [name, inputs[at]]))
  const numbers = entry.doc.domains.flatMap(({ path, domain, optional }) =>
    placesOf(holder, path.split('.')).flatMap((place): readonly (readonly [string, fc.Arbitrary<unknown>])[] => {
      const given = valueAt(inputs, names, place)
      if (typeof given !== 'number') return []
      const drawn = numberOf(domain, given)
      const inList = /\.\d+$/.test(place)
      return [[place, optional && !inList ? fc.option(drawn, { nil: undefined, freq: 4 }) : drawn]]
    }),
  )
  const words = entry.parameters.flatMap(({ name, leaves }) =>
    leaves.flatMap(({ path, choices }): readonly (readonly [string, fc.Arbitrary<unknown>])[] => {
      const written = writtenPaths(entry).find((one) => one.path === path || one.path === `${name}.${path}` || (path === '' && one.path === name))?.path
      // A union's discriminator stays: its other fields depend on it.
      if (written === undefined || choices === undefined || typeof valueAt(inputs, names, written) !== typeof choices[0] || /(^|\.)kind$/.test(written))
        return []
      return [[written, fc.constantFrom(...choices)]]
    }),
  )
  return [...numbers, ...words]
}

/** Draws inputs from the domains of a docstring, around its examples. Relations between inputs are not in the domains, so the function may refuse. */
export function drawnInputs(entry: Entry): fc.Arbitrary<readonly unknown[]> {
  const names = entry.parameters.map(({ name }) => name)
  const bases = entry.doc.examples.map((code) => evaluate(parseExample(code).argumentsText, scope))
  return fc.constantFrom(...bases).chain((base) => {
    const variations = variationsOf(entry, base)
    return fc
      .tuple(...variations.map(([, value]) => value))
      .map((values) => variations.reduce<readonly unknown[]>((inputs, [path], at) => withValue(inputs, names, path, values[at]) ?? inputs, base))
  })
}

/** The inputs as one object, as a formula takes them: positional parameters by name. */
export function asObject(entry: Entry, inputs: readonly unknown[]): Readonly<Record<string, unknown>> {
  const names = entry.parameters.map(({ name }) => name)
  const [first] = inputs
  const takesObject = names.length === 1 && typeof first === 'object' && first !== null && !Array.isArray(first)
  return takesObject ? (first as Readonly<Record<string, unknown>>) : Object.fromEntries(names.map((name, at) => [name, inputs[at]]))
}
