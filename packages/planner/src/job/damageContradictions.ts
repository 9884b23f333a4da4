import type { AddIssue } from './jobError.ts'
import type { RepairJob } from './repairJob.ts'

const mmPerM = 1000

/** A break, dark copper, slack or a fuse outside the run that the job describes. */
export function damageContradictions({ circuit, damage, terminal, wire }: RepairJob, add: AddIssue): void {
  const back = damage.where === 'return'
  const field = back && wire.returnLengthM !== undefined ? 'returnLengthM' : 'outLengthM'
  const runM = (back ? wire.returnLengthM : undefined) ?? wire.outLengthM
  const mostMm = runM * mmPerM
  for (const key of ['fromTerminationMm', 'discolouredMm', 'slackMm'] as const) {
    const value = damage[key]
    if (value !== undefined && value > mostMm) add(`damage.${key}`, value, `at most ${mostMm} mm, the whole of ${field}`, `"${key}": ${mostMm}`)
  }
  if (circuit.fuseDistanceM !== undefined && circuit.fuseDistanceM > wire.outLengthM)
    add('circuit.fuseDistanceM', circuit.fuseDistanceM, `at most outLengthM, ${wire.outLengthM} m`, `"fuseDistanceM": ${wire.outLengthM}`)
  if (terminal?.studMm !== undefined && terminal.kind !== undefined && !onStud.has(terminal.kind))
    add('terminal.studMm', terminal.studMm, `no stud with a terminal of the kind ${terminal.kind}: only with ${[...onStud].join(', ')}`, '')
}

/** Kinds of terminal for a stud or screw. */
const onStud: ReadonlySet<string> = new Set(['ring', 'fork', 'cable-lug'])
