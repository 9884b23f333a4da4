import { type PlanVerdict, verdicts } from './finding.ts'

/** The worst of several verdicts; sound if none. */
export function worst(...found: readonly PlanVerdict[]): PlanVerdict {
  return verdicts[Math.max(0, ...found.map((verdict) => verdicts.indexOf(verdict)))] ?? 'sound'
}

/** Comparison for a sort, worst first. */
export function bySeverity(one: PlanVerdict, other: PlanVerdict): number {
  return verdicts.indexOf(other) - verdicts.indexOf(one)
}
