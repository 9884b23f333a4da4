import { type PlanVerdict, verdicts } from './repairPlan.ts'

/** The worst of several verdicts; sound where there is none. */
export function worst(...found: readonly PlanVerdict[]): PlanVerdict {
  return verdicts[Math.max(0, ...found.map((verdict) => verdicts.indexOf(verdict)))] ?? 'sound'
}
