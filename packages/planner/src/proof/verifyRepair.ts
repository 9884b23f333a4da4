import { circuitInput, placedReading } from '../circuit/inner.ts'
import { jobFacts } from '../facts/inner.ts'
import { parseRepairJob, type RepairJob } from '../job/index.ts'
import { jointShape } from '../ways/inner.ts'
import { checksOf, type JudgedCheck, type RepairCheck } from './checks.ts'
import { type FoundReadings, parseFound } from './parseFound.ts'
import { type RepairRecord, recordFrom } from './repairRecord.ts'

/** Verdict on the finished repair, its checks and its record. */
export interface RepairProof {
  readonly verdict: 'proven' | 'not proven' | 'failed'
  readonly checks: readonly RepairCheck[]
  readonly record: RepairRecord
}

/** One failed check fails the repair; else each joint needs at least one check that proves it, and no contradictory readings. */
function verdictOf(checks: readonly JudgedCheck[], joints: readonly (1 | 2)[]): RepairProof['verdict'] {
  if (checks.some(({ verdict }) => verdict === 'fails')) return 'failed'
  if (checks.some(({ id }) => id.endsWith('against the others'))) return 'not proven'
  return joints.every((joint) => checks.some(({ proves, verdict }) => verdict === 'passes' && proves.includes(joint))) ? 'proven' : 'not proven'
}

/**
 * Judges a finished repair by its readings, and writes the record as found and as left.
 *
 * Proven is what a check with its interval shows; where the meter cannot tell, the repair is not proven. A joint is held to its own length of wire.
 *
 * @throws JobError where job or found file cannot be used, by field; the fields of the found file begin with "found"
 * @example
 * verifyRepair(bilgePumpFeed, { date: '2026-05-04', readings: [], ratio: [{ joint: 1, jointV: { low: 0.0011, high: 0.0013 }, wireV: { low: 0.0015, high: 0.0017 }, wireLengthMm: 25 }] }) // { verdict: 'proven' }
 */
export function verifyRepair(job: RepairJob, found: FoundReadings): RepairProof {
  const facts = jobFacts(parseRepairJob(job))
  const read = parseFound(found, facts.job, circuitInput(facts))
  const method = read.method ?? facts.job.intendedMethod ?? 'crimped-butt-splice'
  const jointMm = read.jointLengthMm ?? jointShape(method, facts).lengthMm
  const joints: readonly (1 | 2)[] = read.ratio?.some(({ joint }) => joint === 2) ? [1, 2] : [1]
  const judged = checksOf({ facts, found: read, method, jointMm, joints })
  const verdict = verdictOf(judged, joints)
  const checks = judged.map(({ proves: _proves, ...check }): RepairCheck => check)
  const placed = (facts.job.readings ?? []).map(placedReading)
  return {
    verdict,
    checks,
    record: recordFrom({ facts, found: read, placed, method, joints: method === 'replace-the-run' ? 0 : joints.length, jointMm, verdict, checks }),
  }
}
