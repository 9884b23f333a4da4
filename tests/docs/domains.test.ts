import { expect, test } from 'vitest'
import { writtenPaths } from './complete.ts'
import { entries } from './entries.ts'
import { deepFreeze, evaluate, parseExample } from './example.ts'
import type { Entry } from './extract.ts'
import type { DomainLine } from './grammar.ts'
import { outcomeOf, refusesItself } from './outcome.ts'
import { functionOf, scope } from './scope.ts'
import { insideOf, outsideOf, withValue } from './vary.ts'

const functions = entries().filter((entry) => entry.kind === 'function' && entry.doc.examples.length > 0)

interface Variation {
  readonly line: DomainLine
  readonly inputs: (value: unknown) => unknown[] | undefined
}

/** A domain is tried on the first example with a value for its parameter, else on the first that could have one. */
function variationOf(entry: Entry, line: DomainLine): Variation | undefined {
  const names = entry.parameters.map(({ name }) => name)
  const bases = entry.doc.examples.map((code) => evaluate(parseExample(code).argumentsText, scope))
  const given = bases.find((base) => {
    const without = withValue(base, names, line.path, undefined)
    return without !== undefined && JSON.stringify(without) !== JSON.stringify(base)
  })
  const base = given ?? bases.find((one) => withValue(one, names, line.path, 1) !== undefined)
  return base === undefined ? undefined : { line, inputs: (value) => withValue(base, names, line.path, value) }
}

const shown = (value: unknown): string => (Object.is(value, -0) ? '-0' : String(value))

/** Past an edge, NaN, infinite or missing: a DomainError that names the parameter. Inside: no refusal of the parameter by itself, and never NaN. */
async function problemsOf(entry: Entry, { line, inputs }: Variation): Promise<readonly string[]> {
  const call = functionOf(entry.name)
  const problems: string[] = []
  const others = writtenPaths(entry).flatMap(({ path }) => (path === line.path ? [] : path.split('.').filter((name) => !/^\d+$/.test(name))))
  const refused = [...outsideOf(line.domain), '1', ...(line.optional ? [] : [undefined, null])]
  for (const value of refused) {
    const outcome = await outcomeOf(call, (inputs(value) as unknown[]).map(deepFreeze))
    if (outcome.kind === 'value') problems.push(`${shown(value)} was accepted`)
    else if (outcome.kind === 'wrong') problems.push(`${shown(value)}: ${outcome.why}`)
    else if (outcome.name !== 'DomainError') problems.push(`${shown(value)}: ${outcome.name} instead of DomainError`)
    else if (outcome.parameter !== line.path) problems.push(`${shown(value)}: names "${outcome.parameter}"`)
  }
  for (const value of insideOf(line.domain)) {
    const outcome = await outcomeOf(call, (inputs(value) as unknown[]).map(deepFreeze))
    if (outcome.kind === 'wrong') problems.push(`${shown(value)}, inside: ${outcome.why}`)
    else if (refusesItself(outcome, line.path, others))
      problems.push(`${shown(value)}, inside, was refused: ${outcome.kind === 'refused' ? outcome.message : ''}`)
  }
  return problems
}

test.each(functions)('$package/$room $name: each domain holds at and past its edges', async (entry) => {
  const found: string[] = []
  for (const line of entry.doc.domains) {
    const variation = variationOf(entry, line)
    if (variation === undefined) found.push(`${line.path}: no example has a place for it; add one that does`)
    else found.push(...(await problemsOf(entry, variation)).map((problem) => `${line.path} (${line.domain.text}): ${problem}`))
  }
  expect(found.length, found.join('\n')).toBe(0)
})

test('there are functions to try', () => {
  expect(functions.length).toBeGreaterThan(0)
})
