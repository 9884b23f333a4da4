import { describe, expect, test } from 'vitest'
import type { RepairJob } from '../job/index.ts'
import { cardLines, planRepair, type RepairPlan } from './index.ts'
import { lampWith, planJobs } from './planJobs.sample.ts'

const planOf = (name: string): RepairPlan => planRepair(planJobs[name] as RepairJob)
const codesOf = (plan: RepairPlan): readonly string[] => plan.sequence.map(({ code }) => code)
const stepOf = (plan: RepairPlan, code: string) => plan.sequence.find((step) => step.code === code)
const findingOf = (plan: RepairPlan, code: string) => plan.sections.flatMap(({ findings }) => findings).find((finding) => finding.code === code)

describe('each row of a decision: what it says, which way, what is done between switching off and on, and what shows that it is done', () => {
  test.each([
    ['strands broken', 'mend', 'crimped-and-sealed-butt-splice', /^Cut out the damage and join/, 'cut-both-ends', 'strip-crimp', 'ratio-few'],
    ['moving', 'mend', 'crimped-and-sealed-butt-splice', /^Put in 150 mm or more .* where the lead does not move/, 'insert', 'strip-crimp', 'ratio-few'],
    [
      'at a plug',
      'mend',
      'new-crimped-terminal',
      /^Cut back to bright metal and fit a new crimped contact/,
      'release-contact',
      'seat-contact',
      'covered-between',
    ],
    ['at a spring clamp', 'mend', 'new-crimped-terminal', /^Fit a new end in its spring clamp on 150 mm/, 'release-clamp', 'seat-spring', 'covered-between'],
    ['thermocouple', 'mend', 'crimped-and-sealed-butt-splice', /^Join each leg to its own alloy/, 'polarity', 'cover-legs', 'signal'],
    ['copper-clad', 'replace the run', 'replace-the-run', /^Replace the run: draw in 10 m/, 'release-both', 'seat-both', 'run'],
    ['telescope-mount', 'leave it', null, /^Leave it: nothing that was read is wrong/, null, null, null],
    ['nothing read', 'measure first', null, /^Next, read the drop .* Cut nothing yet/, 'take-reading', null, null],
    ['short', 'measure first', null, /^Power nothing: a short is proven/, 'find-short', null, null],
    ['classroom-set', 'mend', null, /^Join nothing: fit a 3 A fuse/, 'swap-fuse', null, 'works'],
    ['fuse contact', 'mend', null, /^Join nothing: renew the fuse/, 'clean-fuse', null, 'contact'],
    ['bad return', 'mend', null, /^Clean and remake the return connection between load- and source-/, 'clean-return', null, 'contact'],
    ['flat supply', 'mend', null, /^Charge or renew the supply/, 'clean-supply', null, 'works'],
    ['open load', 'mend', null, /^Mend or replace the load/, 'mend-load', null, 'works'],
    ['leak', 'mend', null, /^Find where water or chafed insulation/, 'find-leak', null, 'dry'],
    ['data pair', 'mend', null, /^Join this data pair only by its maker’s own procedure/, 'makers-procedure', null, 'signal'],
    ['airbag', 'refused', null, /^Airbag and belt-tensioner wiring: leave it alone/, null, null, null],
  ] as const)('%s', (name, kind, method, says, first, last, done) => {
    const plan = planOf(name)
    expect([plan.decision.kind, plan.decision.method]).toEqual([kind, method])
    expect(plan.decision.says).toMatch(says)
    const codes = codesOf(plan)
    if (first === null) expect(codes).toEqual([])
    else expect(codes).toContain(first)
    if (last !== null) expect(codes.indexOf(last)).toBeGreaterThan(codes.indexOf(first ?? ''))
    expect(plan.decision.doneWhen[0]?.code ?? null).toBe(done)
  })

  test('nothing is wrong but a bolt-down fuse of a higher rating than the wire bears: one by its curve is fitted, and no rating is made up', () => {
    const { circuit, ...rest } = planJobs['classroom-set'] as RepairJob
    const { fuseSeries: _series, ...fed } = circuit
    const plan = planRepair({ ...rest, circuit: { ...fed, fuseA: 125, fuseKind: 'bolt-down' } })
    expect(plan.diagnosis.fault).toBe('none here')
    expect(plan.decision).toMatchObject({
      kind: 'mend',
      method: null,
      fuseA: null,
      says: expect.stringMatching(/the 125 A bolt-down fuse is wrong for this wire/i),
    })
    expect(codesOf(plan)).toEqual(['switch-off', 'swap-by-curve', 'power-on', 'record'])
  })
})

