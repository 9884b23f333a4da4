import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError } from '../../errors/index.ts'
import { solders } from '../../materials/index.ts'
import { heatJoint } from '../heatJoint.ts'
import { tipContactDefaults, tipContactKPerW } from '../tipContact.ts'
import { heatVerdict } from './heatVerdict.ts'
import type { HeatVerdictInput } from './verdictTypes.ts'

const iron = (contactResistanceKPerW: number, maximumW = 60, setC = 360) =>
  ({ kind: 'iron', setC, maximumW, tipResistanceKPerW: 1.5, contactResistanceKPerW }) as const
const pvc = { areaMm2: 0.75, stubMm: 6, insulation: 'PVC', insulationOutsideMm: 2 } as const
const joint: HeatVerdictInput = { ambientC: 20, tool: iron(6), joint: { lapMm: 8, diameterMm: 2.4, solderMm3: 5.5 }, conductors: [pvc, pvc], alloy: 'Sn60Pb40' }
const codes = (i: HeatVerdictInput): readonly string[] => heatVerdict(i).findings.map(({ code, verdict }) => `${code}: ${verdict}`)
/** Insulation with a limit far above any joint's temperature, so that only wetting decides. */
const spared = (i: HeatVerdictInput): HeatVerdictInput => ({ ...i, conductors: i.conductors.map((side) => ({ ...side, insulationLimitC: 900 })) })

