import type { Interval } from '@strandwise/core'
import type { PlacedReading } from '../circuit/inner.ts'
import type { Finding, PlanValue } from '../facts/index.ts'
import { filled, type Units } from '../facts/inner.ts'
import type { CauseRanking } from './causes/rankFrom.ts'
import { causeWords } from './causeWords.ts'
import type { Proof } from './diagnosisFrom.ts'
import type { CauseId, Diagnosis, Probe } from './diagnosisShapes.ts'
import { intervalValue, say, unitOf } from './say.ts'

const whats: Readonly<Record<Probe['kind'], string>> = {
  drop: 'the drop',
  voltage: 'the volts',
  resistance: 'the ohms',
  'four-wire': 'the ohms with four wires',
  insulation: 'the insulation',
  current: 'the current with a clamp',
  temperature: 'the temperature',
}
const states: Readonly<Record<Probe['load'], string>> = { on: 'load on', off: 'load off', unplugged: 'source off and load unplugged' }

const named = ({ kind, from, to, load, when }: Probe) => ({
  what: whats[kind],
  span: `${from} to ${to}`,
  state: `${states[load]}${when === 'moved' ? ', while you move the lead' : when === 'still' || kind !== 'drop' ? '' : ', lead still'}`,
})

/** Most predictions listed; causes with equal predictions share one. */
const mostTold = 4

/** Prediction of the next reading under each leading cause. */
function expectation(
  expected: Readonly<Partial<Record<CauseId, Interval>>>,
  unit: string,
): { readonly text: string; readonly values: Readonly<Record<string, PlanValue>> } {
  const entries = Object.entries(expected) as readonly (readonly [CauseId, Interval])[]
  const values = Object.fromEntries(entries.map(([id, interval]) => [id.replaceAll('-', '_'), intervalValue(causeWords[id], interval, unit)]))
  const told = entries.slice(0, mostTold).map(([id]) => `{${id.replaceAll('-', '_')}} means ${causeWords[id]}`)
  return { text: told.length === 0 ? '' : `${told.join('; ')}.`, values }
}

/** Finding on the probe that separates the leading causes, with the prediction of each. */
function nextFinding(units: Units, next: NonNullable<CauseRanking['next']>): Finding {
  const { text, values } = expectation(next.expected, unitOf[next.probe.kind])
  return say(units, 'next-probe', 'sound', { values, names: { ...named(next.probe), expects: filled(text, { values }, units) } })
}

/** If no probe separates them: the contradictory reading again, else the first undecided stretch. */
function plainNext(units: Units, { answered, fault, stretches }: Proof['diagnosis'], placed: readonly PlacedReading[]): Diagnosis['next'] {
  const again = answered.find(({ finding }) => finding.code === 'reading-contradicts')
  const reading = again === undefined ? undefined : placed[again.reading]
  if (reading !== undefined) {
    const { kind, from, to, load, when } = reading
    const probe: Probe = { kind, from, to, load, ...(when === undefined ? {} : { when }) }
    return { probe, finding: say(units, 'next-again', 'sound', { names: named(probe) }) }
  }
  const untold = fault === 'not shown' ? stretches.find(({ verdict }) => verdict === 'cannot tell') : undefined
  if (untold === undefined) return null
  const probe: Probe = { kind: 'drop', from: untold.from, to: untold.to, load: 'on' }
  return { probe, finding: say(units, 'next-any', 'sound', { names: named(probe) }) }
}

/** The next reading: the one that best separates the leading causes, else the plainest missing one. */
export function nextReading(units: Units, proof: Proof, ranking: Pick<CauseRanking, 'leading' | 'next'>, placed: readonly PlacedReading[]): Diagnosis['next'] {
  const contradictory = proof.diagnosis.answered.some(({ finding }) => finding.code === 'reading-contradicts')
  if (ranking.next === null || contradictory) return plainNext(units, proof.diagnosis, placed)
  return { probe: ranking.next.probe, finding: nextFinding(units, ranking.next) }
}

export const listedCauses = (leading: Diagnosis['leading']): string => leading.map((id) => causeWords[id]).join('; ')
