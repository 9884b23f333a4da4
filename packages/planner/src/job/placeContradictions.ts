import { assumed } from './assumed.ts'
import type { AddIssue } from './jobError.ts'
import type { RepairJob } from './repairJob.ts'

/** Temperatures in the wrong order. */
export function placeContradictions(job: RepairJob, add: AddIssue): void {
  const { ambientC, hottestC, coldestC } = job.surroundings ?? {}
  if (ambientC !== undefined && hottestC !== undefined && hottestC < ambientC)
    add('surroundings.hottestC', hottestC, `at least ambientC, ${ambientC} °C`, `"hottestC": ${ambientC}`)
  if (ambientC !== undefined && coldestC !== undefined && coldestC > ambientC)
    add('surroundings.coldestC', coldestC, `at most ambientC, ${ambientC} °C`, `"coldestC": ${ambientC}`)
  if (hottestC !== undefined && coldestC !== undefined && coldestC > hottestC)
    add('surroundings.coldestC', coldestC, `at most hottestC, ${hottestC} °C`, `"coldestC": ${hottestC}`)
  terminalContradictions(job.terminal, add)
}

/** A terminal rated in air as hot as its limit; missing values are assumed if a rating is given. */
function terminalContradictions(terminal: RepairJob['terminal'], add: AddIssue): void {
  const { ratedCurrentA, ratedAmbientC = assumed.terminal.ratedAmbientC, limitC = assumed.terminal.limitC } = terminal ?? {}
  const bothSaid = terminal?.ratedAmbientC !== undefined && terminal.limitC !== undefined
  if ((ratedCurrentA === undefined && !bothSaid) || ratedAmbientC < limitC) return
  const assumes = terminal?.limitC === undefined ? `; where you do not say it, ${limitC} °C is assumed` : ''
  add('terminal.limitC', terminal?.limitC, `above ratedAmbientC, ${ratedAmbientC} °C${assumes}`, `"limitC": ${ratedAmbientC + 80}`)
}
