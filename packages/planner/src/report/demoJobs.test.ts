import { describe, expect, test } from 'vitest'
import { demoJobs } from '../demo/index.ts'
import type { RepairJob } from '../job/index.ts'
import { planRepair, type RepairPlan } from './index.ts'

/** Expected result of each demo job, written by hand before planning it. */
interface Expected {
  readonly kind: RepairPlan['decision']['kind']
  readonly method: RepairPlan['decision']['method']
  readonly verdict: RepairPlan['verdict']
  readonly fuseA: number | null
}

const expected: Readonly<Record<string, Expected>> = {
  'bilge-pump-feed': { kind: 'mend', method: 'new-crimped-terminal', verdict: 'caution', fuseA: 7.5 },
  'trailer-tail-lamp': { kind: 'mend', method: 'crimped-and-sealed-butt-splice', verdict: 'sound', fuseA: 5 },
  'market-stall-fridge': { kind: 'replace the run', method: 'replace-the-run', verdict: 'caution', fuseA: 7.5 },
  'orchard-gate': { kind: 'measure first', method: null, verdict: 'cannot tell', fuseA: 10 },
  'robot-motor-lead': { kind: 'replace the run', method: 'replace-the-run', verdict: 'caution', fuseA: 2 },
  'garden-railway-feeder': { kind: 'mend', method: 'soldered-lineman-splice', verdict: 'caution', fuseA: 5 },
  'float-switch-return': { kind: 'mend', method: 'crimped-and-sealed-butt-splice', verdict: 'sound', fuseA: null },
  'telescope-mount': { kind: 'leave it', method: null, verdict: 'sound', fuseA: 3 },
  'workshop-led-strip': { kind: 'mend', method: 'soldered-lineman-splice', verdict: 'caution', fuseA: 5 },
  'glider-battery-lead': { kind: 'mend', method: 'new-crimped-terminal', verdict: 'caution', fuseA: 25 },
  'kiln-thermocouple': { kind: 'mend', method: 'crimped-and-sealed-butt-splice', verdict: 'caution', fuseA: null },
  'kiln-heater': { kind: 'refused', method: null, verdict: 'refused', fuseA: null },
  'dynamo-lamp': { kind: 'mend', method: 'new-crimped-terminal', verdict: 'sound', fuseA: null },
  'classroom-set': { kind: 'mend', method: null, verdict: 'caution', fuseA: 3 },
}

const planOf = (name: string): RepairPlan => planRepair(demoJobs[name] as RepairJob)
const figureOf = (plan: RepairPlan, name: string): number | undefined =>
  plan.sections.flatMap((section) => section.values).find((value) => value.name === name)?.value
const findingOf = (plan: RepairPlan, code: string) => plan.sections.flatMap((section) => section.findings).find((finding) => finding.code === code)

describe('the demo jobs come to what was written beforehand', () => {
  test('every demo job has its line', () => {
    expect(Object.keys(expected)).toEqual(Object.keys(demoJobs))
  })

  test.each(Object.entries(expected))('%s', (name, { kind, method, verdict, fuseA }) => {
    const { decision, verdict: found } = planOf(name)
    expect({ kind: decision.kind, method: decision.method, verdict: found, fuseA: decision.fuseA }).toEqual({ kind, method, verdict, fuseA })
  })
})

