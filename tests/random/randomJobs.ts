import { expect, test } from 'vitest'
import { planOrRefuse } from './planOrRefuse.ts'

/** Random jobs of `npm test`; the long proof draws ten times as many. */
const jobs = 10_000
/** Files that share them, to run beside one another. */
const parts = 4

/** The test of one part; each part has a file of its own and another seed. */
export function testRandomJobs(part: number): void {
  test(`random jobs over the whole schema are planned or refused as jobs, part ${part} of ${parts}`, { timeout: 600_000 }, () => {
    const { planned, refused } = planOrRefuse(jobs / parts, part)
    // Both outcomes are common.
    expect(Math.min(planned, refused)).toBeGreaterThan(jobs / parts / 5)
  })
}
