import { expect, test } from 'vitest'
import { planOrRefuse } from '../../random/planOrRefuse.ts'

// Four files share 10,000 jobs, so that they run side by side.
test('a random job over the whole schema is planned or refused as a job, part 4 of 4', { timeout: 600_000 }, () => {
  const { planned, refused } = planOrRefuse(2500, 4)
  // Neither side is empty.
  expect(Math.min(planned, refused)).toBeGreaterThan(250)
})
