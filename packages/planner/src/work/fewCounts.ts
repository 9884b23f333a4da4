import { type PlanValue, planValue } from '../facts/inner.ts'

/** One count of a hand meter's millivolt range. */
const millivoltCountV = 0.0001
/** Counts that a limit must have for a hand meter to judge by it: ours. */
const leastCounts = 10

/** The current at which a joint's limit has enough counts of a hand meter; null if it has them at the load's own current. */
export function currentToRead(limitV: number, currentA: number): PlanValue | null {
  const leastV = leastCounts * millivoltCountV
  return limitV >= leastV ? null : planValue('known current', Math.ceil((currentA * leastV) / limitV), 'A')
}
