import { describe, expect, test } from 'vitest'
import type { RepairJob } from '../job/index.ts'
import { cardLines, planRepair, type RepairPlan } from './index.ts'
import { lampWith, planJobs } from './planJobs.sample.ts'
import { codesOf, findingOf, planOf, stepOf } from './planParts.sample.ts'

describe('read as a master electrician would', () => {
  test('a clamp needs no crimp tool: the end is cut back and clamped anew, the run stays', () => {
    const plan = planRepair(lampWith({ damage: { fromTerminationMm: 4, slackMm: 100 }, terminal: { kind: 'screw-clamp' }, hasCrimpTool: false }))
    expect(plan.decision.method).toBe('new-crimped-terminal')
    expect(plan.sequence[0]?.code).toBe('switch-off')
  })

  test('aluminium is stripped, then brushed, pasted and crimped in one go; nobody looks for bright copper', () => {
    const plan = planOf('aluminium')
    expect(stepOf(plan, 'aluminium')?.text).toMatch(/^Strip .*, brush every strand bright, paste it at once, and crimp the new cable lug within/)
    expect(codesOf(plan)).not.toContain('strip-crimp-terminal')
    expect(plan.decision.says).not.toMatch(/copper/)
    expect(stepOf(planOf('aluminium in a clamp'), 'aluminium-clamp')?.text).toMatch(/put it into the clamp within/)
  })

  test('a thermocouple’s legs show ohms between them: no short is looked for, each splice is covered by itself', () => {
    const codes = codesOf(planOf('thermocouple'))
    expect(codes).not.toContain('shorts')
    expect(codes).not.toContain('shrink')
    expect(codes).toEqual(expect.arrayContaining(['cover-legs', 'switch-on-instrument']))
  })

  test('where vapour may stand nothing bare is live: no reading before covering, no power before the sleeve is shrunk', () => {
    const plan = planOf('vapour, sleeved')
    expect(codesOf(plan)).not.toContain('ratio')
    expect(codesOf(plan)).not.toContain('ratio-few')
    expect(stepOf(plan, 'shrink-later')?.text).toMatch(/No power on before the joint is covered/)
    expect(plan.decision.doneWhen.map(({ code }) => code)).toEqual(['covered-between', 'covered'])
  })

  test('a new run of feed and return has four ends; a winch’s is read within its on-time', () => {
    const plan = planOf('winch on thin wire')
    expect(plan.parts.find(({ name }) => name.startsWith('ring terminal'))?.quantity).toBe(5)
    expect(stepOf(plan, 'last-reading-run-duty')?.text).toMatch(/Within the 30 s that it may run/)
  })

  test('a wire too thin for its heat is replaced also where no fuse passes the inrush and opens the stall', () => {
    const plan = planRepair(
      lampWith({
        circuit: { kind: 'motor', fuseA: 30, allowedDropV: null },
        load: { currentA: 16, inrushA: 48, inrushS: 0.3, stallA: 60 },
        wire: { areaMm2: 2.5, strandCount: null, insulationGradeC: 105, outLengthM: 2, returnLengthM: 1 },
        surroundings: { hottestC: 95 },
      }),
    )
    expect(plan.decision.kind).toBe('replace the run')
    expect(plan.verdict).toBe('caution')
    expect(plan.decision.wire?.areaMm2).toBeGreaterThan(2.5)
    expect(plan.decision.fuseA).not.toBeNull()
  })

  test('a limit below ten counts of a millivolt range asks for four wires or a known current that shows it', () => {
    const plan = planOf('trailer-tail-lamp')
    const [limit] = plan.sections.flatMap(({ values }) => values).filter(({ name }) => name === 'drop over the new joint, at most')
    const needs = stepOf(plan, 'ratio-few')?.values.find(({ name }) => name === 'known current')
    expect(limit?.value).toBeLessThan(0.001)
    const { currentA = 0 } = (planJobs['trailer-tail-lamp'] as RepairJob).load
    expect(((limit?.value ?? 0) * (needs?.value ?? 0)) / currentA).toBeGreaterThanOrEqual(0.001)
    expect(codesOf(planOf('short burst'))).toContain('ratio')
  })

  test('where the plain wire hides the joint the covered reading has one figure between named places', () => {
    const plan = planOf('bilge-pump-feed')
    expect(findingOf(plan, 'covered-blind')).toBeDefined()
    expect(stepOf(plan, 'last-reading')?.check).toMatch(/^At most [\d.]+ m?V from fuse-out to terminal-wire; more means the joint\.$/)
  })

  test('a data pair is not "nothing to join", and a wire thicker than its seal asks for another seal', () => {
    expect(planRepair({ ...(planJobs['data pair'] as RepairJob), intendedMethod: 'solder-sleeve' }).decision.notAsMeant?.text).toMatch(
      /maker’s own procedure alone/,
    )
    const tight = planRepair(
      lampWith({
        damage: { fromTerminationMm: 10, slackMm: 300 },
        terminal: { kind: 'contact-in-housing', housingHoleMm: 2, sealInsideMm: { low: 1, high: 1.8 } },
      }),
    )
    expect(findingOf(tight, 'wire-beyond-seal')?.text).toMatch(/fit the seal made for it/)
    expect(findingOf(tight, 'hole-too-small')?.verdict).toBe('caution')
  })

  test('cautions on irons are for those who use one; what the sources dispute is no caution', () => {
    const crimped = planOf('road-vehicle, splash, crimped').cautions.join(' ')
    expect(crimped).not.toMatch(/iron as hot|grader manual/)
    expect(planOf('by lap alone').cautions.join(' ')).toMatch(/iron as hot/)
  })

  test('while the fault is sought a way meant is "not yet", not "nothing to join"', () => {
    const { decision } = planRepair({ ...(planJobs['nothing read'] as RepairJob), intendedMethod: 'crimped-butt-splice' })
    expect(decision.notAsMeant?.text).toBe('Not yet a crimped butt splice: where the fault sits is not shown.')
  })

  test('tinned wire is fetched by that name', () => {
    expect(planOf('bilge-pump-feed').sequence[0]?.text).toMatch(/16 AWG tinned XLPE wire/)
  })
})

