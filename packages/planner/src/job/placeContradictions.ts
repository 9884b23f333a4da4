import { assumed } from './assumed.ts'
import type { AddIssue } from './jobError.ts'
import type { RepairJob } from './repairJob.ts'

/** Temperatures in the wrong order, and readings that nobody could take. */
export function placeContradictions(job: RepairJob, add: AddIssue): void {
  const { ambientC, hottestC, coldestC } = job.surroundings ?? {}
  if (ambientC !== undefined && hottestC !== undefined && hottestC < ambientC)
    add('surroundings.hottestC', hottestC, `at least ambientC, ${ambientC} °C`, `"hottestC": ${ambientC}`)
  if (ambientC !== undefined && coldestC !== undefined && coldestC > ambientC)
    add('surroundings.coldestC', coldestC, `at most ambientC, ${ambientC} °C`, `"coldestC": ${ambientC}`)
  if (hottestC !== undefined && coldestC !== undefined && coldestC > hottestC)
    add('surroundings.coldestC', coldestC, `at most hottestC, ${hottestC} °C`, `"coldestC": ${hottestC}`)
  terminalContradictions(job.terminal, add)
  for (const [index, reading] of (job.readings ?? []).entries()) {
    if (reading.from === reading.to) add(`readings.${index}.to`, reading.to, 'another place than from', '"to": "joint-out"')
    if (reading.kind === 'drop' && reading.load === 'off') add(`readings.${index}.load`, reading.load, 'on: a drop is read with the load on', '"load": "on"')
    if (reading.kind === 'resistance' && reading.load === 'on')
      add(`readings.${index}.load`, reading.load, 'off: ohms are read on a dead circuit', '"load": "off"')
  }
}

/** A terminal whose rating holds in air as hot as its limit; what is not said of it is assumed where a rating is given. */
function terminalContradictions(terminal: RepairJob['terminal'], add: AddIssue): void {
  const { ratedCurrentA, ratedAmbientC = assumed.terminal.ratedAmbientC, limitC = assumed.terminal.limitC } = terminal ?? {}
  const bothSaid = terminal?.ratedAmbientC !== undefined && terminal.limitC !== undefined
  if ((ratedCurrentA === undefined && !bothSaid) || ratedAmbientC < limitC) return
  const assumes = terminal?.limitC === undefined ? `; where you do not say it, ${limitC} °C is assumed` : ''
  add('terminal.limitC', terminal?.limitC, `above ratedAmbientC, ${ratedAmbientC} °C${assumes}`, `"limitC": ${ratedAmbientC + 80}`)
}
