import type { Interval, MethodName, ProofVerdict } from '@strandwise/core'
import { type Chain, chainOf, circuitInput, deadWarmth, healthyOhm, type TakenReading, takenReadings, warmthAt } from '../circuit/inner.ts'
import { proofFrom } from '../diagnosis/inner.ts'
import { figure, type JobFacts, rule } from '../facts/inner.ts'
import { isSoldered } from '../ways/inner.ts'
import { samplePull, settlingS } from '../work/inner.ts'
import type { FoundReadings } from './parseFound.ts'

/** One check of the finished repair: measured value, limit, verdict. */
export interface RepairCheck {
  readonly id: string
  readonly verdict: ProofVerdict
  readonly low?: number
  readonly high?: number
  readonly limit: number
  readonly unit: string
}

/** A check, and the joints that it can prove by itself. */
export interface JudgedCheck extends RepairCheck {
  /** Joints that it proves; empty if it only supports the proof. */
  readonly proves: readonly (1 | 2)[]
}

interface ProofContext {
  readonly facts: JobFacts
  readonly found: FoundReadings
  readonly method: MethodName
  readonly jointMm: number
  readonly joints: readonly (1 | 2)[]
}

/** Passes where the high end is within the limit, fails where the low end is above it. */
const atMost = ({ low, high }: Interval, limit: number): ProofVerdict => (high <= limit ? 'passes' : low > limit ? 'fails' : 'cannot tell')

/** A drop below this share of the joint's own length of wire is an error of the meter's zero, and proves nothing. */
const leastShare = 0.1
const jointVerdict = (found: Interval, limit: number): ProofVerdict => (found.high < leastShare * limit ? 'cannot tell' : atMost(found, limit))

/** Drop over the joint against the same length of plain wire at one moment: current and temperature cancel. */
function ratioChecks({ found }: ProofContext): readonly JudgedCheck[] {
  return (found.ratio ?? []).map(({ joint, jointV, wireV }) => {
    // The probes span the same distance on the wire as over the joint, so plain wire counts on both sides.
    const limit = figure('pr-mv-splice', 'newMaxRatio')
    const low = jointV.low / Math.max(wireV.high, Number.MIN_VALUE)
    const id = `ratio joint ${joint}`
    if (!(wireV.low > 0))
      return { id, verdict: low > limit && wireV.high > 0 ? 'fails' : 'cannot tell', ...(wireV.high > 0 ? { low } : {}), limit, unit: '', proves: [joint] }
    const ratio = { low, high: jointV.high / wireV.low }
    return { id, verdict: jointVerdict(ratio, limit), ...ratio, limit, unit: '', proves: [joint] }
  })
}

const spansJoint = (chain: Chain, { from, to }: TakenReading): boolean =>
  from >= 0 && from <= chain.places.indexOf('joint-in') && to >= chain.places.indexOf('joint-out')
const oneSide = (chain: Chain, { from, to }: TakenReading): boolean => from > chain.loadAt === to > chain.loadAt

/** Drop or ohms over the covered joint, less the plain wire between the probes at the temperature of the reading. */
function coveredChecks({ jointMm, joints }: ProofContext, chain: Chain, readings: readonly TakenReading[]): readonly JudgedCheck[] {
  const { input } = chain
  const jointIn = chain.places.indexOf('joint-in')
  const jointOut = chain.places.indexOf('joint-out')
  const limitOhm = (joints.length * jointMm * Math.min(input.wire.ohmPerM(input.ambientC), input.beyond.ohmPerM(input.ambientC))) / 1000
  return readings
    .filter(
      (reading) =>
        ['drop', 'voltage', 'resistance', 'four-wire'].includes(reading.kind) &&
        spansJoint(chain, reading) &&
        oneSide(chain, reading) &&
        reading.when === 'still',
    )
    .flatMap((reading): readonly JudgedCheck[] => {
      const air = { low: reading.airC, high: reading.airC }
      const dead = reading.state === 'dead'
      if (!dead && reading.state !== 'on') return []
      const currentA = reading.currentA
      const warmth = dead ? deadWarmth(air) : warmthAt(input, currentA?.high ?? input.currentA, air)
      const ohm = healthyOhm(chain, warmth)
      const besides = {
        low: ohm(reading.from, jointIn).low + ohm(jointOut, reading.to).low,
        high: ohm(reading.from, jointIn).high + ohm(jointOut, reading.to).high,
      }
      const id = `${dead ? 'ohms' : 'drop'} over the joint, reading ${reading.index + 1}`
      if (dead) {
        const own = { low: Math.max(0, reading.low - besides.high), high: reading.overRange ? Number.MAX_VALUE : Math.max(0, reading.high - besides.low) }
        return [{ id, verdict: jointVerdict(own, limitOhm), ...own, limit: limitOhm, unit: 'Ω', proves: joints }]
      }
      if (currentA === null || !(currentA.low > 0))
        return [
          {
            id,
            verdict: 'cannot tell',
            low: Math.max(0, reading.low),
            high: Math.max(0, reading.high),
            limit: limitOhm * input.currentA,
            unit: 'V',
            proves: joints,
          },
        ]
      const own = { low: Math.max(0, reading.low - currentA.high * besides.high), high: Math.max(0, reading.high - currentA.low * besides.low) }
      // Fails at the largest possible current, passes at the smallest.
      const verdict =
        own.high < leastShare * limitOhm * currentA.low
          ? 'cannot tell'
          : own.high <= limitOhm * currentA.low
            ? 'passes'
            : own.low > limitOhm * currentA.high
              ? 'fails'
              : 'cannot tell'
      return [{ id, verdict, ...own, limit: (limitOhm * (currentA.low + currentA.high)) / 2, unit: 'V', proves: joints }]
    })
}

