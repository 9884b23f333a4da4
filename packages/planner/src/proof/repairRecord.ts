import type { MethodName, Provenance } from '@strandwise/core'
import type { PlacedReading } from '../circuit/inner.ts'
import type { CauseId } from '../diagnosis/index.ts'
import { diagnosisOf } from '../diagnosis/inner.ts'
import { figure, type JobFacts, rule } from '../facts/inner.ts'
import type { Place } from '../job/index.ts'
import { isSoldered } from '../ways/inner.ts'
import { samplePull } from '../work/inner.ts'
import type { RepairCheck } from './checks.ts'
import type { FoundReadings } from './parseFound.ts'

/** A reading in the record, with its interval and unit. */
interface RecordedReading {
  readonly kind: PlacedReading['kind']
  readonly from: Place
  readonly to: Place
  readonly load: PlacedReading['load']
  readonly when: 'still' | 'moved'
  readonly low: number
  readonly high: number
  readonly unit: string
  readonly currentA: number | null
}

/** Record of the repair as found and as left, to keep and sign. */
export interface RepairRecord extends Readonly<Record<string, unknown>> {
  readonly record: 'strandwise repair'
  readonly version: 1
  readonly date: string
  readonly title: string | null
  readonly units: 'metric' | 'inch' | 'both'
  readonly verdict: 'proven' | 'not proven' | 'failed'
  readonly circuit: {
    readonly kind: string
    readonly supplyV: number
    readonly currentA: number
    readonly fuseA: number | null
    readonly wire: string
    readonly insulation: string
  }
  readonly work: {
    readonly method: MethodName
    readonly joints: number
    readonly jointLengthMm: number
    readonly repair: 'permanent' | 'temporary'
    readonly place: string | null
    readonly cause: string | null
    readonly tool: string | null
    readonly consumables: string | null
    readonly by: string | null
  }
  readonly asFound: {
    readonly damage: string
    readonly readings: readonly RecordedReading[]
    readonly fault: string
    readonly at: { readonly from: Place; readonly to: Place } | null
    readonly leading: readonly CauseId[]
  }
  readonly asLeft: { readonly readings: readonly RecordedReading[]; readonly ratio: FoundReadings['ratio'] | null; readonly checks: readonly RepairCheck[] }
  readonly lookAgain: readonly { readonly what: string; readonly by: string | null }[]
  readonly tables: readonly Provenance[]
}

const units: Readonly<Record<PlacedReading['kind'], string>> = {
  drop: 'V',
  voltage: 'V',
  resistance: 'Ω',
  'four-wire': 'Ω',
  insulation: 'Ω',
  current: 'A',
  temperature: '°C',
}

const recorded = ({ kind, from, to, load, when = 'still', low, high, currentA }: PlacedReading): RecordedReading => ({
  kind,
  from,
  to,
  load,
  when,
  low,
  high,
  unit: units[kind],
  currentA: currentA ?? null,
})

/** Days until a temporary repair is renewed, and a permanent one measured again: common practice of ours. */
const renewDays = { temporary: 90, permanent: 365 } as const
const dayMs = 86_400_000

const dayAfter = (date: string, days: number): string => new Date(Date.parse(`${date}T00:00:00Z`) + days * dayMs).toISOString().slice(0, 10)

function lookAgain(repair: 'permanent' | 'temporary', date: string): RepairRecord['lookAgain'] {
  const ratio = figure('pr-mv-splice', 'agedMaxRatio')
  const minutes = Math.round(figure('pr-first-look-again', 'againAfterS') / 60)
  return [
    { what: `Look and feel after the first ${minutes} minutes of use, and after the first rain or trip.`, by: null },
    repair === 'temporary'
      ? { what: 'Renew it: this repair is temporary.', by: dayAfter(date, renewDays.temporary) }
      : { what: `Read the joint against its wire again: make it anew from ${ratio} times on.`, by: dayAfter(date, renewDays.permanent) },
  ]
}

const unique = (sources: readonly Provenance[]): readonly Provenance[] => [...new Map(sources.map((source) => [JSON.stringify(source), source])).values()]

interface RecordParts {
  readonly facts: JobFacts
  readonly found: FoundReadings
  readonly placed: readonly PlacedReading[]
  readonly method: MethodName
  readonly joints: number
  readonly jointMm: number
  readonly verdict: RepairRecord['verdict']
  readonly checks: readonly RepairCheck[]
}

/** Builds the record; the caller supplies the date. */
export function recordFrom({ facts, found, placed, method, joints, jointMm, verdict, checks }: RecordParts): RepairRecord {
  const { job } = facts
  const { diagnosis } = diagnosisOf(facts)
  const repair = job.repair ?? 'permanent'
  const pull = isSoldered(method) || method === 'replace-the-run' ? null : samplePull(facts)
  return {
    record: 'strandwise repair',
    version: 1,
    date: found.date,
    title: job.title ?? null,
    units: job.units ?? 'metric',
    verdict,
    circuit: {
      kind: job.circuit.kind,
      supplyV: facts.supplyV,
      currentA: facts.currentA,
      fuseA: job.circuit.fuseA ?? null,
      wire: facts.sizeText,
      insulation: facts.insulationName,
    },
    work: {
      method,
      joints,
      jointLengthMm: jointMm,
      repair,
      place: found.place ?? null,
      cause: found.cause ?? null,
      tool: found.tool ?? null,
      consumables: found.consumables ?? null,
      by: found.by ?? null,
    },
    asFound: {
      damage: job.damage.kind,
      readings: placed.map(recorded),
      fault: diagnosis.fault,
      at: diagnosis.at,
      leading: placed.length === 0 ? [] : diagnosis.leading,
    },
    asLeft: { readings: found.readings.map(recorded), ratio: found.ratio ?? null, checks },
    lookAgain: lookAgain(repair, found.date),
    tables: unique([
      ...['pr-mv-splice', 'pr-light-tug', 'pr-temperature-rise', 'pr-load-test-time', 'pr-record', 'pr-first-look-again'].map((id) => rule(id).source),
      ...(pull === null ? [] : [pull.source]),
    ]),
  }
}
