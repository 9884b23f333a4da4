import fc from 'fast-check'
import { writtenPaths } from './complete.ts'
import { evaluate, parseExample } from './example.ts'
import type { Entry } from './extract.ts'
import type { Domain } from './grammar.ts'
import { scope } from './scope.ts'
import { nextDown, nextUp, withValue } from './vary.ts'

/** How far a value without bounds is drawn from that of the example: a factor of e to this. */
const reach = 1.2
/** A number that an edge belongs to stands on it once in so many draws. */
const edgeWeight = 12

/** So small that a double loses digits is none of the draws. */
const smallest = 1e-30
const withAllDigits = (value: number): number => (value !== 0 && Math.abs(value) < smallest ? smallest : value)

/** A number of the domain: anywhere between two bounds, else of the size that the example has. */
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

/** The indices of lists written out as the inputs have them: "links.0.factor" is "links.1.factor" too. */
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

/** Every value that a draw may change, with what it may become; undefined is: left out. */
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
      // The word that tells the kinds of a union apart stays: its other fields belong to it.
      if (written === undefined || choices === undefined || typeof valueAt(inputs, names, written) !== typeof choices[0] || /(^|\.)kind$/.test(written))
        return []
      return [[written, fc.constantFrom(...choices)]]
    }),
  )
  return [...numbers, ...words]
}

/** Inputs drawn at random from the domains of a docstring, around its examples. What relates inputs to each other is not in the domains: the function may refuse. */
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

/** The same as the one object that a formula takes: positional parameters by their names. */
export function asObject(entry: Entry, inputs: readonly unknown[]): Readonly<Record<string, unknown>> {
  const names = entry.parameters.map(({ name }) => name)
  const [first] = inputs
  const takesObject = names.length === 1 && typeof first === 'object' && first !== null && !Array.isArray(first)
  return takesObject ? (first as Readonly<Record<string, unknown>>) : Object.fromEntries(names.map((name, at) => [name, inputs[at]]))
}
