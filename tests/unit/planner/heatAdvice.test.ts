import { type Finding, type JobTool, parseRepairJob, planRepair, type RepairJob } from '@strandwise/planner'
import { bilgePumpFeed, robotMotorLead } from '@strandwise/planner/demo'
import { parseQuantity, type QuantityKind } from '@strandwise/working'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

type Method = 'soldered-lap' | 'soldered-lineman-splice' | 'solder-sleeve'

/** Findings on the heat of one way of a plan. */
function heatOf(job: RepairJob, method: Method): readonly Finding[] {
  const way = planRepair(job).ways.find((one) => one.method === method)
  return way?.sections.find(({ id }) => id === 'heating')?.findings ?? []
}

/** What the words of an advice set. */
const settings: readonly (readonly [words: RegExp, field: string, kind: QuantityKind])[] = [
  [/a tip setting of/, 'setC', 'temperatureC'],
  [/a tool of/, 'powerW', 'powerW'],
  [/air of/i, 'airC', 'temperatureC'],
  [/an air speed of/, 'airSpeedMPerS', 'speedMPerS'],
  [/bare wire to the insulation of/, 'stubMm', 'lengthMm'],
  [/a metal clip on the bare wire/, 'clipMm', 'lengthMm'],
]

/** The job with the advice entered as it is printed: once for each unit in which it is. */
function entered(job: RepairJob, { text }: Finding): readonly { readonly lever: string; readonly job: RepairJob }[] {
  const [tool] = job.tools as readonly [JobTool]
  const alloy = /the alloy (\w+)/.exec(text)?.[1]
  if (alloy !== undefined) return [{ lever: 'alloy', job: { ...job, solders: [alloy] } as RepairJob }]
  if (/no clip/i.test(text)) {
    const { clipMm: _clip, ...bare } = tool as Extract<JobTool, { kind: 'iron' }>
    return [{ lever: 'no clip', job: { ...job, tools: [bare] } }]
  }
  const [, field, kind] = settings.find(([words]) => words.test(text)) as (typeof settings)[number]
  const quantities = [...text.matchAll(/[\d.]+ (?:°C|°F|W|mm|in|m\/s)/g)].map(([quantity]) => parseQuantity(quantity, kind))
  expect(quantities.length).toBeGreaterThan(0)
  return quantities.map((value) => ({ lever: field, job: { ...job, tools: [{ ...tool, [field]: value } as JobTool] } }))
}

/** Enters the advice of a way and checks that it comes out as advised; returns what was advised. */
function followed(job: RepairJob, method: Method): readonly string[] {
  const advice = heatOf(job, method).filter(({ code }) => code === 'to-flow' || code === 'to-spare')
  return advice.flatMap((finding) =>
    entered(job, finding).map(({ lever, job: changed }) => {
      const codes = heatOf(parseRepairJob(changed), method).map(({ code }) => code)
      const text = `${finding.text} ${JSON.stringify(changed.tools)} gives ${codes}`
      expect(codes.length, text).toBeGreaterThan(0)
      expect(codes, text).not.toContain('to-flow')
      expect(codes, text).not.toContain('no-change')
      if (finding.code === 'to-spare') expect(codes, text).not.toContain('limit-passed')
      return `${finding.code} ${lever}`
    }),
  )
}

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const irons: fc.Arbitrary<JobTool> = fc.record(
  {
    name: fc.constant('iron'),
    kind: fc.constant('iron' as const),
    powerW: within(15, 90),
    setC: within(230, 420),
    tipWidthMm: within(1, 4),
    contactResistanceKPerW: within(1, 40),
    stubMm: within(2, 9),
    clipMm: within(1, 12),
  },
  { requiredKeys: ['name', 'kind', 'powerW'] },
)
const streams: fc.Arbitrary<JobTool> = fc.record(
  { name: fc.constant('stream'), kind: fc.constant('hot-air' as const), airC: within(180, 480), airSpeedMPerS: within(1, 15), nozzleMm: within(4, 30) },
  { requiredKeys: ['name', 'kind', 'airC'] },
)
const { solderSleeve } = bilgePumpFeed
const jobs = fc
  .record({
    method: fc.constantFrom<Method>('soldered-lap', 'soldered-lineman-splice', 'solder-sleeve'),
    size: fc.constantFrom('0.35 mm²', '0.75 mm²', '1.5 mm²', '4 mm²'),
    insulation: fc.constantFrom('PVC' as const, 'XLPE' as const, 'silicone' as const, 'PTFE' as const),
    units: fc.constantFrom('metric' as const, 'inch' as const, 'both' as const),
    ambientC: within(-5, 35),
    iron: irons,
    stream: streams,
    alloy: fc.constantFrom('Sn63Pb37' as const, 'SAC305' as const),
    byStream: fc.boolean(),
  })
  .map(({ method, size, insulation, units, ambientC, iron, stream, alloy, byStream }): { readonly job: RepairJob; readonly method: Method } => ({
    method,
    job: {
      version: 1,
      units,
      circuit: { kind: 'power', supplyV: 12 },
      load: { currentA: 1.5 },
      wire: { size, insulation, outLengthM: 3 },
      damage: { kind: 'broken', fromTerminationMm: 400 },
      surroundings: { ambientC, hottestC: 40 },
      tools: [method === 'solder-sleeve' || byStream ? stream : iron],
      solders: [alloy],
      ...(solderSleeve === undefined ? {} : { solderSleeve }),
      intendedMethod: method,
    },
  }))

describe('advice on heat, entered as it is printed, comes out as advised', { timeout: 120_000 }, () => {
  test('random tools and wires, in metric, inch and both', () => {
    const seen = new Map<string, number>()
    fc.assert(
      fc.property(jobs, ({ job, method }) => {
        for (const what of followed(parseRepairJob(job), method)) seen.set(what, (seen.get(what) ?? 0) + 1)
      }),
      { seed: 310_316, numRuns: 60 },
    )
    for (const what of ['to-flow setC', 'to-flow powerW', 'to-flow airC']) expect([...seen.keys()]).toContain(what)
  })

  test('an iron too hot for the insulation: a cooler tip; the sentence of the limit tells a peak beyond it', () => {
    const seen = new Set<string>()
    for (const units of ['metric', 'inch', 'both'] as const)
      for (const more of [
        { setC: 420, stubMm: 4 },
        { setC: 420, stubMm: 3 },
        { setC: 390, stubMm: 3, tipWidthMm: 4 },
      ]) {
        const tools: readonly JobTool[] = [{ name: 'iron', kind: 'iron', powerW: 80, ...more }]
        const job = { ...robotMotorLead, units, tools: [...tools] }
        for (const what of followed(job, 'soldered-lap')) seen.add(what)
        for (const { values } of heatOf(job, 'soldered-lap').filter(({ code }) => code === 'limit-passed'))
          expect(values.peak?.value).toBeGreaterThan(values.limit?.value ?? Number.POSITIVE_INFINITY)
      }
    expect([...seen].sort().join(', ')).toBe('to-spare setC')
  })

  test('the air of a solder sleeve: the swept wire is as hot as the air that is advised', () => {
    const job = bilgePumpFeed
    for (const units of ['metric', 'inch', 'both'] as const) {
      const tools = job.tools?.map((tool) => ({ ...tool, nozzleMm: 40 }) as JobTool) ?? []
      expect(followed({ ...job, units, tools }, 'solder-sleeve')).toContain('to-flow airC')
    }
  })
})
