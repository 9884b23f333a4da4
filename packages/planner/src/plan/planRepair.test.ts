import { describe, expect, test } from 'vitest'
import { bilgePumpFeed, demoJobs } from '../demo/index.ts'
import type { RepairJob } from '../job/repairJob.ts'
import { planRepair } from './planRepair.ts'
import { type RepairPlan, type SectionId, sectionIds, verdicts } from './repairPlan.ts'

const sectionOf = (plan: RepairPlan, id: SectionId) => {
  const found = plan.sections.find((section) => section.id === id)
  if (found === undefined) throw new Error(`no section ${id}`)
  return found
}
const verdictOf = (plan: RepairPlan, id: SectionId) => sectionOf(plan, id).verdict
const textOf = (plan: RepairPlan, id: SectionId) => sectionOf(plan, id).reasons.join('\n')

describe('the shape of a plan', () => {
  test.each(Object.entries(demoJobs))('%s: nine sections in order, the worst one’s verdict, finite numbers, sources', (_name, job) => {
    const plan = planRepair(job)
    expect(plan.sections.map((section) => section.id)).toEqual(sectionIds)
    expect(verdicts.indexOf(plan.verdict)).toBe(Math.max(...plan.sections.map((section) => verdicts.indexOf(section.verdict))))
    expect(plan.cautions.length).toBeGreaterThan(5)
    expect(plan.sequence.length).toBeGreaterThan(5)
    for (const section of plan.sections) {
      expect(section.reasons.length, section.id).toBeGreaterThan(0)
      for (const value of section.values) {
        expect(Number.isFinite(value.value), `${section.id} ${value.name}`).toBe(true)
        expect(value.provenance.source.length).toBeGreaterThan(0)
      }
    }
    expect(JSON.parse(JSON.stringify(plan))).toEqual(plan)
  })

  test('the same job gives the same plan, and the job is not changed', () => {
    const frozen = structuredClone(bilgePumpFeed)
    expect(planRepair(bilgePumpFeed)).toEqual(planRepair(bilgePumpFeed))
    expect(bilgePumpFeed).toEqual(frozen)
  })

  test('a job that the schema would refuse is refused', () => {
    expect(() => planRepair({ ...bilgePumpFeed, load: {} })).toThrow(/load/)
  })
})

describe('the bilge pump feed', () => {
  const plan = planRepair(bilgePumpFeed)

  test('the weak hot-air tool never flows the ring, and the plan says with numbers why', () => {
    expect(verdictOf(plan, 'heating')).toBe('unsound')
    expect(textOf(plan, 'heating')).toMatch(/held on for ever the wire in the sleeve comes to \d+ °C; the ring is liquid at 138 °C/)
    expect(textOf(plan, 'heating')).toMatch(/To make it flow: air of \d+ °C/)
  })

  test('25 mm behind the plug is no place for that joint, and the plan says what to do', () => {
    expect(verdictOf(plan, 'method')).toBe('unsound')
    expect(verdictOf(plan, 'cut-back')).toBe('unsound')
    expect(textOf(plan, 'cut-back')).toMatch(/25 mm from the plug/)
    expect(textOf(plan, 'method')).toMatch(/Do instead: new crimped terminal/)
    expect(plan.sequence.some((step) => /crimp the new terminal/.test(step.text))).toBe(true)
  })

  test('a hotter tool turns the heating', () => {
    const hotter = planRepair({ ...bilgePumpFeed, tools: [{ name: 'strong hot-air tool', kind: 'hot-air', airC: 320, airSpeedMPerS: 12, nozzleMm: 25 }] })
    expect(['sound', 'caution']).toContain(verdictOf(hotter, 'heating'))
    expect(textOf(hotter, 'heating')).toMatch(/wetted in about/)
  })

  test('a break 400 mm from the plug turns method and cut-back', () => {
    const farther = planRepair({ ...bilgePumpFeed, damage: { ...bilgePumpFeed.damage, fromTerminationMm: 400 } })
    expect(['sound', 'caution']).toContain(verdictOf(farther, 'method'))
    expect(['sound', 'caution']).toContain(verdictOf(farther, 'cut-back'))
  })

  test('under small-craft rules a solder sleeve is out wherever the break lies', () => {
    const craft = planRepair({
      ...bilgePumpFeed,
      circuit: { ...bilgePumpFeed.circuit, rules: ['small-craft'] },
      damage: { ...bilgePumpFeed.damage, fromTerminationMm: 400 },
    })
    expect(verdictOf(craft, 'method')).toBe('unsound')
  })

  test('the two-wire reading tells nothing, the drop under load proves the fault', () => {
    expect(textOf(plan, 'readings')).toMatch(/proves neither a good nor a bad joint/)
    expect(textOf(plan, 'readings')).toMatch(/it fails/)
    const onlyOhms = planRepair({ ...bilgePumpFeed, readings: bilgePumpFeed.readings?.slice(0, 1) ?? [] })
    expect(verdictOf(onlyOhms, 'readings')).toBe('cannot tell')
  })
})

