import { describe, expect, test } from 'vitest'
import { bilgePumpFeed } from '../demo/index.ts'
import { jobFacts } from '../facts/inner.ts'
import { parseRepairJob, type RepairJob } from '../job/index.ts'
import { proofOf } from './inner.ts'

const joint = { method: 'crimped-butt-splice', lengthMm: 25, newOhm: 0.00034, agedOhm: 0.0005, outerOhm: null } as const
const proofFor = (change: Partial<RepairJob>) => proofOf(jobFacts(parseRepairJob({ ...bilgePumpFeed, ...change })), joint).section
const metreV = (change: Partial<RepairJob>) => proofFor(change).values.find(({ name }) => name === 'plain wire drops, each metre')

describe('how a repair will be shown to be good', () => {
  test('the plain wire is taken off at the temperature of the reading, not of the hottest air', () => {
    const air = (hottestC: number) => ({ surroundings: { ...bilgePumpFeed.surroundings, ambientC: 18, hottestC } })
    expect(metreV(air(80))).toEqual(metreV(air(45)))
    const warmer = metreV({ surroundings: { ...bilgePumpFeed.surroundings, ambientC: 40 } })
    expect(warmer?.low).toBeGreaterThan(metreV(air(45))?.low as number)
  })
  test('it says beforehand where plain wire would hide the joint once it is covered', () => {
    expect(proofFor({}).findings.map(({ code }) => code)).toContain('covered-blind')
    // A run of only 0.1 m: almost no wire between the probes.
    const short = proofFor({ wire: { ...bilgePumpFeed.wire, outLengthM: 0.1, returnLengthM: 0.1 }, circuit: { ...bilgePumpFeed.circuit, fuseDistanceM: 0.05 } })
    expect(short.findings.map(({ code }) => code)).not.toContain('covered-blind')
  })
  test('a load that runs for seconds is not tested for minutes', () => {
    const { findings, values } = proofFor({ load: { currentA: 4.2, onS: 30, offS: 600 } })
    expect(findings.map(({ code }) => code)).toContain('duty')
    expect(values.find(({ name }) => name === 'load on before reading')?.value).toBe(30)
  })
  test('a signal lead is proven by what its receiver sees', () => {
    const { findings } = proofFor({ circuit: { ...bilgePumpFeed.circuit, kind: 'signal' } })
    expect(findings.map(({ code }) => code)).toContain('signal')
    expect(findings.map(({ code }) => code)).not.toContain('ratio')
  })
})