describe('the card of a plan that measures first', () => {
  test('says where the probes go and what the two likeliest causes would show', () => {
    const lines = cardLines(planOf('nothing read'))
    expect(lines[1]).toMatch(/^Probes: the source’s plus post \(source\+\) and the load’s plus \(load\+\)\.$/)
    expect(lines.slice(2, 4).join(' ')).toMatch(/V: .+\. .*V: .+\./)
  })

  test('says so where the two ranges overlap', () => {
    const plan = planOf('nothing read')
    const { next } = plan.diagnosis
    if (next === null) throw new Error('a reading comes next')
    const values = Object.fromEntries(Object.entries(next.finding.values).map(([key, value]) => [key, { ...value, low: 1, high: 2 }]))
    const alike = { ...plan, diagnosis: { ...plan.diagnosis, next: { ...next, finding: { ...next.finding, values } } } }
    expect(cardLines(alike).join(' ')).toMatch(/The two ranges overlap/)
    const apart = {
      ...values,
      ...Object.fromEntries(
        Object.entries(values)
          .slice(0, 1)
          .map(([key, value]) => [key, { ...value, low: 5, high: 6 }]),
      ),
    }
    const unlike = { ...plan, diagnosis: { ...plan.diagnosis, next: { ...next, finding: { ...next.finding, values: apart } } } }
    expect(cardLines(unlike).join(' ')).not.toMatch(/overlap/)
  })
})

describe('what is ours or from memory is marked where it is shown', () => {
  const valueNamed = (plan: RepairPlan, name: string) => plan.sections.flatMap(({ values }) => values).find((value) => value.name === name)

  test('a strip length is common practice, in the section, on the card and in the step', () => {
    const plan = planOf('strands broken')
    expect(valueNamed(plan, 'strip')?.provenance.status).toBe('common practice')
    expect(plan.decision.lengths.find(({ name }) => name === 'strip')?.provenance.status).toBe('common practice')
    expect(stepOf(plan, 'strip-crimp')?.values.find(({ name }) => name === 'strip')?.provenance.status).toBe('common practice')
    expect(findingOf(plan, 'strip')?.text).toMatch(/without a published source/)
  })

  test('the limit of two metres for a new run is ours', () => {
    const found = findingOf(planOf('copper-clad'), 'long-run')
    expect(found?.values.most).toMatchObject({ value: 2, provenance: { status: 'common practice' } })
    expect(found?.text).toMatch(/a limit of ours/)
  })

  test('a clip’s resistance is from memory', () => {
    const strip = planJobs['workshop-led-strip'] as RepairJob
    const clipped = { ...strip, tools: (strip.tools ?? []).map((tool) => (tool.kind === 'iron' ? { ...tool, clipMm: 3 } : tool)) }
    expect(valueNamed(planRepair(clipped), 'from the clip into the air')).toMatchObject({ value: 8, provenance: { status: 'from memory' } })
  })
})
