import { cardLines, JobError, planRepair, reportHtml, reportMarkdown, reportText } from '@strandwise/planner'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { anyJob } from '../../random/anyJob.ts'

const words = (text: string): number => text.split(/\s+/).filter((word) => word !== '').length

test('of random jobs every card keeps its size, every heading its length, and no report shows a hole', { timeout: 120_000 }, () => {
  let planned = 0
  fc.assert(
    fc.property(anyJob, (job) => {
      try {
        const plan = planRepair(job)
        planned += 1
        const card = cardLines(plan)
        expect(card.length).toBeLessThanOrEqual(14)
        expect(words(card.join(' '))).toBeLessThanOrEqual(130)
        for (const section of plan.sections) expect(section.says.length, section.says).toBeLessThanOrEqual(60)
        for (const print of [reportText, reportMarkdown, reportHtml]) expect(print(plan, { all: true })).not.toMatch(/NaN|Infinity|undefined|\{\w+\}/)
      } catch (error) {
        if (!(error instanceof JobError)) throw error
      }
    }),
    { numRuns: 60 },
  )
  expect(planned).toBeGreaterThan(10)
})
