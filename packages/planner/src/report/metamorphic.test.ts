import { describe, expect, test } from 'vitest'
import { bilgePumpFeed, demoJobs, trailerTailLamp } from '../demo/index.ts'
import { migrateJob, parseRepairJob, type RepairJob } from '../job/index.ts'
import { planRepair, type RepairPlan, reportHtml, reportMarkdown, reportText } from './index.ts'
import { lampWith, planJobs, read } from './planJobs.sample.ts'

const decided = ({ decision, verdict, sequence, parts }: RepairPlan) => ({ ...decision, notAsMeant: null, verdict, sequence, parts })

describe('what must not change a plan', () => {
  test.each(Object.entries(planJobs).filter(([name]) => !name.includes('by sleeve')))(
    '%s: with the meant way taken out the decided plan is the same',
    (_name, job) => {
      const { intendedMethod: _meant, ...rest } = job
      expect(decided(planRepair(rest))).toEqual(decided(planRepair(job)))
    },
  )

  test('units respelled and version 1 migrated', () => {
    const spelled = { ...trailerTailLamp, load: { current: '1.8 A' } }
    expect(planRepair(parseRepairJob(spelled))).toEqual(planRepair(trailerTailLamp))
    expect(planRepair(parseRepairJob(migrateJob(structuredClone(bilgePumpFeed))))).toEqual(planRepair(bilgePumpFeed))
  })
})

describe('more is never better for a wire', () => {
  const order = ['sound', 'caution', 'cannot tell', 'unsound', 'refused']
  const wire = (job: RepairJob): number => {
    const way = planRepair(job).ways.find(({ method }) => method === 'crimped-and-sealed-butt-splice')
    return order.indexOf(way?.sections.find(({ id }) => id === 'wire-and-protection')?.verdict ?? 'sound')
  }
  test.each([
    ['current', (x: number) => lampWith({ load: { currentA: 2 * x } })],
    ['hotter air', (x: number) => lampWith({ load: { currentA: 8 }, surroundings: { hottestC: 40 + 8 * x } })],
    ['a longer run', (x: number) => lampWith({ wire: { outLengthM: 4 * x, returnLengthM: 4 * x } })],
  ])('%s', (_name, at) => {
    const found = [1, 2, 3, 4, 5, 6].map((x) => wire(at(x)))
    expect(found).toEqual([...found].sort((a, b) => a - b))
  })
})

describe('what went wrong before', () => {
  test('a healthy thin wire proves no fault: the wire is too thin, and the size that does is named', () => {
    const plan = planRepair(
      lampWith({
        wire: { areaMm2: 0.5, strandCount: null, outLengthM: 3, returnLengthM: 3 },
        load: { currentA: 10 },
        damage: { kind: 'unknown' },
        readings: [read('drop', 'fuse-out', 'load+', 1.15, { currentA: 10 })],
      }),
    )
    expect(plan.diagnosis.fault).not.toBe('proven')
  })

  test('14 A on 0.5 mm²: a new run of a named size stands in decision, parts and first step', () => {
    const plan = planRepair(lampWith({ wire: { areaMm2: 0.5, strandCount: null }, load: { currentA: 14 }, circuit: { allowedDropV: null, fuseA: 15 } }))
    const size = plan.decision.wire?.size ?? 'none'
    expect(plan.decision.kind).toBe('replace the run')
    expect(plan.sequence[0]?.text).toContain(size)
    expect(plan.parts[0]?.name).toContain(size)
  })

  test('8 A on 1.5 mm² get a 10 A fuse', () => {
    expect(
      planRepair(lampWith({ load: { currentA: 8 }, circuit: { fuseA: 20, allowedDropV: null }, wire: { outLengthM: 1, returnLengthM: 1 } })).decision.fuseA,
    ).toBe(10)
  })

  test('a ring goes on its stud and clicks nowhere; an 8 mm stud has its published torque', () => {
    const steps = planRepair(lampWith({ damage: { fromTerminationMm: 20, slackMm: 200 }, terminal: { kind: 'ring', studMm: 8 } })).sequence.map(
      ({ text, check }) => `${text} ${check}`,
    )
    expect(steps.join(' ')).not.toMatch(/click|housing/)
    expect(steps.join(' ')).toMatch(/15\.3 N m/)
  })

  test('a load of 20 s on is read within its on-time, not after a settling that it cannot stand', () => {
    const plan = planRepair(planJobs['short burst'] as RepairJob)
    expect(plan.sequence.map(({ code }) => code)).toContain('last-reading-duty')
    expect(plan.sequence.map(({ code }) => code)).not.toContain('last-reading')
  })

  test('a fuse of 80 A is not judged by the blade curve', () => {
    const plan = planRepair(
      lampWith({ load: { currentA: 50 }, wire: { areaMm2: 25, strandCount: null }, circuit: { fuseA: 125, fuseSeries: null, fuseKind: 'bolt-down' } }),
    )
    const codes = plan.sections.flatMap(({ findings }) => findings).map(({ code }) => code)
    expect(codes).toContain('fuse-no-band')
    expect(codes).not.toContain('fuse-guards-wire')
  })

  test('titles and tool names are escaped for each format', () => {
    const title = '# <script>alert(1)</script> [x](http://a.b)\u001b[31m\u202e'
    const plan = planRepair({ ...(demoJobs['workshop-led-strip'] as RepairJob), title })
    for (const all of [false, true]) {
      expect(reportText(plan, { all }).replaceAll('\n', ' ')).not.toMatch(/[\p{Cc}\p{Cf}]/u)
      expect(reportMarkdown(plan, { all })).not.toMatch(/^# #|<script>|\]\(http:\/\//m)
      expect(reportHtml(plan, { all })).not.toContain('<script>')
    }
  })
})