describe('verdicts follow the physics', () => {
  const lamp = demoJobs['trailer-tail-lamp'] as RepairJob

  test('the trailer lamp comes out sound', () => {
    expect(
      planRepair(lamp)
        .sections.filter((section) => section.verdict !== 'sound')
        .map((section) => [section.id, section.reasons]),
    ).toEqual([])
    expect(planRepair(lamp).verdict).toBe('sound')
  })

  test('too much current for the wire is unsound', () => {
    const hot = planRepair({ ...lamp, load: { currentA: 60 } })
    expect(verdictOf(hot, 'wire-and-protection')).toBe('unsound')
    expect(textOf(hot, 'wire-and-protection')).toMatch(/no steady temperature|above the/)
  })

  test('a fuse too large for the wire is unsound, and one that fits is named', () => {
    const plan = planRepair({ ...lamp, circuit: { ...lamp.circuit, fuseA: 40 } })
    expect(verdictOf(plan, 'wire-and-protection')).toBe('unsound')
    expect(textOf(plan, 'wire-and-protection')).toMatch(/blade fuse carries this load and guards this wire/)
  })

  test('negative slack asks for an inserted length of wire', () => {
    const plan = planRepair({ ...lamp, damage: { ...lamp.damage, slackMm: 0 } })
    expect(verdictOf(plan, 'cut-back')).toBe('caution')
    expect(plan.parts.some((part) => part.name.includes('to put in') && part.unit === 'mm')).toBe(true)
  })

  test('what is proven is the repair that is made: the limits and the sample of the way advised', () => {
    const plan = planRepair(bilgePumpFeed)
    const proof = plan.sections.find(({ id }) => id === 'proof')
    const sample = proof?.values.find(({ name }) => name === 'sample holds at least')
    expect(proof?.reasons[0]).toMatch(/new crimped terminal that the plan advises/)
    expect(sample?.unit).toBe('N')
    const stepValues = plan.sequence.flatMap((step) => step.values)
    expect(stepValues).toContainEqual(sample)
    for (const name of ['drop over the new joint, at most', 'make it again from'])
      expect(stepValues.filter((value) => value.name === name)).toEqual(proof?.values.filter((value) => value.name === name))
  })

  test('the reason that decides a section comes first', () => {
    const plan = planRepair(bilgePumpFeed)
    const first = (id: string): string => plan.sections.find((section) => section.id === id)?.reasons[0] ?? ''
    expect(first('readings')).toMatch(/prove the fault/)
    expect(first('wire-and-protection')).toMatch(/0.360 V is allowed/)
    expect(first('cut-back')).toMatch(/a splice there wants/)
    expect(first('heating')).toMatch(/too cold to wet/)
  })

  test('what is meant and suits on conditions is done; a new run comes after it, save where the wire bends at work', () => {
    const way = (name: string): string =>
      planRepair(demoJobs[name] as RepairJob)
        .sequence.map((step) => step.text)
        .join(' ')
    expect(way('market-stall-fridge')).toMatch(/crimp the new terminal/)
    expect(way('garden-railway-feeder')).toMatch(/feed about/)
    expect(way('robot-motor-lead')).toMatch(/new run .* drop over the whole run/)
  })

  test('a current that was worked out from power is rounded wherever it is told', () => {
    const told = JSON.stringify(planRepair(demoJobs['market-stall-fridge'] as RepairJob).sections.map((section) => section.reasons))
    expect(told).toContain('5.41 A')
    expect(told).not.toMatch(/\d\.\d{5}/)
  })

  test('a lead that moves forbids every splice there', () => {
    const plan = planRepair({ ...lamp, surroundings: { ...lamp.surroundings, flexes: true } })
    expect(verdictOf(plan, 'method')).toBe('unsound')
  })

  test('vapour forbids everything hot', () => {
    const plan = planRepair({ ...bilgePumpFeed, surroundings: { ...bilgePumpFeed.surroundings, flammableVapour: true } })
    expect(verdictOf(plan, 'heating')).toBe('unsound')
    expect(plan.cautions[0]).toMatch(/vapour/i)
  })

  test('copper-clad aluminium sold as copper is unsound', () => {
    expect(verdictOf(planRepair({ ...lamp, wire: { ...lamp.wire, material: 'copper-clad-aluminium' } }), 'wire-and-protection')).toBe('unsound')
  })
})

describe('the stop list', () => {
  test.each(['airbag', 'high-voltage', 'mains', 'safety', 'fuel-or-explosive'] as const)('%s is refused, with what to do instead', (kind) => {
    const plan = planRepair({ ...bilgePumpFeed, circuit: { ...bilgePumpFeed.circuit, kind } })
    expect(plan.verdict).toBe('refused')
    expect(plan.sections.every((section) => section.verdict === 'refused')).toBe(true)
    expect(plan.sequence).toEqual([])
    expect(plan.cautions[0]?.length).toBeGreaterThan(40)
  })

  test('above 60 V DC and above 30 V AC rms is refused; at the limit it is not', () => {
    const at = (supplyV: number, waveform: 'dc' | 'ac') => planRepair({ ...bilgePumpFeed, circuit: { ...bilgePumpFeed.circuit, supplyV, waveform } }).verdict
    expect([at(60.1, 'dc'), at(30.1, 'ac')]).toEqual(['refused', 'refused'])
    expect([at(60, 'dc'), at(30, 'ac')]).not.toContain('refused')
  })

  test('a data pair is caution at best', () => {
    const plan = planRepair({ ...(demoJobs['trailer-tail-lamp'] as RepairJob), circuit: { kind: 'data-pair', supplyV: 12 }, load: { currentA: 0.02 } })
    expect(verdicts.indexOf(plan.verdict)).toBeGreaterThanOrEqual(verdicts.indexOf('caution'))
    expect(plan.cautions[0]).toMatch(/data pair/)
  })
})
