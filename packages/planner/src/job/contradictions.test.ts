import { describe, expect, test } from 'vitest'
import { bilgePumpFeed, marketStallFridge, trailerTailLamp } from '../demo/index.ts'
import { planRepair } from '../report/index.ts'
import { type Contradiction, issuesOf, mended } from './contradictions.sample.ts'
import { JobError } from './jobError.ts'
import type { RepairJob } from './repairJob.ts'

const onWire = (wire: Partial<RepairJob['wire']>, job: RepairJob = bilgePumpFeed): RepairJob => ({ ...job, wire: { ...job.wire, ...wire } })
const onTerminal = (terminal: RepairJob['terminal']): RepairJob => ({ ...trailerTailLamp, ...(terminal === undefined ? {} : { terminal }) })
const tube = { material: 'polyolefin', suppliedInsideMm: 6, recoveredInsideMm: 2, recoveredWallMm: 1, longitudinalChange: { low: -0.1, high: 0 } } as const
const { size: _size, ...unsized } = bilgePumpFeed.wire
const thin: RepairJob = onWire({ areaMm2: 0.5, outLengthM: 20, strandCount: 16 }, marketStallFridge)
const { returnLengthM: _back, ...feedOnly } = thin.wire
const { insulationThicknessMm: _wall, ...unknownWall } = bilgePumpFeed.wire

const cases: readonly Contradiction[] = [
  [
    'a load that asks for more than the wire lets through',
    { ...thin, wire: feedOnly },
    {
      path: 'load.powerW',
      value: 60,
      allowed: 'at most 22.5 W, the most that 12 V deliver through this wire and its source in the hottest air; thicker wire or a shorter run delivers more',
      example: '"powerW": 22.5',
    },
  ],
  [
    'strands too thin for the area',
    onWire({ strandDiameterMm: 0.2 }),
    {
      path: 'wire.strandDiameterMm',
      value: 0.2,
      allowed: "from 0.257 to 0.341 mm: so thick, 19 strands make the wire's 1.31 mm²",
      example: '"strandDiameterMm": 0.296',
    },
  ],
  [
    'strands too thick for an area given as a number',
    { ...bilgePumpFeed, wire: { ...unsized, areaMm2: 1.5, strandCount: 30, strandDiameterMm: 0.5 } },
    {
      path: 'wire.strandDiameterMm',
      value: 0.5,
      allowed: "from 0.219 to 0.291 mm: so thick, 30 strands make the wire's 1.5 mm²",
      example: '"strandDiameterMm": 0.252',
    },
  ],
  [
    'another count of strands than the size says',
    { ...bilgePumpFeed, wire: { ...unsized, size: '7/0.3 mm' } },
    { path: 'wire.strandCount', value: 19, allowed: 'the 7 strands of its size, 7/0.3 mm', example: '"strandCount": 7' },
  ],
  [
    'a size beyond every wire',
    { ...bilgePumpFeed, wire: { size: '0.001 mm²', insulation: 'XLPE', outLengthM: 3 } },
    { path: 'wire.size', value: '0.001 mm²', allowed: 'from 0.005 to 300 mm²', example: '"size": "18 AWG"' },
  ],
  [
    'an outside below the bare metal',
    { ...bilgePumpFeed, wire: { ...unknownWall, outsideDiameterMm: 1 } },
    { path: 'wire.outsideDiameterMm', value: 1, allowed: 'at least 1.17 mm: the metal', example: '"outsideDiameterMm": 1.37' },
  ],
  [
    'an outside below the metal and its insulation, where the size is text',
    onWire({ outsideDiameterMm: 2 }),
    { path: 'wire.outsideDiameterMm', value: 2, allowed: 'at least 2.47 mm: the metal and twice the insulation', example: '"outsideDiameterMm": 2.67' },
  ],
  [
    'a bundle thinner than its wires, whose outside is assumed',
    onWire({ bundleOutsideMm: 4 }, marketStallFridge),
    {
      path: 'wire.bundleOutsideMm',
      value: 4,
      allowed: 'at least 7.34 mm, the area of 6 wires of 3 mm; where the wires are thinner, give outsideDiameterMm',
      example: '"bundleOutsideMm": 7.34',
    },
  ],
  [
    'a bundle thinner than its wires, whose outside was measured',
    onWire({ bundleOutsideMm: 4, outsideDiameterMm: 3 }, marketStallFridge),
    { path: 'wire.bundleOutsideMm', value: 4, allowed: 'at least 7.35 mm, the area of 6 wires of 3 mm', example: '"bundleOutsideMm": 7.35' },
  ],
  [
    'a bundle thinner than its one wire',
    onWire({ bundleOutsideMm: 2, outsideDiameterMm: 3 }),
    { path: 'wire.bundleOutsideMm', value: 2, allowed: "at least the wire's own 3 mm", example: '"bundleOutsideMm": 3' },
  ],
  [
    'a terminal rated in air hotter than the limit that is assumed',
    onTerminal({ ratedCurrentA: 10, ratedAmbientC: 120 }),
    {
      path: 'terminal.limitC',
      value: undefined,
      allowed: 'above ratedAmbientC, 120 °C; where you do not say it, 105 °C is assumed',
      example: '"limitC": 200',
    },
  ],
  [
    'a terminal whose limit lies below the air of its rating',
    onTerminal({ ratedCurrentA: 10, limitC: 20 }),
    { path: 'terminal.limitC', value: 20, allowed: 'above ratedAmbientC, 25 °C', example: '"limitC": 105' },
  ],
  [
    'a tube that shrinks to nothing',
    { ...bilgePumpFeed, sleeves: [{ ...tube, recoveredInsideMm: 0.5 }] },
    {
      path: 'sleeves.0.recoveredInsideMm',
      value: 0.5,
      allowed: 'at least a tenth of suppliedInsideMm, 6 mm: no tube shrinks further',
      example: '"recoveredInsideMm": 3',
    },
  ],
  [
    'a source of almost no resistance',
    { ...bilgePumpFeed, circuit: { ...bilgePumpFeed.circuit, sourceResistanceOhm: 5e-324 } },
    {
      path: 'circuit.sourceResistanceOhm',
      value: 5e-324,
      allowed: '0, or at least 0.000001 Ω: no battery has less inside',
      example: '"sourceResistanceOhm": 0.02',
    },
  ],
]

