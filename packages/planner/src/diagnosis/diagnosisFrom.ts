import { type Chain, type CircuitInput, chainOf, type PlacedReading, takenReadings } from '../circuit/inner.ts'
import type { Finding } from '../facts/index.ts'
import type { Units } from '../facts/inner.ts'
import type { Place } from '../job/index.ts'
import { numbered } from './answerContext.ts'
import { answerTo } from './answers.ts'
import type { Diagnosis } from './diagnosisShapes.ts'
import { crossing, narrowest, type Proven, provenSpans, weakSupply } from './locate.ts'
import { amount, say } from './say.ts'
import { type JudgedStretch, stretchesOf } from './stretches.ts'
import { isLoadOpen, systemsOf } from './systems.ts'

/** The interval proof of the readings, with its finding and heading. */
export interface Proof {
  readonly diagnosis: Omit<Diagnosis, 'leading' | 'next'>
  readonly chain: Chain
  readonly summary: readonly Finding[]
}

const named = (chain: Chain, from: number, to: number) => ({
  from: chain.places[from] as Place,
  to: chain.places[to] as Place,
})

function provenFinding(units: Units, chain: Chain, proven: Proven): Finding {
  const names = named(chain, proven.from, proven.to)
  if (proven.kind === 'short') return say(units, 'short-proven', 'sound', { names })
  if (proven.kind === 'leak') return say(units, 'leak-proven', 'sound', { names })
  if (proven.kind === 'load') return say(units, 'load-proven', 'sound', { names })
  const values = { excess: amount('beyond healthy', proven.excessV, 'V') }
  return proven.kind === 'supply' ? say(units, 'supply-proven-weak', 'sound', { values }) : say(units, 'fault-proven', 'sound', { values, names })
}

const listed = (stretches: readonly JudgedStretch[]): string => stretches.map(({ from, to }) => `${from} to ${to}`).join(', ') || 'nothing'

/** Proof by intervals: stretches, the fault and its place, an answer to each reading. */
export function proofFrom(input: CircuitInput, units: Units, placed: readonly PlacedReading[]): Proof {
  const chain = chainOf(input)
  const readings = takenReadings(chain, placed)
  const systems = systemsOf(chain, readings)
  const context = { chain, units, readings, systems }
  const answered = readings.map((reading) => ({
    reading: reading.index,
    finding: answerTo(context, reading),
  }))
  const stretches = stretchesOf(chain, systems, readings)
  const weak = weakSupply(chain, systems, readings)
  const spans = [...provenSpans(chain, systems), ...crossing(chain, readings)]
  const load = readings.find((reading) => isLoadOpen(chain, reading))
  if (load !== undefined)
    spans.push({
      from: load.from,
      to: load.to,
      kind: 'load',
      excessV: input.supplyV,
      readings: [load.index],
    })
  const proven = narrowest(spans.length > 0 ? spans : weak === null ? [] : [weak])
  const read = stretches.filter((stretch) => stretch.read)
  const contradictions = systems.flatMap(({ bounds }) => (bounds.contradiction === null ? [] : [bounds.contradiction]))
  const none = proven === null && contradictions.length === 0 && read.length > 0 && read.every(({ verdict }) => verdict === 'passes')
  const summary: Finding[] = contradictions.map((which) =>
    say(units, 'contradictory', 'caution', {
      names: { which: numbered(which) },
    }),
  )
  if (proven !== null) {
    summary.unshift(provenFinding(units, chain, proven))
    if (weak !== null && proven !== weak) summary.push(provenFinding(units, chain, weak))
  } else if (none) {
    const unread = stretches.filter((stretch) => !stretch.read)
    summary.push(
      say(units, 'none-here', 'sound', {
        names: { read: listed(read), unread: listed(unread) },
      }),
    )
  } else summary.push(say(units, readings.length === 0 ? 'nothing-read' : 'not-shown', 'cannot tell'))
  return {
    chain,
    summary,
    diagnosis: {
      stretches: stretches.map(({ start: _start, end: _end, read: _read, ...stretch }) => stretch),
      fault: proven !== null ? 'proven' : none ? 'none here' : 'not shown',
      at: proven === null ? null : named(chain, proven.from, proven.to),
      answered,
    },
  }
}
