import { describe, expect, test } from 'vitest'
import { jobForm, repairJobJsonSchema } from '../job/index.ts'
import { actingOn, type Field, namedJobs } from './everyFieldActs.sample.ts'
import { planRepair, reportText } from './index.ts'

const fields = jobForm.flatMap((group) => group.fields.map((field): Field => ({ name: `${group.at === '' ? '' : `${group.at}.`}${field.path}`, group, field })))

/** Names that a person gives: they are printed, and nothing else. */
const labels = ['title', 'tools.name', 'sleeves.name', 'solderSleeve.tube.name']
const acting = fields.filter(({ name }) => !labels.includes(name))

test('the form asks for every field of the schema', () => {
  const groups = new Set(fields.map(({ name }) => name.split('.')[0]))
  expect(Object.keys(repairJobJsonSchema.properties as object).filter((name) => !groups.has(name))).toEqual(['version'])
})

test(`${acting.length} of ${fields.length} fields act, the others are names`, () => {
  expect(fields.length - acting.length).toBe(labels.length)
})

describe('a field changes some plan beyond its own echo', () => {
  test.each(acting.map((field) => [`${field.name}${field.field.onlyOf === undefined ? '' : `, ${field.field.onlyOf}`}`, field] as const))(
    '%s',
    { timeout: 60_000 },
    (_name, field) => {
      expect(actingOn(field)).not.toBeNull()
    },
  )
})

test('a name is printed where its thing is spoken of', () => {
  for (const [job, names] of namedJobs()) {
    const report = reportText(planRepair(job), { all: true }).replace(/\s+/g, ' ').toLowerCase()
    for (const name of names) expect(report).toContain(name)
  }
})

test('a field that nothing reads would be found out', () => {
  const group = fields.find(({ name }) => name === 'damage.kind')?.group
  const field = { path: 'kind', shape: 'choice', needed: true, title: '', description: '', allowed: '', example: '"broken"', values: ['broken'] } as const
  expect(group && actingOn({ name: 'damage.kind', group, field })).toBeNull()
})
