import { rmSync, writeFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { withShared } from '../docs/complete.ts'
import { entriesOf, sourceProgram } from '../docs/extract.ts'
import { readTree, root } from './tree.ts'
import { madeWorkings } from './workings.ts'

const read = entriesOf(sourceProgram())
const made = madeWorkings(
  read.map((entry) => withShared(entry, read)),
  readTree(),
)

describe('the workings that docstrings give', () => {
  test('are up to date, and none stands that no docstring gives', () => {
    const old = readTree().filter(({ path }) => path.endsWith('/fromDocstrings.ts') && !made.some((one) => one.path === path))
    if (process.env.STRANDWISE_UPDATE_API === '1') {
      for (const { path, text } of made) writeFileSync(root + path, text)
      for (const { path } of old) rmSync(root + path)
    }
    const now = new Map(readTree().map(({ path, text }) => [path, text]))
    const stale = made.filter(({ path, text }) => now.get(path) !== text).map(({ path }) => path)
    expect([...stale, ...old.filter(({ path }) => now.has(path))], 'run "npm test -- --update-api" and review the difference').toEqual([])
  })

  test('hold wireSagMm: its constant from core, its lengths in the units of its fields', () => {
    const text = made.find(({ path }) => path.endsWith('routing/fromDocstrings.ts'))?.text ?? ''
    expect(text).toContain("of: () => standardGravityMPerS2, meaning: 'standard gravity'")
    expect(text).toContain("expression: 'm * g * L^2/(8 * T)/1000'")
  })
})