describe('the rule on heat', () => {
  test('flow: sound at both ends within 5 s, late is caution, one end short of it too, only the favourable end cannot tell, none is unsound', () => {
    const flow = (contact: number, more: Partial<HeatVerdictInput> = {}) => {
      const { verdict, findings, ends } = heatVerdict(spared({ ...joint, tool: iron(contact), ...more }))
      return [verdict, findings[0]?.code, ends.favourable.wettedAtS !== null, ends.nominal.wettedAtS !== null, ends.unfavourable.wettedAtS !== null]
    }
    const thick = { conductors: [{ ...pvc, areaMm2: 2.5, insulationOutsideMm: 3.6 }] }
    expect(flow(3)).toEqual(['sound', 'wets', true, true, true])
    expect(flow(3, { conductors: [...thick.conductors, ...thick.conductors] })).toEqual(['caution', 'wets-late', true, true, true])
    expect(flow(8, { conductors: [...thick.conductors, ...thick.conductors] })).toEqual(['caution', 'unfavourable-does-not-wet', true, true, false])
    expect(flow(20, { conductors: [...thick.conductors, ...thick.conductors] })).toEqual(['cannot tell', 'only-favourable-wets', true, false, false])
    expect(flow(3, { tool: iron(3, 4) })).toEqual(['unsound', 'never-wets', false, false, false])
  })

  test('a joint of PVC wire soldered by hand is no failure: the limit of its insulation is an estimate', () => {
    expect(codes(joint)).toEqual(['limit-passed: caution', 'wets: sound'])
  })

  test('a published limit binds where it is passed even at the favourable end; from memory it gives caution', () => {
    const limited: HeatVerdictInput = { ...joint, conductors: [{ ...pvc, insulationLimitC: 105 }] }
    expect(codes(limited)[0]).toBe('limit-passed: unsound')
    expect(codes({ ...limited, limitStatuses: ['from memory'] })[0]).toBe('limit-passed: caution')
    // Between the peaks of the ends on either side of the limit.
    const { values } = heatVerdict({ ...joint, conductors: [pvc] }).findings[0] as { readonly values: Readonly<Record<string, number>> }
    const [favourable, nominal, unfavourable] = [values.favourableC ?? 0, values.nominalC ?? 0, values.unfavourableC ?? 0]
    expect(favourable).toBeGreaterThan(nominal)
    expect(nominal).toBeGreaterThan(unfavourable)
    const at = (insulationLimitC: number) => codes({ ...joint, conductors: [{ ...pvc, insulationLimitC }] })
    expect(at((favourable + nominal) / 2)[0]).toBe('limit-passed: caution')
    expect(at((nominal + unfavourable) / 2)[0]).toBe('limit-passed: unsound')
    expect(at(favourable + 1)).toEqual(['wets: sound', 'limit-kept: sound'])
  })

  test('the tool lifts 2 s after each end wets: the ends are heatJoint with that contact', () => {
    const { ends } = heatVerdict({ ...joint, filmFactor: 1 })
    const { contactResistanceKPerW, wettedAtS, toolOffS, result } = ends.unfavourable
    expect(contactResistanceKPerW).toBe(18)
    expect(toolOffS).toBe((wettedAtS ?? 0) + 2)
    expect(result).toEqual(heatJoint({ ...joint, tool: iron(18), toolOffS, observeS: toolOffS + 30 }))
  })

  test('the contact stays between solder over the whole flat and a tip that barely touches', () => {
    const best = tipContactKPerW({
      diameterMm: 2.4,
      bridgeMm: tipContactDefaults.bridgeMm.low,
      solderWPerMK: solders.Sn60Pb40.conductivityWPerMK.nominal,
    }).wettedKPerW
    const worst = tipContactKPerW({ diameterMm: 2.4, forceN: tipContactDefaults.forceN.low }).dryKPerW
    expect(heatVerdict({ ...joint, tool: iron(2) }).ends.favourable.contactResistanceKPerW).toBeCloseTo(Math.max(best, 2 / 3), 9)
    expect(heatVerdict({ ...joint, tool: iron(60) }).ends.unfavourable.contactResistanceKPerW).toBeCloseTo(worst, 9)
    // A given resistance beyond the bounds is used as given.
    expect(heatVerdict({ ...joint, tool: iron(500) }).ends.unfavourable.contactResistanceKPerW).toBe(500)
  })

  test('what moves it: wetting the tip most, pressing some, each with its gain', () => {
    const { moves, ends } = heatVerdict({ ...joint, tool: iron(30) })
    expect(moves.map(({ lever }) => lever)).toEqual(['wet-tip', 'press', 'flux'])
    for (const { wettedAtS, gainS, contactResistanceKPerW } of moves) {
      expect(gainS).toBeCloseTo((ends.nominal.wettedAtS ?? 0) - (wettedAtS ?? 0), 12)
      expect(gainS).toBeGreaterThan(0)
      expect(contactResistanceKPerW).toBeLessThan(30)
    }
    // If the tip is fully bridged already there is nothing to gain.
    expect(heatVerdict({ ...joint, tool: iron(0.5) }).moves).toEqual([])
    expect(heatVerdict(spared(joint)).moves).toEqual([])
  })

  test('hot air: a minute is allowed, the stream is what is unknown, nearer is what moves it', () => {
    const tool = { kind: 'hot-air', airC: 350, airSpeedMPerS: 10, sweptMm: 12, sweptFilmWPerM2K: 180 } as const
    const { verdict, ends, moves, findings } = heatVerdict(spared({ ...joint, tool }))
    expect(ends.favourable.streamFactor).toBe(1.5)
    expect(ends.unfavourable.streamFactor).toBeCloseTo(1 / 1.5, 12)
    expect(findings[0]?.values.wettedWithinS).toBe(60)
    expect(['caution', 'sound']).toContain(verdict)
    if (verdict !== 'sound') expect(moves.map(({ lever }) => lever)).toEqual(['nearer'])
  })

  test('a solder sleeve under an iron is refused', () => {
    const tube = { insideMm: 4, recoveredInsideMm: 1.5, wallMm: 0.4, lengthMm: 26, recoveryC: 110 }
    expect(() => heatVerdict({ ...joint, tube })).toThrow(DomainError)
  })

  test('random joints: a better contact never judges the flow worse', () => {
    const rank = ['never-wets', 'only-favourable-wets', 'unfavourable-does-not-wet', 'wets-late', 'wets']
    fc.assert(
      fc.property(
        fc.constantFrom(0.22, 0.5, 1.5, 4),
        fc.double({ min: 1, max: 60, noNaN: true }),
        fc.double({ min: 15, max: 100, noNaN: true }),
        (areaMm2, contact, watts) => {
          const outside = 2 * Math.sqrt(areaMm2) + 0.8
          const side = { areaMm2, stubMm: outside, insulation: 'XLPE', insulationOutsideMm: outside } as const
          const flowOf = (c: number) => {
            const i = spared({
              ...joint,
              tool: iron(c, watts),
              joint: { lapMm: 5 * Math.sqrt(areaMm2), diameterMm: 2.3 * Math.sqrt(areaMm2), solderMm3: 6 * areaMm2 },
              conductors: [side, side],
            })
            return rank.indexOf(heatVerdict(i).findings.find(({ code }) => rank.includes(code))?.code ?? '')
          }
          expect(flowOf(contact / 2)).toBeGreaterThanOrEqual(flowOf(contact))
        },
      ),
      { numRuns: 40 },
    )
  }, 30_000)
})
