import { chainOf, circuitInput, placedReading, takenReadings } from '../circuit/inner.ts'
import { jobFacts } from '../facts/inner.ts'
import { JobError, parseRepairJob, type RepairJob } from '../job/index.ts'
import { type CauseRanking, defaultCoverage, rankFrom } from './causes/rankFrom.ts'

/**
 * Causes of a fault ranked by fit to the readings, the leading set, and the next reading that best separates it.
 *
 * Each cause is a fault in the same circuit with its size left open; causes count as equally likely before the readings. Differences of the logarithm of likelihood speak, not its value.
 *
 * @throws JobError where the job is not one that parseRepairJob would return, or coverage is not above 0 and below 1
 * @example
 * rankCauses(bilgePumpFeed, { coverage: 0.95 }) // { leading: ['fracture-in-contact', 'dry-joint'] }
 */
export function rankCauses(job: RepairJob, options: { readonly coverage?: number } = {}): CauseRanking {
  const { coverage = defaultCoverage } = options
  if (!(coverage > 0 && coverage < 1))
    throw new JobError([{ path: 'options.coverage', value: coverage, allowed: 'above 0 and below 1', example: '"coverage": 0.95' }])
  const facts = jobFacts(parseRepairJob(job))
  const chain = chainOf(circuitInput(facts))
  const placed = (facts.job.readings ?? []).map(placedReading)
  return rankFrom(chain, takenReadings(chain, placed), placed, coverage)
}
