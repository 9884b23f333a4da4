import type { Interval } from '@strandwise/core'
import type { Chain, TakenReading } from '../../circuit/inner.ts'
import type { JobReading, Place, ReadingKind } from '../../job/index.ts'
import type { CauseId, Probe } from '../diagnosisShapes.ts'
import type { Fit, Fitter } from './fit.ts'
import type { Ask } from './model.ts'
import { intervalOf, type Predicted, predictAll } from './predict.ts'

type State = readonly [load: JobReading['load'], when: 'still' | 'moved']

/** Least separation at which a probe is worth taking. */
const leastSeparation = 0.05

/** Readings possible with a hand meter, in a technician's order. */
function probes(chain: Chain): readonly Probe[] {
  const feed = chain.input.where === 'feed'
  const found: Probe[] = []
  const add = (kind: ReadingKind, spans: readonly (readonly [Place, Place])[], states: readonly State[]) => {
    for (const [load, when] of states) for (const [from, to] of spans) found.push({ kind, from, to, load, ...(when === 'moved' ? { when } : {}) })
  }
  const on: State = ['on', 'still']
  const moved: State = ['on', 'moved']
  const behind: readonly (readonly [Place, Place])[] = feed ? [['joint-out', 'terminal-wire']] : [['load-', 'joint-in']]
  add(
    'voltage',
    [
      ['load+', 'load-'],
      ['source+', 'source-'],
    ],
    [on],
  )
  add(
    'drop',
    [
      ['source+', 'load+'],
      ['load-', 'source-'],
      ['joint-in', 'joint-out'],
      ['terminal-wire', 'terminal-mate'],
      ['fuse-in', 'fuse-out'],
      ['source+', 'fuse-in'],
    ],
    [on],
  )
  add('drop', feed ? [['fuse-out', 'joint-in'], ...behind] : [['fuse-out', 'terminal-wire'], ['joint-out', 'source-'], ...behind], [on])
  add(
    'voltage',
    [
      ['fuse-out', 'source-'],
      ['terminal-wire', 'source-'],
      ['load+', 'source-'],
    ],
    [on],
  )
  add('drop', [['joint-in', 'joint-out'], ['terminal-wire', 'terminal-mate'], ...behind], [moved])
  add('voltage', [['load+', 'load-']], [moved])
  add('current', [['source+', 'fuse-in']], [on])
  add(
    'voltage',
    [
      ['load+', 'source-'],
      ['source+', 'source-'],
    ],
    [['off', 'still']],
  )
  add(
    'resistance',
    [
      ['load+', 'load-'],
      ['load+', 'source-'],
    ],
    [['unplugged', 'still']],
  )
  add('insulation', [['load+', 'source-']], [['unplugged', 'still']])
  return found
}

function asked(chain: Chain, probe: Probe): Ask {
  const dead = probe.kind === 'resistance' || probe.kind === 'insulation'
  return {
    kind: probe.kind,
    state: dead ? 'dead' : probe.load === 'on' ? 'on' : 'off',
    when: probe.when ?? 'still',
    from: chain.places.indexOf(probe.from),
    to: chain.places.indexOf(probe.to),
    currentA: null,
    airC: chain.input.ambientC,
  }
}

/** True if a reading of the same places in the same state exists. */
function taken(readings: readonly TakenReading[], { kind, state, when, from, to }: Ask): boolean {
  return readings.some(
    (reading) =>
      reading.state === state &&
      reading.when === when &&
      reading.from === from &&
      reading.to === to &&
      (state === 'dead' || (reading.kind === 'current') === (kind === 'current')),
  )
}

/** Standard uncertainty of a hand meter on a suitable range: volts 0.8 % and 2 mV, amperes 2 % and 30 mA; ohms 0.3 Ω of leads and digits. */
function meterDeviation({ kind, state }: Ask, { mean }: Predicted): number {
  if (state === 'dead') return kind === 'insulation' ? 0.1 : Math.hypot(0.01, 0.25 / Math.max(0.25, Math.exp(mean)))
  const bound = kind === 'current' ? 0.02 * Math.abs(mean) + 0.03 : 0.008 * Math.abs(mean) + 0.002
  return bound / Math.sqrt(3)
}

/** Bhattacharyya coefficient of two normal distributions: 1 if equal, towards 0 if apart. */
function overlap(one: { readonly mean: number; readonly deviation: number }, other: { readonly mean: number; readonly deviation: number }): number {
  const sum = one.deviation ** 2 + other.deviation ** 2
  if (!(sum > 0)) return one.mean === other.mean ? 1 : 0
  return Math.sqrt((2 * one.deviation * other.deviation) / sum) * Math.exp(-((one.mean - other.mean) ** 2) / (4 * sum))
}

/** The probe that best separates the leading causes, with the prediction of each. */
export function bestProbe(
  chain: Chain,
  fitter: Fitter,
  leading: readonly Fit[],
  readings: readonly TakenReading[],
): { readonly probe: Probe; readonly expected: Readonly<Partial<Record<CauseId, Interval>>> } | null {
  if (leading.length < 2) return null
  const open = probes(chain)
    .map((probe) => ({ probe, ask: asked(chain, probe) }))
    .filter(({ ask }) => ask.from >= 0 && ask.to >= 0 && !taken(readings, ask))
  const asks = open.map(({ ask }) => ask)
  const shown = leading.map((fit) => predictAll(fitter, fit, asks))
  const least = leading[0]?.cost ?? 0
  const weights = leading.map(({ cost }) => Math.exp(least - cost))
  let best: { readonly index: number; readonly separation: number } | null = null
  for (let n = 0; n < asks.length; n += 1) {
    const ask = asks[n] as Ask
    const met = shown.map((predicted) => {
      const one = predicted[n] as Predicted
      return { mean: one.mean, deviation: Math.hypot(one.deviation, meterDeviation(ask, one)) }
    })
    let apart = 0
    let pairs = 0
    for (let i = 0; i < met.length; i += 1)
      for (let j = i + 1; j < met.length; j += 1) {
        const weight = (weights[i] as number) * (weights[j] as number)
        apart += weight * (1 - overlap(met[i] as Predicted, met[j] as Predicted))
        pairs += weight
      }
    const separation = pairs > 0 ? apart / pairs : 0
    if (separation >= leastSeparation && (best === null || separation > best.separation + 1e-3)) best = { index: n, separation }
  }
  if (best === null) return null
  const { index } = best
  const expected: Partial<Record<CauseId, Interval>> = {}
  leading.forEach((fit, n) => {
    expected[fit.candidate.id] = intervalOf(shown[n]?.[index] as Predicted)
  })
  return { probe: (open[index] as (typeof open)[number]).probe, expected }
}