describe('the order of the work', () => {
  const joined = Object.entries(planJobs)
    .map(([name, job]) => [name, planRepair(job)] as const)
    .filter(([, { decision }]) => decision.method !== null)
  /** True if the first of two steps does not come after the second, wherever both are taken. */
  const before = (codes: readonly string[], one: string, other: string) =>
    !codes.includes(one) || !codes.includes(other) || codes.indexOf(one) < codes.indexOf(other)

  test('switched off before anything is cut, sleeves on before joining, covered before power, shorts read before power, the record last', () => {
    const orders = [
      ['vent', 'switch-off'],
      ['switch-off', 'cut-both-ends'],
      ['switch-off', 'cut-one-end'],
      ['switch-off', 'release-both'],
      ['swap-fuse', 'power-on-fuse'],
      ['add-fuse', 'power-on-fuse'],
      ...['strip-crimp', 'strip-crimp-terminal', 'aluminium', 'wind', 'lay-lap'].map((join) => ['slide-sleeve', join]),
      ['slide-seal', 'strip-crimp-terminal'],
      ['slide-solder-sleeve', 'heat-sleeve'],
      ['sample', 'strip-crimp'],
      ['wind', 'solder'],
      ['clip', 'solder'],
      ['solder', 'wash-flux'],
      ['ratio', 'shrink'],
      ['ratio-few', 'shrink'],
      ...['shrink', 'shrink-later', 'seat-contact', 'seat-stud', 'seat-both', 'shorts'].flatMap((done) => [
        [done, 'power-on'],
        [done, 'power-on-fuse'],
      ]),
    ] as const
    for (const [name, plan] of joined) {
      const codes = codesOf(plan)
      for (const [one = '', other = ''] of orders) expect(before(codes, one, other), `${name}: ${one} before ${other} in ${codes}`).toBe(true)
      expect(codes.at(-1), name).toMatch(/^record/)
      expect(codes.filter((code) => code === 'switch-off').length, name).toBe(1)
    }
  })

  test('what is fetched stands in the parts, and a part fetched beyond what is fitted is for the sample', () => {
    for (const [name, { decision, parts }] of joined) {
      if (decision.wire !== null) expect(parts[0]?.name, name).toContain(decision.wire.size)
      for (const part of parts) if (/splice|contact|lug|terminal/.test(part.name) && part.quantity > 2) expect(part.name, name).toContain('one for the sample')
    }
  })

  test('each kind of terminal is taken off, made and seated in its own way', () => {
    const at = (kind: string) =>
      codesOf(planRepair(lampWith({ damage: { fromTerminationMm: 10, slackMm: 300 }, terminal: { kind } as never, hasTerminalDie: true }))).filter((code) =>
        /^(release|seat|strip|sample)/.test(code),
      )
    expect(at('contact-in-housing')).toEqual(['release-contact', 'sample', 'strip-crimp-terminal', 'seat-contact'])
    expect(at('push-on')).toEqual(['release-push-on', 'sample', 'strip-crimp-terminal', 'seat-push-on'])
    for (const kind of ['ring', 'fork', 'cable-lug']) expect(at(kind)).toEqual(['release-stud', 'sample', 'strip-crimp-terminal', 'seat-stud'])
    expect(at('screw-clamp')).toEqual(['release-clamp', 'strip-clamp', 'seat-clamp'])
    expect(at('spring-clamp')).toEqual(['release-clamp', 'strip-spring', 'seat-spring'])
  })
})

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