/** Every stretch of the circuit with a reading, by the diagnosis's interval proof. */
function circuitChecks({ facts, found, method, joints }: ProofContext): readonly JudgedCheck[] {
  const { diagnosis } = proofFrom(circuitInput(facts), 'metric', found.readings)
  const checks: JudgedCheck[] = []
  for (const { from, to, measuredV, allowedV, verdict, readings } of diagnosis.stretches) {
    if (readings.length === 0) continue
    const width = measuredV === null ? {} : { low: measuredV.low, high: measuredV.high }
    checks.push({
      id: `stretch ${from} to ${to}`,
      verdict,
      ...width,
      limit: allowedV,
      unit: 'V',
      proves: method === 'replace-the-run' && verdict !== 'cannot tell' ? joints : [],
    })
  }
  for (const { reading, finding } of diagnosis.answered) {
    const { code } = finding
    const { low, high } = found.readings[reading] as FoundReadings['readings'][number]
    if (code === 'reading-contradicts')
      checks.push({ id: `reading ${reading + 1} against the others`, verdict: 'cannot tell', low, high, limit: 0, unit: '', proves: joints })
    const good = figure('rd-insulation-values', 'goodAboveOhm')
    if (code === 'short' || code === 'leak')
      checks.push({ id: `insulation, reading ${reading + 1}`, verdict: 'fails', low, high, limit: good, unit: 'Ω', proves: [] })
    if (code === 'insulation-good' || code === 'no-short')
      checks.push({ id: `insulation, reading ${reading + 1}`, verdict: 'passes', low, high, limit: good, unit: 'Ω', proves: [] })
  }
  return checks
}

const signals: readonly string[] = ['signal', 'data-pair', 'thermocouple']

/** A signal lead is proven at its receiver: source voltage less load voltage. */
function receiverChecks({ facts, joints }: ProofContext, chain: Chain, readings: readonly TakenReading[]): readonly JudgedCheck[] {
  if (!signals.includes(facts.job.circuit.kind)) return []
  const last = chain.places.length - 1
  const volts = (from: number, to: number) =>
    readings.find((one) => (one.kind === 'voltage' || one.kind === 'drop') && one.state === 'on' && one.when === 'still' && one.from === from && one.to === to)
  const sent = volts(0, last)
  const seen = volts(chain.loadAt, chain.loadAt + 1)
  if (sent === undefined || seen === undefined) return []
  const lost = { low: Math.max(0, sent.low - seen.high), high: Math.max(0, sent.high - seen.low) }
  return [{ id: 'what the receiver sees', verdict: atMost(lost, facts.allowedDropV), ...lost, limit: facts.allowedDropV, unit: 'V', proves: joints }]
}

function byHandChecks({ facts, found, method }: ProofContext): readonly JudgedCheck[] {
  const checks: JudgedCheck[] = []
  const { tugN, samplePullN, riseK, visual } = found
  if (tugN !== undefined) {
    const [least = 0] = rule('pr-light-tug').values.tugN as readonly number[]
    checks.push({ id: 'light tug', verdict: tugN >= least ? 'passes' : 'cannot tell', low: tugN, high: tugN, limit: least, unit: 'N', proves: [] })
  }
  if (samplePullN !== undefined) {
    // Pull tables are for crimps, not for soldered samples.
    const table = isSoldered(method) || method === 'replace-the-run' ? null : samplePull(facts)
    if (table !== null)
      checks.push({
        id: 'sample pulled apart',
        verdict: samplePullN >= table.forceN ? 'passes' : 'fails',
        low: samplePullN,
        high: samplePullN,
        limit: table.forceN,
        unit: 'N',
        proves: [],
      })
  }
  if (riseK !== undefined) {
    const limit = figure('pr-temperature-rise', 'maxDifferenceK')
    const above = riseK.jointK - riseK.wireK
    const settled = riseK.afterS >= settlingS(facts)
    checks.push({
      id: 'warmth above its wire',
      verdict: above > limit ? 'fails' : settled ? 'passes' : 'cannot tell',
      low: above,
      high: above,
      limit,
      unit: 'K',
      proves: [],
    })
  }
  for (const [name, holds] of Object.entries(visual ?? {})) {
    const value = holds ? 1 : 0
    checks.push({ id: `by eye: ${name}`, verdict: holds ? 'passes' : 'fails', low: value, high: value, limit: 1, unit: '', proves: [] })
  }
  return checks
}

/** All checks possible with the readings found. */
export function checksOf(context: ProofContext): readonly JudgedCheck[] {
  const chain = chainOf(circuitInput(context.facts))
  const readings = takenReadings(chain, context.found.readings)
  const joined = context.method === 'replace-the-run' ? [] : [...ratioChecks(context), ...coveredChecks(context, chain, readings)]
  return [...joined, ...receiverChecks(context, chain, readings), ...circuitChecks(context), ...byHandChecks(context)]
}
