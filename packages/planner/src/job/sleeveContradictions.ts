import type { AddIssue } from './jobError.ts'
import type { RepairJob } from './repairJob.ts'

/** Least recovered over supplied inside; 1/6 is the smallest in common use. Common practice, no published source. */
const leastRecoveredShare = 0.1

/** Impossible dimensions of a sleeve. */
export function sleeveContradictions(job: RepairJob, add: AddIssue): void {
  const sleeves = [
    ...(job.sleeves ?? []).map((sleeve, index) => [`sleeves.${index}`, sleeve] as const),
    ...(job.solderSleeve ? [['solderSleeve.tube', job.solderSleeve.tube] as const] : []),
  ]
  for (const [path, { suppliedInsideMm, recoveredInsideMm, recoveredWallMm, adhesiveWallMm }] of sleeves) {
    const example = `"recoveredInsideMm": ${suppliedInsideMm / 2}`
    if (recoveredInsideMm >= suppliedInsideMm) add(`${path}.recoveredInsideMm`, recoveredInsideMm, `below suppliedInsideMm, ${suppliedInsideMm} mm`, example)
    if (recoveredInsideMm < leastRecoveredShare * suppliedInsideMm)
      add(`${path}.recoveredInsideMm`, recoveredInsideMm, `at least a tenth of suppliedInsideMm, ${suppliedInsideMm} mm: no tube shrinks further`, example)
    if (adhesiveWallMm !== undefined && adhesiveWallMm >= recoveredWallMm)
      add(`${path}.adhesiveWallMm`, adhesiveWallMm, `below recoveredWallMm, ${recoveredWallMm} mm`, `"adhesiveWallMm": ${recoveredWallMm / 2}`)
  }
}
