import { expect, test } from 'vitest'
import { rule } from './rule.ts'

const sources = import.meta.glob<string>('../{facts,circuit,diagnosis,ways,decision,work,proof,report}/*.ts', { query: '?raw', import: 'default', eager: true })

test('every rule id in the planner’s sources is one of core’s rules', () => {
  const ids = Object.entries(sources)
    .filter(([file]) => !file.endsWith('.test.ts'))
    .flatMap(([, text]) => [...text.matchAll(/'((?:rd|wp|cb|me|jg|he|co|sr|pr|ca)-[a-z0-9-]+)'/g)].map((match) => match[1] ?? ''))
  expect(new Set(ids).size).toBeGreaterThan(40)
  for (const id of ids) expect(rule(id).statement.length, id).toBeGreaterThan(20)
})

test('an unknown id is a programming error that names the id', () => {
  expect(() => rule('zz-none')).toThrow(/zz-none/)
})
