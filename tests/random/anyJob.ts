import { demoJobs } from '@strandwise/planner/demo'
import type { RepairJob } from '@strandwise/planner/job'
import fc from 'fast-check'
import { type Change, changed, formFields, least } from './changedJob.ts'

/** Evenly from 0 below 1: fast-check prefers the ends of a range. */
const share = fc.noBias(fc.nat({ max: 2 ** 30 - 1 })).map((whole) => whole / 2 ** 30)

const change: fc.Arbitrary<Change> = fc.record({
  place: fc.constantFrom(...formFields),
  how: fc.constantFrom('near', 'near', 'anywhere', 'anywhere', 'anywhere', 'end', 'written', 'gone'),
  factor: fc.double({ min: -0.5, max: 0.5, noNaN: true }).map((power) => 10 ** power),
  share,
  entry: fc.nat({ max: 11 }),
})

/** Wire in air hotter than most models' range. */
const hotWire = fc
  .record({
    insulation: fc.constantFrom('PTFE' as const, 'FEP' as const, 'silicone' as const, 'ETFE' as const),
    hottestC: fc.double({ min: 120, max: 200, noNaN: true }),
  })
  .map(
    ({ insulation, hottestC }) =>
      (job: RepairJob): RepairJob => ({
        ...job,
        wire: { ...job.wire, insulation, material: 'annealed-copper' },
        surroundings: { ...job.surroundings, hottestC },
      }),
  )
const asItIs = (job: RepairJob): RepairJob => job

/** A random job with valid fields, near a demo job or the minimal job, with up to thirty answers changed, added or removed. */
export const anyJob: fc.Arbitrary<RepairJob> = fc
  .tuple(
    fc.constantFrom(least, ...Object.values(demoJobs)),
    fc.oneof({ weight: 2, arbitrary: fc.array(change, { minLength: 1, maxLength: 6 }) }, { weight: 1, arbitrary: fc.array(change, { maxLength: 30 }) }),
    fc.oneof({ weight: 5, arbitrary: fc.constant(asItIs) }, { weight: 1, arbitrary: hotWire }),
  )
  .map(([start, changes, finish]) => finish(changed(start, changes)))
