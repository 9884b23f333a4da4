import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError, UnknownEntryError } from '../errors/index.ts'
import { conditionHolds } from './conditionHolds.ts'
import type { MethodContext } from './methodContext.ts'
import { methodDecidingRules } from './methodDeciding.ts'
import type { PracticeRule } from './practiceRule.ts'
import { practiceRules, practiceRulesBySection } from './practiceRules.ts'
import { ruleFacts } from './ruleFacts.ts'
import { rulesFor, rulesThatHold } from './rulesFor.ts'
import { rulesHolding } from './rulesHolding.ts'

const sections = Object.keys(practiceRulesBySection) as PracticeRule['decides'][]
const ids = (rules: readonly PracticeRule[]) => rules.map((rule) => rule.id)
const launch: MethodContext = Object.freeze({
  circuit: 'motor',
  location: 'splash',
  vibration: 'some',
  flexes: false,
  hottestC: 45,
  coldestC: 0,
  currentA: 4.2,
  areaMm2: 1,
  metals: ['tinned-copper', 'tinned-copper'] as const,
  insulation: 'PVC',
  distanceToTerminationMm: 25,
  flammableVapour: false,
  tools: ['hot-air'] as const,
  rules: ['small-craft'] as const,
})

describe('conditionHolds', () => {
  test.each([
    ['<', 59, true],
    ['<', 60, false],
    ['<=', 60, true],
    ['<=', 61, false],
    ['>', 60, false],
    ['>', 61, true],
    ['>=', 60, true],
    ['>=', 59, false],
    ['=', 60, true],
    ['=', 61, false],
    ['!=', 61, true],
    ['!=', 60, false],
  ] as const)('supplyV %s 60 for %d V: %s', (op, supplyV, holds) => {
    expect(conditionHolds({ field: 'supplyV', op, values: [60] }, { supplyV })).toBe(holds)
  })

  test('several values mean any of them', () => {
    const wet = { field: 'location', op: '=', values: ['damp', 'splash', 'submerged'] } as const
    expect(conditionHolds(wet, { location: 'splash' })).toBe(true)
    expect(conditionHolds(wet, { location: 'dry' })).toBe(false)
  })

  test('several values of a fact: any may meet a condition, and with != none may be equal', () => {
    expect(conditionHolds({ field: 'rules', op: '=', values: ['aircraft'] }, { rules: ['small-craft', 'aircraft'] })).toBe(true)
    expect(conditionHolds({ field: 'rules', op: '!=', values: ['aircraft'] }, { rules: ['small-craft', 'aircraft'] })).toBe(false)
    expect(conditionHolds({ field: 'rules', op: '!=', values: ['aircraft'] }, { rules: ['small-craft'] })).toBe(true)
  })

  test('"any" holds for whatever is given, and for nothing that is not', () => {
    const sleeved = { field: 'sleeve', op: '=', values: ['any'] } as const
    expect(conditionHolds(sleeved, { sleeve: 'PTFE' })).toBe(true)
    expect(conditionHolds(sleeved, { sleeve: [] })).toBe(false)
    expect(conditionHolds(sleeved, {})).toBe(false)
  })

  test('a fact that is not known meets no condition, not even a !=, and an inherited name is no fact', () => {
    expect(conditionHolds({ field: 'location', op: '!=', values: ['dry'] }, {})).toBe(false)
    expect(conditionHolds({ field: 'constructor', op: '!=', values: ['dry'] }, {})).toBe(false)
  })

  test('an order never holds for a word', () => {
    expect(conditionHolds({ field: 'supplyV', op: '>', values: [0] }, { supplyV: '48' })).toBe(false)
  })

  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('%d is refused by name', (supplyV) => {
    expect(() => conditionHolds({ field: 'supplyV', op: '>', values: [60] }, { supplyV })).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter: 'supplyV', value: supplyV }),
    )
  })
})

