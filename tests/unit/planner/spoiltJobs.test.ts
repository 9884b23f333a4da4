import { expect, test } from 'vitest'
import { spoiltJobs } from '../../random/spoiltJobs.ts'

test('a demo job spoilt in a few places is planned with finite numbers or refused by field', { timeout: 300_000 }, () => {
  const { planned, refused, wrong } = spoiltJobs(1000, 1)
  expect(wrong).toEqual([])
  // Both outcomes are common.
  expect(Math.min(planned, refused)).toBeGreaterThan(50)
})
