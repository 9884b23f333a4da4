import { describe, expect, test } from 'vitest'
import { bilgePumpFeed, marketStallFridge, trailerTailLamp } from '../demo/index.ts'
import type { RepairJob } from '../job/repairJob.ts'
import { planRepair } from './planRepair.ts'
import type { PlanVerdict, SectionId } from './repairPlan.ts'

const steps = (job: RepairJob): readonly string[] => planRepair(job).sequence.map((step) => step.text)
const stepsText = (job: RepairJob): string => steps(job).join('\n')
const at = (job: RepairJob, words: RegExp): number => steps(job).findIndex((text) => words.test(text))
const section = (job: RepairJob, id: SectionId): { readonly verdict: PlanVerdict; readonly text: string } => {
  const found = planRepair(job).sections.find((one) => one.id === id)
  return { verdict: found?.verdict ?? 'refused', text: found?.reasons.join('\n') ?? '' }
}
const figureOf = (job: RepairJob, name: string): number | undefined =>
  planRepair(job)
    .sections.flatMap((one) => one.values)
    .find((value) => value.name === name)?.value

const { surroundings = {}, damage, circuit, wire } = trailerTailLamp

describe('the steps', () => {
  test('with vapour about: aired before anything is switched, and nothing shrunk there', () => {
    const job = { ...trailerTailLamp, surroundings: { ...surroundings, flammableVapour: true } }
    expect(at(job, /^Air the space/)).toBe(0)
    expect(stepsText(job)).not.toMatch(/Shrink the/)
  })

  test('a splice without a sleeve at hand: one is fetched, slid on before the joint is made, and shrunk after it', () => {
    const job = { ...trailerTailLamp, intendedMethod: 'crimped-butt-splice' as const }
    expect(planRepair(job).parts.some((part) => /heat-shrink sleeve that slides over/.test(part.name) && part.unit === 'mm')).toBe(true)
    const [on, crimp, shrunk] = [at(job, /^Slide on now/), at(job, /crimp the butt splice/), at(job, /^Shrink the sleeve/)]
    expect(on).toBeGreaterThan(0)
    expect(crimp).toBeGreaterThan(on)
    expect(shrunk).toBeGreaterThan(crimp)
  })

  test('where nothing is seen and nothing proven, a reading comes before the knife', () => {
    const { readings: _, ...unread } = trailerTailLamp
    const job = { ...unread, damage: { ...damage, kind: 'unknown' as const } }
    expect(section(job, 'readings').verdict).toBe('cannot tell')
    expect(at(job, /^Cut nothing yet/)).toBe(0)
    expect(at(trailerTailLamp, /^Cut nothing yet/)).toBe(-1)
  })

  test('what the repair does not mend stands before the power', () => {
    expect(at(marketStallFridge, /^Before power goes on/)).toBe(at(marketStallFridge, /^Power on/) - 1)
    expect(stepsText(trailerTailLamp)).not.toMatch(/^Before power goes on/m)
  })

  test('a wrapped splice is wound, a lap is laid', () => {
    const iron = [{ name: 'iron', kind: 'iron' as const, powerW: 60, setC: 350, tipWidthMm: 3 }]
    const soldered = (intendedMethod: 'soldered-lap' | 'soldered-lineman-splice') =>
      stepsText({ ...trailerTailLamp, intendedMethod, tools: iron, methods: [intendedMethod] })
    expect(soldered('soldered-lineman-splice')).toMatch(/at least 3 tight turns/)
    expect(soldered('soldered-lap')).toMatch(/lay them side by side/)
  })

  test('a new terminal is taken out of its housing, sealed before it is crimped, and pushed home', () => {
    const [out, seal, crimp, home] = [/^Release the old terminal/, /^Slide the wire seal on/, /crimp the new terminal/, /^Push the terminal home/].map(
      (words) => at(bilgePumpFeed, words),
    )
    expect([out, seal, crimp, home]).toEqual([...[out, seal, crimp, home]].sort((a, b) => Number(a) - Number(b)))
    expect(out).toBeGreaterThanOrEqual(0)
    expect(planRepair(bilgePumpFeed).parts.map((part) => part.name)).toContain('wire seal of the plug, for this wire')
  })

  test('a data pair goes by its maker’s procedure alone', () => {
    const job = { ...trailerTailLamp, circuit: { kind: 'data-pair' as const, supplyV: 12 }, load: { currentA: 0.02 } }
    expect(steps(job)).toHaveLength(2)
    expect(planRepair(job).parts).toEqual([])
  })

  test('far from the plug no terminal is fitted in place of a splice that suits on conditions', () => {
    const job = {
      ...trailerTailLamp,
      damage: { ...damage, fromTerminationMm: 800 },
      surroundings: { ...surroundings, location: 'splash' as const, hottestC: 65 },
    }
    expect(stepsText(job)).toMatch(/butt splice/)
    expect(stepsText(job)).not.toMatch(/new terminal/)
  })
})

