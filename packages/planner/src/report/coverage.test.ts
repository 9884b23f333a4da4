import { practiceRules } from '@strandwise/core'
import { expect, test } from 'vitest'
import { decisionWords } from '../decision/decisionWords.ts'
import { stepWords } from '../work/stepWords.ts'
import { planRepair } from './index.ts'
import { planJobs } from './planJobs.sample.ts'

const plans = Object.entries(planJobs).map(([name, job]) => [name, planRepair(job)] as const)

test('each rule of the trade is told to some job: it holds, it would in a situation that is named, a finding rests on it, or a caution says it', () => {
  const told = new Set<string>()
  for (const [, plan] of plans) {
    for (const { holding, possible } of plan.rules) for (const { id } of [...holding, ...possible]) told.add(id)
    const sections = [...plan.sections, ...plan.ways.flatMap((way) => way.sections)]
    for (const { rule } of [...sections.flatMap((section) => section.findings), plan.decision.why]) if (rule !== undefined) told.add(rule)
    for (const rule of practiceRules) if (plan.cautions.includes(rule.statement)) told.add(rule.id)
  }
  expect(practiceRules.filter(({ id }) => !told.has(id)).map(({ id }) => id)).toEqual([])
})

test('the bismuth warning reaches the one who would solder with it', () => {
  const plan = plans.find(([name]) => name === 'bismuth')?.[1]
  const heating = plan?.rules.find(({ topic }) => topic === 'heating')
  expect(heating?.holding.map(({ id }) => id)).toContain('he-bismuth-lead')
})

test('each step that has words is taken by some job, and each decision is made', () => {
  const taken = new Set(plans.flatMap(([, plan]) => plan.sequence.map(({ code }) => code)))
  expect(Object.keys(stepWords).filter((code) => !taken.has(code))).toEqual([])
  const kinds = new Set(plans.map(([, plan]) => plan.decision.kind))
  expect(kinds).toEqual(new Set(['mend', 'replace the run', 'leave it', 'measure first', 'refused']))
  expect(Object.keys(decisionWords).length).toBeGreaterThan(20)
})

test('a finding’s first sentence has at most 25 words, and a heading at most 60 characters', () => {
  const long: string[] = []
  for (const [name, plan] of plans) {
    for (const section of [...plan.sections, ...plan.ways.flatMap((way) => way.sections)]) {
      if (section.says.length > 60) long.push(`${name}: ${section.says}`)
      for (const { text, code } of section.findings) {
        const [first = ''] = text.split(/(?<=[.!?]) (?=[A-Z0-9])/)
        if (first.split(' ').length > 25) long.push(`${code}: ${first}`)
      }
    }
  }
  expect([...new Set(long)]).toEqual([])
})
