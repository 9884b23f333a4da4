import { describe, expect, test } from 'vitest'
import { bilgePumpFeed, trailerTailLamp } from '../demo/index.ts'
import { planRepair } from '../report/index.ts'
import { type Contradiction, issuesOf, mended } from './contradictions.sample.ts'
import { JobError } from './jobError.ts'
import type { JobReading, RepairJob } from './repairJob.ts'

const reading = (one: Pick<JobReading, 'kind' | 'load' | 'value'>): RepairJob => ({
  ...bilgePumpFeed,
  readings: [{ from: 'joint-in', to: 'joint-out', ...one }],
})
const onTerminal = (terminal: RepairJob['terminal']): RepairJob => ({ ...trailerTailLamp, ...(terminal === undefined ? {} : { terminal }) })

const cases: readonly Contradiction[] = [
  [
    'a break beyond the end of the run',
    { ...bilgePumpFeed, wire: { size: '16 AWG', insulation: 'XLPE', outLengthM: 5 }, damage: { kind: 'broken', fromTerminationMm: 20_000 } },
    { path: 'damage.fromTerminationMm', value: 20_000, allowed: 'at most 5000 mm, the whole of outLengthM', example: '"fromTerminationMm": 5000' },
  ],
  [
    'a break beyond the end of the way back',
    { ...bilgePumpFeed, wire: { ...bilgePumpFeed.wire, returnLengthM: 0.5 }, damage: { kind: 'broken', where: 'return', fromTerminationMm: 600 } },
    { path: 'damage.fromTerminationMm', value: 600, allowed: 'at most 500 mm, the whole of returnLengthM', example: '"fromTerminationMm": 500' },
  ],
  [
    'more slack than there is wire',
    { ...bilgePumpFeed, wire: { size: '16 AWG', insulation: 'XLPE', outLengthM: 5 }, damage: { kind: 'broken', fromTerminationMm: 25, slackMm: 9000 } },
    { path: 'damage.slackMm', value: 9000, allowed: 'at most 5000 mm, the whole of outLengthM', example: '"slackMm": 5000' },
  ],
  [
    'a fuse that lies past the load',
    { ...bilgePumpFeed, circuit: { ...bilgePumpFeed.circuit, fuseDistanceM: 50 } },
    { path: 'circuit.fuseDistanceM', value: 50, allowed: 'at most outLengthM, 3.2 m', example: '"fuseDistanceM": 3.2' },
  ],
  [
    'a rating that its series lacks',
    { ...bilgePumpFeed, circuit: { ...bilgePumpFeed.circuit, fuseA: 6.3, fuseSeries: 'ISO 8820-3' } },
    {
      path: 'circuit.fuseA',
      value: 6.3,
      allowed: 'a rating of ISO 8820-3: 1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40, 50, 60, 70, 80, 100 A',
      example: '"fuseA": 7.5',
    },
  ],
  [
    'a breaker in a series of blades',
    { ...bilgePumpFeed, circuit: { ...bilgePumpFeed.circuit, fuseA: 7.5, fuseSeries: 'ISO 8820-3', fuseKind: 'breaker' } },
    {
      path: 'circuit.fuseKind',
      value: 'breaker',
      allowed: 'blade: ISO 8820-3 is a series of blade fuses; leave fuseSeries out for another kind',
      example: '"fuseKind": "blade"',
    },
  ],
  [
    'more strands than the area has room for',
    { ...bilgePumpFeed, wire: { areaMm2: 1.5, strandCount: 10_000, insulation: 'XLPE', outLengthM: 3 } },
    { path: 'wire.strandCount', value: 10_000, allowed: 'at most 4774: so many of the finest strands, 0.02 mm, make 1.5 mm²', example: '"strandCount": 19' },
  ],
  [
    'all strands of a wire that is broken in part',
    { ...bilgePumpFeed, damage: { kind: 'partly-broken', fromTerminationMm: 25, brokenStrands: 19 } },
    { path: 'damage.brokenStrands', value: 19, allowed: 'fewer than the wire\'s 19 strands, or the kind "broken"', example: '"brokenStrands": 18' },
  ],
  [
    'a grade that the insulation has not',
    { ...bilgePumpFeed, wire: { ...bilgePumpFeed.wire, insulationGradeC: 200 } },
    { path: 'wire.insulationGradeC', value: 200, allowed: 'at most 125 °C, the highest grade of XLPE', example: '"insulationGradeC": 125' },
  ],
  [
    'two sizes of the wire beyond',
    { ...bilgePumpFeed, wireBeyond: { areaMm2: 1, size: '18 AWG' } },
    { path: 'wireBeyond.areaMm2', value: 1, allowed: 'one of areaMm2 and size', example: '"areaMm2": 1.5' },
  ],
  [
    'an outside of the wire beyond that its metal does not fit into',
    { ...bilgePumpFeed, wireBeyond: { areaMm2: 10, outsideDiameterMm: 2 } },
    { path: 'wireBeyond.outsideDiameterMm', value: 2, allowed: 'at least 3.22 mm: the metal', example: '"outsideDiameterMm": 3.42' },
  ],
  [
    'a million volts across a joint on 12 V',
    reading({ kind: 'drop', load: 'on', value: 1e6 }),
    {
      path: 'readings.0.value',
      value: 1e6,
      allowed: 'at most 36 V either way: more than 3 times the supply of 12 V is another range or unit than the one noted',
      example: '"value": 12',
    },
  ],
  [
    'negative ohms',
    reading({ kind: 'resistance', load: 'off', value: -5 }),
    {
      path: 'readings.0.value',
      value: -5,
      allowed: 'at least 0 Ω: a minus sign means that current still flows there, or that the meter was nulled on more than its leads',
      example: '"value": 0.3',
    },
  ],
  [
    'a temperature at which metal boils',
    reading({ kind: 'temperature', load: 'on', value: 1e6 }),
    { path: 'readings.0.value', value: 1e6, allowed: 'from -100 to 1300 °C', example: '"value": 60' },
  ],
  [
    'insulation read on a live circuit',
    reading({ kind: 'insulation', load: 'on', value: 1e6 }),
    { path: 'readings.0.load', value: 'on', allowed: 'off or unplugged: ohms are read on a dead circuit', example: '"load": "off"' },
  ],
]

