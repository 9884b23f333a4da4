import type { Interval } from '@strandwise/core'
import type { Chain, TakenReading } from '../circuit/inner.ts'
import type { Finding, PlanValue, PlanVerdict } from '../facts/index.ts'
import { findingOf, planValue, type Units } from '../facts/inner.ts'
import { readingsWords } from './readingsWords.ts'

const absoluteZeroC = -273.15

type ReadingCode = keyof typeof readingsWords

interface Saying {
  readonly values?: Readonly<Record<string, PlanValue>>
  readonly names?: Readonly<Record<string, string>>
  readonly rule?: string
}

/** Unit of each kind of reading. */
export const unitOf = {
  drop: 'V',
  voltage: 'V',
  resistance: 'Ω',
  'four-wire': 'Ω',
  insulation: 'Ω',
  current: 'A',
  temperature: '°C',
} as const

/** An interval as a value of a finding; a small negative end is shown as 0. */
export function intervalValue(name: string, { low, high }: Interval, unit: string, clip = true): PlanValue {
  const [from, to] = clip ? [Math.max(0, low), Math.max(0, high)] : [low, high]
  return planValue(name, (from + to) / 2, unit, undefined, {
    low: from,
    high: to,
  })
}

export const amount = (name: string, value: number, unit: string): PlanValue => planValue(name, value, unit)

/** "joint-in to joint-out, while moved". */
export function spanOf(chain: Chain, { from, to, when }: Pick<TakenReading, 'from' | 'to' | 'when'>): string {
  return `${chain.places[from]} to ${chain.places[to]}${when === 'moved' ? ', while moved' : ''}`
}

/** The reading's interval as a value; "more than" the range if the meter was over range. */
export function measuredOf(reading: TakenReading): PlanValue {
  const unit = unitOf[reading.kind]
  if (reading.overRange) return planValue('measured, at least', reading.low, unit)
  if (reading.kind !== 'temperature') return intervalValue('measured', reading, unit)
  // A coarse thermometer's interval ends at absolute zero.
  return intervalValue('measured', { low: Math.max(absoluteZeroC, reading.low), high: Math.max(absoluteZeroC, reading.high) }, unit, false)
}

export function say(units: Units, code: ReadingCode, verdict: PlanVerdict, saying: Saying = {}): Finding {
  return findingOf(readingsWords, units, code, verdict, saying)
}
