import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type MethodContext, type MethodName, methodDecidingRules, practiceRules } from '../rules/index.ts'
import { assessMethods } from './assessMethods.ts'
import { requirements } from './requirements.ts'

const tools = ['iron', 'hot-air', 'crimp-tool', 'terminal-die'] as const
const bench: MethodContext = Object.freeze({
  circuit: 'power',
  location: 'dry',
  vibration: 'none',
  flexes: false,
  hottestC: 40,
  coldestC: 10,
  currentA: 4.2,
  areaMm2: 1,
  metals: ['annealed-copper', 'annealed-copper'] as const,
  insulation: 'PTFE',
  flammableVapour: false,
  tools,
})
const soldered: readonly MethodName[] = ['soldered-lap', 'soldered-lineman-splice', 'solder-sleeve']
const splices: readonly MethodName[] = [...soldered, 'crimped-butt-splice', 'crimped-and-sealed-butt-splice']

function assessed(change: Partial<MethodContext>, method: MethodName) {
  const found = assessMethods({ ...bench, ...change }).find((candidate) => candidate.method === method)
  if (found === undefined) throw new Error(`no ${method}`)
  return found
}
const verdict = (change: Partial<MethodContext>, method: MethodName) => assessed(change, method).verdict
const order = (change: Partial<MethodContext>) => assessMethods({ ...bench, ...change }).map((candidate) => candidate.method)
const rulesOf = (change: Partial<MethodContext>, method: MethodName, effect: string) =>
  assessed(change, method)
    .reasons.filter((reason) => reason.effect === effect)
    .map((reason) => reason.rule)

const anyContext = fc.record({
  circuit: fc.constantFrom('power', 'motor', 'signal', 'data-pair', 'thermocouple', 'safety', 'airbag', 'fuel-or-explosive'),
  location: fc.constantFrom('dry', 'damp', 'splash', 'submerged'),
  vibration: fc.constantFrom('none', 'some', 'strong'),
  flexes: fc.boolean(),
  hottestC: fc.constantFrom(20, 60, 120, 160, 240),
  coldestC: fc.constantFrom(-30, 0, 10),
  currentA: fc.constant(4),
  areaMm2: fc.constantFrom(0.5, 25),
  metals: fc.constantFrom<MethodContext['metals'][]>(
    ['annealed-copper', 'annealed-copper'],
    ['tinned-copper', 'brass-cuzn30'],
    ['aluminium-1350', 'tin'],
    ['copper-clad-aluminium', 'tin'],
    ['nickel', 'nickel'],
  ),
  insulation: fc.constantFrom('PVC', 'PTFE', 'XLPE', 'silicone'),
  distanceToTerminationMm: fc.constantFrom(10, 70, 200, 500),
  accessMm: fc.constantFrom(20, 400),
  flammableVapour: fc.boolean(),
  tools: fc.subarray([...tools]),
  rules: fc.subarray(['small-craft', 'aircraft', 'road-vehicle', 'space', 'none'] as const),
}) as fc.Arbitrary<MethodContext>

describe('assessMethods: the shape', () => {
  test('seven methods, each once; a rule that forbids makes unsuitable, an unmet requirement conditional; best first', () => {
    fc.assert(
      fc.property(anyContext, (context) => {
        const all = assessMethods(context)
        expect(new Set(all.map((one) => one.method)).size).toBe(7)
        const steps = ['suitable', 'conditional', 'unsuitable']
        const rank = all.map((one) => steps.indexOf(one.verdict))
        expect(rank).toEqual([...rank].sort((a, b) => a - b))
        for (const one of all) {
          const effects = one.reasons.map((reason) => reason.effect)
          expect(one.verdict).toBe(effects.includes('forbids') ? 'unsuitable' : effects.includes('requires') ? 'conditional' : 'suitable')
        }
      }),
    )
  })

  test('every reason is a rule of the collection in its own words and with its own source; what is asked says what would meet it', () => {
    fc.assert(
      fc.property(anyContext, (context) => {
        for (const one of assessMethods(context)) {
          for (const reason of one.reasons) {
            const rule = practiceRules.find((candidate) => candidate.id === reason.rule)
            expect(reason.text).toBe(rule?.statement)
            expect(reason.source).toBe(rule?.source)
            if (reason.effect === 'requires') expect(reason.changesIf).toBeDefined()
          }
        }
      }),
    )
  })

  test('a further tool at hand makes no method worse', () => {
    const steps = ['suitable', 'conditional', 'unsuitable']
    fc.assert(
      fc.property(anyContext, fc.constantFrom(...tools), (context, more) => {
        for (const one of assessMethods({ ...context, tools: [...new Set([...context.tools, more])] })) {
          const before = assessMethods(context).find((candidate) => candidate.method === one.method)
          expect(steps.indexOf(one.verdict)).toBeLessThanOrEqual(steps.indexOf(before?.verdict ?? 'suitable'))
        }
      }),
    )
  })

  test('each requirement belongs to a rule that decides a method, and each rule that asks for something has one or is workmanship', () => {
    const workmanship = new Set([...['cb-tin-fails-on-oxide', 'cb-rosin-limit', 'me-no-strand-trim', 'me-thermocouple-polarity', 'me-emergency-temporary']])
    const ids = methodDecidingRules.map((rule) => rule.id)
    for (const id of Object.keys(requirements)) expect(ids).toContain(id)
    for (const rule of methodDecidingRules) {
      if (rule.effect === 'requires' || rule.effect === 'limits') expect(rule.id in requirements || workmanship.has(rule.id), rule.id).toBe(true)
    }
  })
})