describe('rulesFor', () => {
  test('an empty context gives the rules without conditions, in every section', () => {
    for (const section of sections) {
      expect(ids(rulesFor(section, {})), section).toEqual(ids(practiceRulesBySection[section].filter((rule) => rule.conditions.length === 0)))
    }
  })

  test('small craft: the lap and the solder sleeve are out, and only where that set is named', () => {
    expect(ids(rulesFor('method', launch))).toContain('me-boat-lap-and-sleeve')
    expect(ids(rulesFor('method', { ...launch, rules: ['none'] }))).not.toContain('me-boat-lap-and-sleeve')
    const { rules: _unnamed, ...ashore } = launch
    expect(ids(rulesFor('method', ashore))).not.toContain('me-boat-lap-and-sleeve')
  })

  test('25 mm from a plug: no soldered joint, a new terminal first; 305 mm only under aircraft rules', () => {
    expect(ids(rulesFor('method', launch))).toEqual(expect.arrayContaining(['me-no-lap-at-plug', 'cb-too-near-for-splice']))
    expect(ids(rulesFor('method', { ...launch, distanceToTerminationMm: 50 }))).not.toContain('me-no-lap-at-plug')
    expect(ids(rulesFor('method', { ...launch, distanceToTerminationMm: 100 }))).not.toContain('cb-too-near-for-splice')
    expect(ids(rulesFor('cut-back', launch))).not.toContain('cb-splice-12in')
    expect(ids(rulesFor('cut-back', { ...launch, rules: ['aircraft'] }))).toContain('cb-splice-12in')
  })

  test('either of the two metals counts', () => {
    expect(ids(rulesFor('method', { metals: ['annealed-copper', 'aluminium-1350'] }))).toContain('me-al-terminals')
    expect(ids(rulesFor('method', { metals: ['aluminium-1350', 'annealed-copper'] }))).toContain('me-al-terminals')
  })

  test('the tools at hand bring their cautions', () => {
    expect(ids(rulesFor('cautions', { tools: ['iron'] }))).toContain('ca-burns')
    expect(ids(rulesFor('cautions', { tools: ['crimp-tool'] }))).not.toContain('ca-burns')
  })

  test('a situation is a fact that no job carries: it never counts as met', () => {
    for (const section of sections) {
      for (const rule of rulesFor(section, launch)) {
        expect(
          rule.conditions.map((condition) => condition.field),
          rule.id,
        ).not.toContain('situation')
      }
    }
  })

  test('a fact that the planner takes from elsewhere counts through rulesThatHold', () => {
    expect(ids(rulesThatHold('wire-and-protection', { ...ruleFacts(launch), fuse: 'given' }))).toContain('wp-motor-stall')
    expect(ids(rulesThatHold('cut-back', { situation: ['no-slack', 'inserted-length'] }))).toContain('cb-jumper-15cm')
    expect(ids(rulesThatHold('heating', { solder: 'Sn42Bi58' }))).toContain('he-bismuth-lead')
  })

  test('more known facts never take a rule away', () => {
    const known = Object.entries(launch)
    fc.assert(
      fc.property(fc.subarray(known), fc.constantFrom(...sections), (some, section) => {
        const fewer = ids(rulesFor(section, Object.fromEntries(some)))
        expect(ids(rulesFor(section, launch))).toEqual(expect.arrayContaining(fewer))
      }),
    )
  })

  test('an unknown section is refused; the error lists the known ones', () => {
    expect(() => rulesFor('colour' as 'method', {})).toThrow(UnknownEntryError)
    expect(() => rulesFor('toString' as 'method', {})).toThrow(expect.objectContaining({ known: sections }))
  })

  test('a number that is none is refused by its path, whether a rule asks for it or not', () => {
    expect(() => rulesFor('proof', { accessMm: Number.POSITIVE_INFINITY })).toThrow(expect.objectContaining({ parameter: 'context.accessMm' }))
    expect(() => ruleFacts({ coldestC: Number.NaN })).toThrow(expect.objectContaining({ parameter: 'coldestC' }))
    expect(() => rulesFor('method', { hottestC: Number.NaN })).toThrow(DomainError)
  })
})

test('an order against something that is no finite number is refused by its path', () => {
  const [rule] = practiceRulesBySection.cautions.filter((candidate) => candidate.id === 'ca-voltage-limit')
  if (rule === undefined) throw new Error('no such rule')
  const bad = { ...rule, conditions: [{ field: 'supplyV', op: '>', values: ['60'] }] } as const
  expect(() => rulesHolding([rule, bad], {})).toThrow(expect.objectContaining({ name: 'DomainError', parameter: 'rules.1.conditions.0.values.0' }))
  for (const op of ['>', '=', '!='] as const) {
    expect(() => conditionHolds({ field: 'supplyV', op, values: [Number.NaN] }, {})).toThrow(expect.objectContaining({ parameter: 'condition.values.0' }))
  }
})

test('the rules that decide a method are rules of the collection, each once', () => {
  expect(new Set(methodDecidingRules).size).toBe(methodDecidingRules.length)
  for (const rule of methodDecidingRules) expect(practiceRules, rule.id).toContain(rule)
  expect(ids(rulesHolding(methodDecidingRules, { circuit: 'airbag' }))).toContain('ca-srs-off-limits')
})
