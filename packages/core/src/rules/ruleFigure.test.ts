import { expect, test } from 'vitest'
import { UnknownEntryError } from '../errors/index.ts'
import { practiceRules } from './practiceRules.ts'
import { ruleFigure } from './ruleFigure.ts'

const rule = (id: string) => {
  const found = practiceRules.find((candidate) => candidate.id === id)
  if (found === undefined) throw new Error(`no rule ${id}`)
  return found
}

test('a figure is in the SI unit of its key', () => {
  expect(ruleFigure(rule('me-no-lap-at-plug'), 'minMm')).toBe(50)
  expect(ruleFigure(rule('wp-joint-share'), 'maxShareOfBudget')).toBe(0.1)
  expect(ruleFigure(rule('pr-load-test-time'), 'minS')).toBe(300)
})

test('a range, a word, a yes and a figure that is not there are refused with the known keys', () => {
  for (const [id, key] of [
    ['sr-tie-distance', 'fromSleeveMm'],
    ['me-ratchet-tool', 'tool'],
    ['me-mechanical-first', 'mechanicalFirst'],
    ['me-no-lap-at-plug', 'maxMm'],
    ['me-no-lap-at-plug', 'toString'],
  ] as const)
    expect(() => ruleFigure(rule(id), key), id).toThrow(UnknownEntryError)
})