describe('limits', () => {
  test('a joint is made again from as much as 100 mm of its wire at the latest', () => {
    const metreV = figureOf(trailerTailLamp, 'plain wire drops, each metre') ?? Number.NaN
    expect(figureOf(trailerTailLamp, 'make it again from')).toBeCloseTo(0.1 * metreV, 9)
  })

  test('a joint in a bundle is no cooler than its wire', () => {
    const name = 'conductor, in the hottest air'
    expect(figureOf(marketStallFridge, 'joint, full load in the hottest air')).toBeGreaterThanOrEqual((figureOf(marketStallFridge, name) ?? Number.NaN) - 0.1)
  })

  test('air as hot as the insulation leaves no current: no fuse guards the wire, and no outer limit is told', () => {
    const job = { ...trailerTailLamp, surroundings: { ...surroundings, hottestC: 85 }, circuit: { ...circuit, fuseA: 20 }, load: { currentA: 1.8, stallA: 45 } }
    expect(section(job, 'wire-and-protection').text).toMatch(/may carry nothing.*no fuse guards it/)
    expect(section(job, 'wire-and-protection').text).toMatch(/Stalled, the motor draws 45 A/)
    expect(figureOf(job, 'make it again from')).toBeUndefined()
    expect(section(job, 'joint').verdict).toBe('unsound')
  })

  test('where 100 mm of a thick wire leave nothing beyond an aged joint, it is not the heat that is blamed', () => {
    const { strandCount: _, insulationThicknessMm: __, ...thick } = { ...wire, areaMm2: 95 }
    const { fuseA: _a, fuseSeries: _s, fuseDistanceM: _d, ...unfused } = circuit
    const job: RepairJob = { ...trailerTailLamp, circuit: unfused, wire: thick, load: { currentA: 100 }, intendedMethod: 'soldered-lap' }
    expect(section(job, 'joint').text).toMatch(/settles at \d+ °C\. What heat, drop and 100 mm of its wire allow leaves nothing beyond an aged joint/)
  })

  test('tin plating ends before PTFE does, and is told to be from memory', () => {
    const job: RepairJob = { ...trailerTailLamp, wire: { ...wire, insulation: 'PTFE', material: 'tinned-copper' } }
    expect(section(job, 'wire-and-protection').text).toMatch(/150 °C of its tin plating/)
    expect(planRepair(job).tables.some((source) => source.status === 'from memory' && /tin plating/.test(source.source))).toBe(true)
  })

  test('slack, cut-back and joint add up in the words', () => {
    const lap = section({ ...trailerTailLamp, intendedMethod: 'soldered-lap' }, 'cut-back').text
    expect(lap).toMatch(/90 mm of slack less 10 mm cut back and [\d.]+ mm that go into the joint leaves/)
  })
})

test('an assumption under which the load would get its power no more changes the verdict', () => {
  const { hottestC: _, ...noHottest } = surroundings
  const { fuseA: _a, fuseSeries: _s, fuseDistanceM: _d, ...unfused } = circuit
  const marked = (powerW: number) => {
    const job: RepairJob = { ...trailerTailLamp, circuit: { ...unfused, supplyV: 0.5 }, load: { powerW }, surroundings: noHottest }
    return planRepair(job).assumptions.find(({ field }) => field === 'surroundings.hottestC')?.changesVerdict ?? false
  }
  expect([marked(0.41), marked(0.05)]).toEqual([true, false])
})

test('a road vehicle and a small craft are told of the negative cable first', () => {
  const cautions = (rules: readonly ('road-vehicle' | 'small-craft')[]) =>
    planRepair({ ...trailerTailLamp, circuit: { ...circuit, rules } }).cautions.join('\n')
  for (const body of ['road-vehicle', 'small-craft'] as const) expect(cautions([body])).toMatch(/negative cable off first/)
  expect(cautions([])).not.toMatch(/negative cable off first/)
})

test('a refused circuit is told once, beside the general cautions', () => {
  const plan = planRepair({ ...bilgePumpFeed, circuit: { ...bilgePumpFeed.circuit, kind: 'mains' } })
  expect(new Set(plan.sections.map((one) => one.reasons.join())).size).toBe(2)
  expect(plan.cautions.join('\n')).toMatch(/All power off/)
})