describe('a job whose fields contradict one another', () => {
  test.each(cases)('%s: path, value, what is allowed, an example', (_title, job, issue) => {
    expect(issuesOf(job)).toEqual([issue])
  })

  test.each(cases)('%s: planRepair refuses it alike, and the example mends it', (_title, job) => {
    expect(() => planRepair(job)).toThrow(JobError)
    const [issue] = issuesOf(job)
    if (issue === undefined) throw new Error('nothing to mend')
    expect(issuesOf(mended(job, issue))).toEqual([])
  })

  test('several at once are all reported', () => {
    const job = { ...thin, wire: { ...feedOnly, bundleOutsideMm: 3 }, sleeves: [{ ...tube, recoveredInsideMm: 7 }] }
    expect(issuesOf(job).map((issue) => issue.path)).toEqual(['load.powerW', 'wire.bundleOutsideMm', 'sleeves.0.recoveredInsideMm'])
  })
})

describe('what a person may well have is taken', () => {
  test.each([
    ['strands by a rounded diameter', onWire({ strandDiameterMm: 0.3 })],
    ['strands pressed by a thin wall', { ...bilgePumpFeed, wire: { ...unknownWall, outsideDiameterMm: 1.4 } }],
    ['a wall and an outside that press them', onWire({ outsideDiameterMm: 2.6 })],
    [
      'the thinnest gauge',
      { ...bilgePumpFeed, wire: { size: '40 AWG', insulation: 'ETFE', insulationThicknessMm: 0.1, outLengthM: 1 }, load: { currentA: 0.01 } },
    ],
    ['a thermocouple', { ...bilgePumpFeed, circuit: { kind: 'thermocouple', supplyV: 0.04 }, load: { currentA: 0.000001 }, readings: [] }],
    ['a bundle of thin wires', onWire({ bundleOutsideMm: 5, outsideDiameterMm: 2, insulationThicknessMm: 0.2 }, marketStallFridge)],
    ['a terminal of which only the air is said', onTerminal({ ratedAmbientC: 120 })],
    ['a thin tube that shrinks six to one', { ...bilgePumpFeed, sleeves: [{ ...tube, recoveredInsideMm: 1, recoveredWallMm: 0.01 }] }],
  ] as readonly (readonly [string, RepairJob])[])('%s', (_title, job) => {
    expect(issuesOf(job)).toEqual([])
    expect([3, 9]).toContain(planRepair(job).sections.length)
  })
})

test.each([
  ['circuit.supplyV', { circuit: { ...bilgePumpFeed.circuit, supplyV: 0.0005 } }, 'from 0.001 to 1000 V'],
  ['circuit.fuseA', { circuit: { ...bilgePumpFeed.circuit, fuseA: 0.005 } }, 'from 0.01 to 500 A'],
  ['load.currentA', { load: { currentA: 1e-7 } }, 'from 0.000001 to 2000 A'],
  ['load.resistanceOhm', { load: { resistanceOhm: 0.0001 } }, 'from 0.001 to 1000000 Ω'],
  ['wire.strandDiameterMm', { wire: { ...bilgePumpFeed.wire, strandDiameterMm: 0.005 } }, 'from 0.01 to 10 mm'],
  ['wire.outLengthM', { wire: { ...bilgePumpFeed.wire, outLengthM: 0.0005 } }, 'from 0.001 to 500 m'],
  ['tools.0.powerW', { tools: [{ name: 'iron', kind: 'iron', powerW: 0.5 }] }, 'from 1 to 1000 W'],
  ['tools.0.contactResistanceKPerW', { tools: [{ name: 'iron', kind: 'iron', powerW: 60, contactResistanceKPerW: 0.001 }] }, 'from 0.01 to 1000 K/W'],
  ['tools.0.tipResistanceKPerW', { tools: [{ name: 'iron', kind: 'iron', powerW: 60, tipResistanceKPerW: 0.001 }] }, 'from 0.01 to 1000 K/W'],
  ['tools.0.airSpeedMPerS', { tools: [{ name: 'air', kind: 'hot-air', airC: 300, airSpeedMPerS: 0.01 }] }, 'from 0.1 to 60 m/s'],
  ['sleeves.0.recoveredWallMm', { sleeves: [{ ...tube, recoveredWallMm: 0.0001 }] }, 'from 0.002 to 20 mm'],
])('%s has a low end that no one is below', (path, change, allowed) => {
  expect(issuesOf({ ...bilgePumpFeed, ...change })).toMatchObject([{ path, allowed }])
})
