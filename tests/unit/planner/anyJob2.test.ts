import { expect, test } from 'vitest'
import { planOrRefuse } from '../../random/planOrRefuse.ts'

// 400 jobs in four files, to run in parallel.
test('a random job over the whole schema is planned or refused as a job, part 2 of 4', { timeout: 600_000 }, () => {
  const { planned, refused } = planOrRefuse(100, 2)
  // Both outcomes are common.
  expect(Math.min(planned, refused)).toBeGreaterThan(10)
})