describe('the figures that decide them', () => {
  test('bilge pump: 60 mm dark and 10 mm more go, and 25 mm from the plug is under the 50 mm of a soldered splice', () => {
    const plan = planOf('bilge-pump-feed')
    expect(plan.decision.lengths[0]).toMatchObject({ name: 'cut back', value: 70 })
    expect(plan.decision.notAsMeant?.text).toMatch(/solder sleeve.*50 mm/)
    // 45 mm of slack less 25 + 60 + 10 mm: 50 mm short; with 20 mm to keep, the least insert of 150 mm is used.
    expect(figureOf(plan, 'slack left')).toBe(-50)
    expect(plan.decision.wire).toMatchObject({ size: '16 AWG', lengthM: 0.15 })
  })

  test('fridge: 60 W over 12 m of 1.5 mm² drop more than the 0.6 V allowed, 2.5 mm² does not; six loaded wires at 50 °C leave it some 11 A, too little for 13.5', () => {
    const plan = planOf('market-stall-fridge')
    expect(plan.decision.wire).toMatchObject({ size: '2.5 mm²', lengthM: 12 })
    expect(figureOf(plan, 'drop over the wire, out and back')).toBeGreaterThan(0.45)
    expect(figureOf(plan, 'drop over the wire, out and back')).toBeLessThan(0.6)
  })

  test('gate: ohms cannot tell, so that a reading comes first, nothing is cut and nothing is fetched', () => {
    const plan = planOf('orchard-gate')
    expect(plan.parts).toEqual([])
    expect(plan.sequence.map(({ text }) => text).join(' ')).not.toMatch(/strip|crimp|cut back/i)
    expect(plan.diagnosis.next).not.toBeNull()
  })

  test('robot: a moving lead of half a metre is drawn anew', () => {
    const plan = planOf('robot-motor-lead')
    expect(plan.decision.wire?.lengthM).toBe(0.5)
    expect(
      plan.ways
        .find(({ method }) => method === 'crimped-butt-splice')
        ?.sections.flatMap(({ findings }) => findings)
        .map(({ code }) => code),
    ).toContain('out-of-zone')
  })

  test('float switch: a signal is proven by what its receiver shows', () => {
    const plan = planOf('float-switch-return')
    expect(plan.sequence.map(({ code }) => code)).toContain('last-reading-signal')
    expect(plan.decision.notAsMeant?.text).toMatch(/soldered lap/)
  })

  test('telescope: nothing is wrong, so that nothing is cut or fetched', () => {
    const plan = planOf('telescope-mount')
    expect([plan.sequence, plan.parts, plan.ways]).toEqual([[], [], []])
    expect(plan.decision.says).toMatch(/Look again/)
  })

  test('LED strip: three turns round both wires are some 19 diameters of wire, and lengths are told in inches', () => {
    const plan = planOf('workshop-led-strip')
    expect(plan.decision.notAsMeant?.text).toMatch(/soldered lap/)
    expect(plan.sequence.find(({ code }) => code === 'wind')?.text).toMatch(/ in of each end/)
    expect(plan.sequence.find(({ code }) => code === 'solder')?.text).toMatch(/lift at [\d.]+ s, stop at 10 s/)
  })

  test('glider: 25 A for 20 s asks for the smallest fuse that holds them, 25 A', () => {
    expect(findingOf(planOf('glider-battery-lead'), 'fuse-missing')?.text).toMatch(/25 A/)
  })

  test('kiln thermocouple: alloy to its own alloy, never solder', () => {
    const plan = planOf('kiln-thermocouple')
    expect(plan.decision.notAsMeant?.rule).toBe('me-thermocouple-no-soft-solder')
    expect(plan.sequence.map(({ code }) => code)).toContain('thermocouple')
  })

  test('kiln heater: no step, no part, and nothing that tells how to probe', () => {
    const plan = planOf('kiln-heater')
    expect([plan.sequence, plan.parts, plan.sections, plan.ways]).toEqual([[], [], [], []])
    expect(plan.cautions.join(' ')).not.toMatch(/prob|meter|clip/i)
  })

  test('dynamo: 11 of 16 strands leave 0.34 mm², and 6 V behind 8 Ω drive 0.75 A at most', () => {
    const plan = planOf('dynamo-lamp')
    expect(figureOf(plan, 'metal left at the damage')).toBeCloseTo((0.5 * 11) / 16, 6)
    expect(findingOf(plan, 'source-limited')?.values.source?.value).toBeCloseTo(0.75, 9)
    expect(plan.sequence.map(({ code }) => code)).toContain('seat-stud')
  })

  test('classroom set: 1.35 times 20 A is 27 A, more than 0.75 mm² bears; 1.5 A at three quarters ask for 3 A', () => {
    const plan = planOf('classroom-set')
    expect(findingOf(plan, 'fuse-over-wire')?.values.passes?.value).toBeCloseTo(27, 9)
    expect(plan.sequence.map(({ code }) => code)).toEqual(['switch-off', 'swap-fuse', 'power-on', 'record'])
  })
})

describe('a plan is short', () => {
  const words = (text: string): number => text.split(/\s+/).filter((word) => word !== '').length
  test('steps have 350 words at the median, findings at most 1,500', () => {
    const plans = Object.keys(expected).map(planOf)
    const steps = plans
      .filter((plan) => plan.sequence.length > 5)
      .map((plan) => words(plan.sequence.map(({ text, check }) => `${text} ${check}`).join(' ')))
      .sort((a, b) => a - b)
    expect(steps[Math.floor(steps.length / 2)]).toBeLessThanOrEqual(350)
    for (const plan of plans) expect(words(plan.sections.flatMap(({ findings }) => findings.map(({ text }) => text)).join(' '))).toBeLessThanOrEqual(1500)
  })
})
