import { describe, expect, test } from 'vitest'
import type { MethodContext, MethodName } from '../rules/index.ts'
import { assessMethods } from './assessMethods.ts'

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

describe('assessMethods: place, wire and tools', () => {
  test('in the wet a seal: an unsealed crimp is temporary, a solder joint wants a lined sleeve, a sealed splice brings its own', () => {
    expect(rulesOf({ location: 'damp', insulation: 'XLPE' }, 'crimped-butt-splice', 'requires')).toEqual(['me-unsealed-not-in-wet'])
    expect(rulesOf({ location: 'damp' }, 'soldered-lineman-splice', 'requires')).toContain('me-wet-seal')
    expect(verdict({ location: 'damp', insulation: 'XLPE' }, 'crimped-and-sealed-butt-splice')).toBe('suitable')
    expect(rulesOf({ location: 'damp', rules: ['aircraft'] }, 'crimped-butt-splice', 'requires')).toContain('me-sealed-splice-permanent')
  })

  test('under water a sealed crimp first, an unsealed one, a lap and a solder sleeve not at all', () => {
    const bilge = { location: 'submerged', insulation: 'XLPE' } as const
    expect(order(bilge)[0]).toBe('crimped-and-sealed-butt-splice')
    for (const method of ['crimped-butt-splice', 'soldered-lap', 'solder-sleeve'] as const) expect(rulesOf(bilge, method, 'forbids')).toContain('me-submerged')
    expect(rulesOf(bilge, 'soldered-lineman-splice', 'requires')).toContain('cb-above-water')
  })

  test('a liner does not stick to silicone or PTFE, and lets go above 80 C: no seal there without more', () => {
    expect(rulesOf({ location: 'splash', insulation: 'silicone' }, 'crimped-and-sealed-butt-splice', 'requires')).toEqual(['co-adhesive-no-bond'])
    const engine = { location: 'splash', insulation: 'XLPE', hottestC: 81 } as const
    expect(rulesOf(engine, 'crimped-and-sealed-butt-splice', 'requires')).toEqual(['co-adhesive-softens'])
    expect(verdict({ ...engine, location: 'dry' }, 'crimped-and-sealed-butt-splice')).toBe('suitable')
  })

  test('strong vibration: crimps first, solder only where wire and joint are held as one', () => {
    expect(rulesOf({ vibration: 'strong' }, 'soldered-lineman-splice', 'requires')).toEqual(['sr-solder-support'])
    expect(verdict({ vibration: 'some' }, 'soldered-lineman-splice')).toBe('suitable')
    expect(rulesOf({ vibration: 'strong' }, 'crimped-butt-splice', 'favours')).toContain('me-vibration-crimp')
  })

  test('heat: 40 K below the solidus unloaded, 80 K where it shakes; above what any alloy stands, no solder', () => {
    expect(verdict({ hottestC: 143 }, 'soldered-lineman-splice')).toBe('suitable')
    expect(rulesOf({ hottestC: 144 }, 'soldered-lineman-splice', 'requires')).toEqual(['me-temp-zone'])
    expect(rulesOf({ hottestC: 104, vibration: 'some' }, 'soldered-lineman-splice', 'requires')).toEqual(['me-temp-zone'])
    expect(rulesOf({ hottestC: 220 }, 'soldered-lineman-splice', 'forbids')).toEqual(['me-temp-zone'])
  })

  test('a solder sleeve wants insulation that outlasts its ring', () => {
    expect(rulesOf({ insulation: 'PVC' }, 'solder-sleeve', 'requires')).toContain('me-solder-sleeve-insulation')
    expect(rulesOf({ insulation: 'PTFE' }, 'solder-sleeve', 'requires')).not.toContain('me-solder-sleeve-insulation')
  })

  test('aluminium: no splice with copper, only a terminal made for it; copper-clad aluminium is replaced', () => {
    const aluminium = { metals: ['aluminium-1350', 'annealed-copper'] } as const
    for (const method of splices) expect(rulesOf(aluminium, method, 'forbids')).toContain('me-al-terminals')
    expect(rulesOf(aluminium, 'new-crimped-terminal', 'requires')).toEqual(expect.arrayContaining(['me-al-clean', 'me-galvanic-harsh']))
    const clad = { metals: ['copper-clad-aluminium', 'annealed-copper'] } as const
    expect(
      assessMethods({ ...bench, ...clad })
        .filter((one) => one.verdict !== 'unsuitable')
        .map((one) => one.method),
    ).toEqual(['replace-the-run'])
  })

  test('unlike metals: 0.25 V in ordinary air passes, in the damp 0.15 V is the limit', () => {
    const pair = { metals: ['annealed-copper', 'tinned-copper'] } as const
    expect(verdict(pair, 'new-crimped-terminal')).toBe('suitable')
    expect(rulesOf({ ...pair, location: 'damp' }, 'new-crimped-terminal', 'requires')).toEqual(['me-galvanic-harsh'])
  })

  test.each(['tin', 'tinned-copper'] as const)(
    'anodic index, %s on copper, 0.25 V: no condition in the dry; in the damp a condition that gives both figures',
    (plating) => {
      for (const metals of [
        ['annealed-copper', plating],
        [plating, 'annealed-copper'],
      ] as const)
        for (const method of ['crimped-butt-splice', 'new-crimped-terminal'] as const) {
          expect(verdict({ metals }, method)).toBe('suitable')
          const damp = assessMethods({ ...bench, metals, location: 'damp' }).find((one) => one.method === method)
          expect(damp?.verdict).toBe('conditional')
          const reason = damp?.reasons.find(({ rule }) => rule === 'me-galvanic-harsh')
          expect(reason?.effect).toBe('requires')
          expect(reason?.changesIf).toContain('anodic indexes 0.25 V apart, 0.15 V allowed')
        }
      expect(verdict({ metals: [plating, plating], location: 'dry' }, 'new-crimped-terminal')).toBe('suitable')
    },
  )

  test('thermocouple: no soft solder, the same alloys on both legs', () => {
    for (const method of soldered) expect(rulesOf({ circuit: 'thermocouple' }, method, 'forbids')).toEqual(['me-thermocouple-no-soft-solder'])
    expect(rulesOf({ circuit: 'thermocouple' }, 'crimped-butt-splice', 'requires')).toContain('me-thermocouple')
  })

  test('nickel or silver plating above 150 C goes into nickel-plated barrels', () => {
    expect(rulesOf({ hottestC: 151, metals: ['nickel', 'nickel'] }, 'crimped-butt-splice', 'requires')).toEqual(['me-nickel-above-150'])
    expect(verdict({ hottestC: 151 }, 'crimped-butt-splice')).toBe('suitable')
  })

  test.each([
    ['crimped-butt-splice', 'crimp-tool', 'me-ratchet-tool'],
    ['new-crimped-terminal', 'terminal-die', 'me-barrel-range'],
    ['soldered-lineman-splice', 'iron', 'he-heat-the-work'],
    ['solder-sleeve', 'hot-air', 'he-solder-sleeve-order'],
    ['crimped-and-sealed-butt-splice', 'hot-air', 'co-from-centre'],
  ] as const)('%s without a %s at hand is conditional and says so (%s)', (method, tool, rule) => {
    const without = { tools: tools.filter((one) => one !== tool) }
    expect(rulesOf(without, method, 'requires')).toContain(rule)
    expect(rulesOf({}, method, 'requires')).not.toContain(rule)
  })

  test('a heavy cable favours the crimp; a place that cannot be reached asks for another; a joint to come apart is made at the plug', () => {
    expect(rulesOf({ areaMm2: 16 }, 'new-crimped-terminal', 'favours')).toContain('me-heavy-cable')
    expect(rulesOf({ areaMm2: 15.9 }, 'new-crimped-terminal', 'favours')).not.toContain('me-heavy-cable')
    expect(rulesOf({ accessMm: 99 }, 'crimped-butt-splice', 'requires')).toEqual(['cb-accessible'])
    expect(verdict({ accessMm: 100 }, 'crimped-butt-splice')).toBe('suitable')
    expect(order({ reversible: true })[0]).toBe('new-crimped-terminal')
  })
})
