import { describe, expect, test } from 'vitest'
import type { RepairJob } from '../job/index.ts'
import { planRepair } from './index.ts'
import { lampWith, planJobs } from './planJobs.sample.ts'
import { codesOf, planOf } from './planParts.sample.ts'

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
