import { expect, test } from 'vitest'
import { entries } from './entries.ts'
import { deepFreeze, evaluate, parseExample } from './example.ts'
import { differences } from './printed.ts'
import { functionOf, scope } from './scope.ts'

const examples = entries().flatMap((entry) =>
  entry.doc.examples.map((code, index) => ({ title: `${entry.package}/${entry.room} ${entry.name}, example ${index + 1}`, entry, code })),
)

test.each(examples)('$title gives what it prints, from frozen inputs', async ({ entry, code }) => {
  const example = parseExample(code)
  if (entry.kind === 'function') expect(example.callee, 'an example calls its own function').toBe(entry.name)
  expect(example.printed, 'an example prints its result behind "// "').toBeDefined()
  const inputs = evaluate(example.argumentsText, scope).map(deepFreeze)
  const got = await functionOf(example.callee)(...inputs)
  const found = differences(got, example.printed ?? '')
  expect(found.length, `${code}\n${found.join('\n')}`).toBe(0)
})