describe('assessMethods: what sources settle', () => {
  test('a dry bench with every tool: crimps and a wrapped splice are suitable, a lap and a solder sleeve want another hold first', () => {
    expect(order({}).slice(0, 2)).toEqual(['crimped-and-sealed-butt-splice', 'crimped-butt-splice'])
    expect(verdict({}, 'soldered-lineman-splice')).toBe('suitable')
    expect(rulesOf({}, 'soldered-lap', 'requires')).toEqual(['me-mechanical-first', 'me-nec-solder'])
    expect(verdict({}, 'solder-sleeve')).toBe('conditional')
  })

  test('a moving zone: every splice is forbidden there, and the verdict changes if the joint moves out of it', () => {
    for (const method of splices) {
      expect(verdict({ flexes: true }, method)).toBe('unsuitable')
      expect(assessed({ flexes: true }, method).reasons[0]?.changesIf).toMatch(/moves to where/)
    }
    expect(order({ flexes: true })[0]).toMatch(/new-crimped-terminal|replace-the-run/)
  })

  test('PVC that moves in frost favours replacing the run', () => {
    const frost = { flexes: true, insulation: 'PVC', coldestC: -20 } as const
    expect(rulesOf(frost, 'replace-the-run', 'favours')).toContain('cb-cold-pvc')
    expect(rulesOf({ ...frost, flexes: false }, 'replace-the-run', 'favours')).not.toContain('cb-cold-pvc')
  })

  test('small craft: lap and solder sleeve forbidden; a wrapped splice conditional, after the sealed crimp', () => {
    const boat = { rules: ['small-craft'] } as const
    expect(verdict(boat, 'soldered-lap')).toBe('unsuitable')
    expect(verdict(boat, 'solder-sleeve')).toBe('unsuitable')
    expect(verdict(boat, 'soldered-lineman-splice')).toBe('conditional')
    for (const some of [[], ['iron'], tools] as const) {
      const ranked = order({ ...boat, tools: some })
      expect(ranked.indexOf('crimped-and-sealed-butt-splice')).toBeLessThan(ranked.indexOf('soldered-lineman-splice'))
    }
  })

  test('near a plug: below 50 mm no solder, below 100 mm a new terminal first or an inserted length', () => {
    for (const method of soldered) {
      expect(rulesOf({ distanceToTerminationMm: 49.9 }, method, 'forbids')).toEqual(['me-no-lap-at-plug'])
      expect(rulesOf({ distanceToTerminationMm: 50 }, method, 'forbids')).toEqual([])
    }
    expect(order({ distanceToTerminationMm: 99 })[0]).toBe('new-crimped-terminal')
    expect(rulesOf({ distanceToTerminationMm: 99 }, 'crimped-butt-splice', 'requires')).toEqual(['cb-no-room-at-plug'])
    expect(verdict({ distanceToTerminationMm: 100 }, 'crimped-butt-splice')).toBe('suitable')
  })

  test('305 mm from a termination only under aircraft rules', () => {
    const near = { distanceToTerminationMm: 304 } as const
    expect(verdict(near, 'crimped-butt-splice')).toBe('suitable')
    expect(rulesOf({ ...near, rules: ['aircraft'] }, 'crimped-butt-splice', 'requires')).toEqual(['cb-splice-12in'])
    expect(verdict({ distanceToTerminationMm: 305, rules: ['aircraft'] }, 'crimped-butt-splice')).toBe('suitable')
  })

  test('vapour: nothing hot, heat-sealed crimps included; a cold crimp and a new terminal stay', () => {
    for (const method of [...soldered, 'crimped-and-sealed-butt-splice'] as const) expect(verdict({ flammableVapour: true }, method)).toBe('unsuitable')
    expect(verdict({ flammableVapour: true }, 'crimped-butt-splice')).toBe('suitable')
    expect(verdict({ flammableVapour: true }, 'new-crimped-terminal')).toBe('suitable')
  })

  test.each(['airbag', 'safety', 'high-voltage', 'mains', 'fuel-or-explosive'] as const)('%s: every method is out', (circuit) => {
    for (const one of assessMethods({ ...bench, circuit })) expect(one.verdict, one.method).toBe('unsuitable')
  })

  test("a data pair: a splice only by the maker's own procedure", () => {
    for (const method of splices) expect(rulesOf({ circuit: 'data-pair' }, method, 'requires')).toContain('me-databus')
  })
})