describe('a run, its fuse and its readings that contradict one another', () => {
  test.each(cases)('%s: path, value, what is allowed, an example; planRepair refuses it alike', (_title, job, issue) => {
    expect(issuesOf(job)).toEqual([issue])
    expect(() => planRepair(job)).toThrow(JobError)
  })

  test.each(cases.filter(([, , { allowed }]) => !allowed.startsWith('one of')))('%s: the example mends it', (_title, job) => {
    const [issue] = issuesOf(job)
    if (issue === undefined) throw new Error('nothing to mend')
    expect(issuesOf(mended(job, issue))).toEqual([])
  })

  test('a stud goes with a terminal that has a hole for it', () => {
    expect(issuesOf(onTerminal({ kind: 'push-on', studMm: 6 }))).toEqual([
      { path: 'terminal.studMm', value: 6, allowed: 'no stud with a terminal of the kind push-on: only with ring, fork, cable-lug', example: '' },
    ])
    expect(issuesOf(onTerminal({ kind: 'ring', studMm: 6 }))).toEqual([])
  })
})

test.each<readonly [string, RepairJob]>([
  ['a reading a little above the supply', reading({ kind: 'voltage', load: 'off', value: 14.8 })],
  ['a clamp at one place', { ...bilgePumpFeed, readings: [{ kind: 'current', from: 'fuse-out', to: 'fuse-out', load: 'on', value: 4.1 }] }],
  ['megohms', reading({ kind: 'insulation', load: 'unplugged', value: 2e11 })],
])('%s is taken', (_title, job) => {
  expect(issuesOf(job)).toEqual([])
  expect([3, 9]).toContain(planRepair(job).sections.length)
})
