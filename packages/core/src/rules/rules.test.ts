import { describe, expect, test } from 'vitest'
import { practiceRules, practiceRulesBySection } from './practiceRules.ts'

const byId = new Map(practiceRules.map((rule) => [rule.id, rule]))
const methods = [
  'soldered-lap',
  'soldered-lineman-splice',
  'crimped-butt-splice',
  'crimped-and-sealed-butt-splice',
  'solder-sleeve',
  'new-crimped-terminal',
  'replace-the-run',
]
const fields = [
  ...[
    'circuit',
    'rules',
    'location',
    'vibration',
    'flexes',
    'flammableVapour',
    'supplyV',
    'currentA',
    'areaMm2',
    'loadedInBundle',
    'ambientC',
    'hottestC',
    'coldestC',
  ],
  ...[
    'fromTerminationMm',
    'fuseDistanceM',
    'brokenStrands',
    'metal',
    'insulation',
    'damage',
    'method',
    'tool',
    'solder',
    'sleeve',
    'fuse',
    'terminal',
    'reading',
    'step',
    'situation',
  ],
]

describe('the rules of the trade as data', () => {
  test('there are 406 of them, each under its own id', () => {
    expect(practiceRules.length).toBe(406)
    expect(byId.size).toBe(406)
  })

  test('each rule is in the section that it decides, and no section is empty', () => {
    for (const [section, rules] of Object.entries(practiceRulesBySection)) {
      expect(rules.length, section).toBeGreaterThan(0)
      for (const rule of rules) expect(rule.decides, rule.id).toBe(section)
    }
  })

  test.each([
    ['published', 223],
    ['common practice', 155],
    ['from memory', 28],
  ])('%s: %i rules, as the collection was read', (status, count) => {
    expect(practiceRules.filter((rule) => rule.source.status === status).length).toBe(count)
  })

  test.each([
    ['forbids', 49],
    ['requires', 139],
    ['favours', 33],
    ['limits', 142],
    ['informs', 43],
  ])('%s: %i rules', (effect, count) => {
    expect(practiceRules.filter((rule) => rule.effect === effect).length).toBe(count)
  })

  test('every statement is a sentence and every source is named', () => {
    for (const rule of practiceRules) {
      expect(rule.statement, rule.id).toMatch(/^[A-Z0-9].{15,}\.$/)
      expect(rule.source.source.length, rule.id).toBeGreaterThan(3)
      expect([rule.statement, rule.source.source, rule.source.clause ?? ''].join(' | '), rule.id).not.toMatch(
        /https?:|www\.|\.(com|org|net|edu|gov|mil|json)\b/i,
      )
    }
  })

  test('every condition asks for a field that a job knows, with an order only for a number', () => {
    for (const rule of practiceRules) {
      for (const condition of rule.conditions) {
        expect(fields, rule.id).toContain(condition.field)
        expect(condition.values.length, rule.id).toBeGreaterThan(0)
        if (condition.op === '=' || condition.op === '!=') continue
        expect(condition.values.length, rule.id).toBe(1)
        expect(typeof condition.values[0], rule.id).toBe('number')
      }
    }
  })

  test('every method is one of the seven', () => {
    for (const rule of practiceRules) for (const method of rule.methods) expect(methods, rule.id).toContain(method)
  })

  test('a conflict names at least one rule that exists, and is common practice: the default is a judgement', () => {
    const conflicts = practiceRules.filter((rule) => rule.conflictsWith !== undefined)
    expect(conflicts.length).toBe(24)
    for (const rule of conflicts) {
      expect(rule.source.status, rule.id).toBe('common practice')
      for (const other of rule.conflictsWith ?? []) expect(byId.has(other), `${rule.id} names ${other}`).toBe(true)
    }
  })

  test('figures are plain data: finite numbers, words, yes or no, null, lists and records of them', () => {
    const plain = (value: unknown): boolean =>
      value === null ||
      typeof value === 'string' ||
      typeof value === 'boolean' ||
      (typeof value === 'number' && Number.isFinite(value)) ||
      (typeof value === 'object' && Object.values(value).every(plain))
    for (const rule of practiceRules) expect(plain(rule.values), rule.id).toBe(true)
  })

  test('a share lies between 0 and 1, a pair is a range from low to high', () => {
    for (const rule of practiceRules) {
      for (const [key, value] of Object.entries(rule.values)) {
        if (/Share$/.test(key) && typeof value === 'number') expect(value >= 0 && value <= 1, `${rule.id} ${key}`).toBe(true)
        if (!Array.isArray(value) || value.length !== 2 || /^printed/.test(key)) continue
        const [low, high]: unknown[] = value
        if (typeof low === 'number' && typeof high === 'number') expect(low, `${rule.id} ${key}`).toBeLessThan(high)
      }
    }
  })
})
