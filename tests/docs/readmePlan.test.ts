import { readFileSync } from 'node:fs'
import { bilgePumpFeed, planRepair, reportText } from '@strandwise/planner'
import { expect, test } from 'vitest'
import { root } from '../repository/tree.ts'
import { fencesIn } from './fences.ts'

test("README's shortened plan holds only lines that the command prints, in their order", () => {
  const printed = reportText(planRepair(bilgePumpFeed))
    .split('\n')
    .map((line) => line.trimEnd())
  const fence = fencesIn(readFileSync(`${root}README.md`, 'utf8')).find(({ text }) => text.startsWith('Bilge pump feed'))
  expect(fence, 'README.md shows the demo plan in a fenced block that begins with "Bilge pump feed"').toBeDefined()
  const lines = (fence?.text ?? '').split('\n').filter((line) => line !== '' && line !== '…')
  expect(lines.length).toBeGreaterThan(20)
  let from = 0
  for (const line of lines) {
    const at = printed.indexOf(line, from)
    expect(at, `not printed by "strandwise plan --demo bilge-pump-feed", at least not there: ${line}`).toBeGreaterThanOrEqual(0)
    from = at + 1
  }
})
