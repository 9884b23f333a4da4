import { printedValue } from '../facts/inner.ts'
import type { RepairPlan } from './repairPlan.ts'

/** The places of a probe as a hand finds them. */
const placeWords: Readonly<Record<string, string>> = {
  'source+': 'the source’s plus post',
  'fuse-in': 'the fuse’s clip towards the source',
  'fuse-out': 'the fuse’s clip towards the load',
  'joint-in': 'bare metal before the joint',
  'joint-out': 'bare metal behind the joint',
  'terminal-wire': 'the wire side of the terminal',
  'terminal-mate': 'the part that the terminal mates with',
  'load+': 'the load’s plus',
  'load-': 'the load’s minus',
  'return-joint': 'the return’s connection to the frame',
  'source-': 'the source’s minus post',
}

/** Causes told with their ranges. */
const told = 2

/** Where the probes of the next reading go, and what the two likeliest causes would show there. */
export function measureLines({ decision, diagnosis, units }: RepairPlan): readonly string[] {
  const { next } = diagnosis
  if (decision.kind !== 'measure first' || next === null) return []
  const { from, to } = next.probe
  const spots = from === to ? `Place: ${placeWords[from]} (${from}).` : `Probes: ${placeWords[from]} (${from}) and ${placeWords[to]} (${to}).`
  const causes = Object.values(next.finding.values)
    .filter(({ low, high }) => low !== undefined && high !== undefined)
    .slice(0, told)
  const [one, other] = causes
  const overlap =
    one?.low !== undefined && one.high !== undefined && other?.low !== undefined && other.high !== undefined && one.low <= other.high && other.low <= one.high
  return [
    spots,
    ...causes.map((cause) => `${printedValue(cause, units)}: ${cause.name}.`),
    ...(overlap ? ['The two ranges overlap: a reading inside both tells neither.'] : []),
  ]
}
