import { expect, test } from 'vitest'
import { NoSteadyStateError } from './noSteadyStateError.ts'

test('a runaway and a temperature above the ceiling have different codes, each with the largest current', () => {
  const runaway = new NoSteadyStateError('runaway', 12.3456, 1085)
  expect(runaway).toMatchObject({ name: 'NoSteadyStateError', code: 'runaway', cause: 'runaway', largestCurrentA: 12.3456, ceilingC: 1085 })
  expect(runaway.message).toContain('heating outruns cooling; up to 12.35 A')
  const hot = new NoSteadyStateError('ceiling', 12.3456, 1085)
  expect(hot).toMatchObject({ code: 'ceiling', cause: 'ceiling' })
  expect(hot.message).toContain('passes 1085 °C; up to 12.35 A')
})
