import { describe, expect, test } from 'vitest'
import { DomainError, UnknownEntryError } from '../../errors/index.ts'
import { heatJoint } from '../heatJoint.ts'
import type { HeatChange, HeatJointInput } from '../heatJointTypes.ts'
import { iron, ironJoint } from '../ironJoint.sample.ts'
import { heatJointAdvice } from './heatJointAdvice.ts'

const side = { areaMm2: 1, diameterMm: 1.28, stubMm: 5, insulation: 'PVC', insulationOutsideMm: 2.48 } as const
const joint = ironJoint(side, side)
const cold: HeatJointInput = { ...joint, tool: { ...iron, contactResistanceKPerW: 14 } }

const named = (changes: readonly HeatChange[], lever: HeatChange['lever']): HeatChange => {
  const found = changes.find((change) => change.lever === lever)
  if (found === undefined) throw new Error(`no ${lever} among ${changes.map((change) => change.lever).join(', ')}`)
  return found
}
const levers = (changes: readonly HeatChange[]): string[] => changes.map((change) => change.lever)

/** The joint with one field of the iron or the joint changed. */
function set(input: HeatJointInput, lever: HeatChange['lever'], value: number): HeatJointInput {
  if (lever === 'stubMm') return { ...input, conductors: input.conductors.map((one) => ({ ...one, stubMm: value })) }
  if (lever === 'toolOffS') return { ...input, toolOffS: value, observeS: Math.max(value, input.toolOffS) + 30 }
  return { ...input, tool: { ...input.tool, [lever]: value } as HeatJointInput['tool'] }
}

/** Computed on first use, then kept. */
function once<T>(work: () => T): () => T {
  let kept: T | undefined
  return () => {
    kept ??= work()
    return kept
  }
}

describe('a joint that does not flow', () => {
  const advised = once(() => heatJointAdvice(cold))

  test('each change makes it flow, and one per cent less does not', () => {
    expect(heatJoint(cold).wettedAtS).toBeNull()
    expect(levers(advised().toFlow)).toEqual(expect.arrayContaining(['contactResistanceKPerW', 'setC', 'toolOffS', 'alloy']))
    for (const { lever, from, to, result } of advised().toFlow) {
      expect(result.wettedAtS, lever).not.toBeNull()
      if (typeof to !== 'number' || typeof from !== 'number') continue
      expect(heatJoint(set(cold, lever, to)), lever).toEqual(result)
      const less = from + (to - from) * 0.99
      expect(heatJoint(set(cold, lever, less)).wettedAtS, `${lever} at ${less}`).toBeNull()
    }
  })

  test('the smallest change comes first, another alloy last', () => {
    const moves = advised().toFlow.map(({ from, to }) => (typeof from === 'number' && typeof to === 'number' ? Math.abs(Math.log(to / from)) : Infinity))
    expect(moves).toEqual([...moves].sort((a, b) => a - b))
    expect(advised().toFlow.at(-1)?.lever).toBe('alloy')
  })

  test('the alloy is the nearest that serves, of those offered', () => {
    const { from, to } = named(advised().toFlow, 'alloy')
    expect(from).toBe('SAC305')
    const offered = heatJointAdvice({ ...cold, alloys: ['Sn95Ag5', 'In52Sn48', 'Sn42Bi58'] })
    expect(named(offered.toFlow, 'alloy').to).toBe('Sn42Bi58')
    expect(to).not.toBe('Sn95Ag5')
    expect(levers(heatJointAdvice({ ...cold, alloys: [] }).toFlow)).not.toContain('alloy')
    expect(levers(heatJointAdvice({ ...cold, alloys: ['SAC305'] }).toFlow)).not.toContain('alloy')
    expect(levers(heatJointAdvice({ ...cold, limits: { alloy: { low: 200, high: 300 } }, alloys: ['Sn42Bi58'] }).toFlow)).not.toContain('alloy')
  })

  test('an alloy given by values is named where it has a name', () => {
    const values = { solidusC: 217, liquidusC: 220, densityKgPerM3: 7380, specificHeatJPerKgK: 232, latentHeatJPerKg: 60_000 }
    expect(named(heatJointAdvice({ ...cold, alloy: values }).toFlow, 'alloy').from).toBeNull()
    expect(named(heatJointAdvice({ ...cold, alloy: { ...values, name: 'ours' } }).toFlow, 'alloy').from).toBe('ours')
  })

  test('a lever that cannot within its limits is absent', () => {
    const tight = heatJointAdvice({ ...cold, limits: { contactResistanceKPerW: { low: 19, high: 60 }, setC: { low: 200, high: 365 } } })
    expect(levers(tight.toFlow)).not.toContain('contactResistanceKPerW')
    expect(levers(tight.toFlow)).not.toContain('setC')
  })

  test('a tip without resistance and a power without limit are no levers', () => {
    const plain = heatJointAdvice({ ...cold, tool: { kind: 'iron', setC: 360, tipResistanceKPerW: 0, contactResistanceKPerW: 30 } })
    expect(levers(plain.toFlow)).not.toContain('tipResistanceKPerW')
    expect(levers(plain.toFlow)).not.toContain('maximumW')
    const weak = heatJointAdvice({ ...joint, tool: { ...iron, maximumW: 4 } })
    expect(named(weak.toFlow, 'maximumW').to).toBeGreaterThan(4)
  })

  test('a clip that keeps it cold is taken off', () => {
    const clip = { distanceMm: 3, resistanceKPerW: 1, temperatureC: 23 }
    const clipped = heatJointAdvice({
      ...joint,
      conductors: [
        { ...side, clip },
        { ...side, clip: { ...clip, distanceMm: 2.5 } },
      ],
    })
    const { from, to, result } = named(clipped.toFlow, 'clip')
    expect([from, to]).toEqual([2.5, 'none'])
    expect(result).toEqual(heatJoint(joint))
  })
})

describe('insulation that suffers', () => {
  const advised = once(() => heatJointAdvice(joint))

  test('each change spares it, and one per cent less does not', () => {
    expect(Math.max(...heatJoint(joint).insulationExposureS)).toBeGreaterThan(0)
    expect(levers(advised().toSpareInsulation)).toEqual(expect.arrayContaining(['stubMm', 'toolOffS', 'contactResistanceKPerW']))
    expect(advised().toFlow).toEqual([])
    for (const { lever, from, to, result } of advised().toSpareInsulation) {
      expect(Math.max(...result.insulationExposureS), lever).toBe(0)
      if (typeof to !== 'number' || typeof from !== 'number') continue
      const less = from + (to - from) * 0.99
      expect(Math.max(...heatJoint(set(joint, lever, less)).insulationExposureS), lever).toBeGreaterThan(0)
    }
  })

  test('one lever reaches both goals: insulation spared, solder still flows', () => {
    expect(advised().both.length).toBeGreaterThan(0)
    for (const { result, lever } of advised().both) {
      expect(result.wettedAtS, lever).not.toBeNull()
      expect(Math.max(...result.insulationExposureS), lever).toBe(0)
    }
    expect(levers(advised().both)).not.toContain('contactResistanceKPerW')
  })

  test('the clip is 1 mm from the insulation, at ambient temperature', () => {
    const long = { ...side, stubMm: 10 }
    const { from, to, result } = named(heatJointAdvice({ ...joint, conductors: [long, long] }).both, 'clip')
    expect([from, to]).toEqual([null, 9])
    const clip = { distanceMm: 9, resistanceKPerW: 8, temperatureC: 23 }
    expect(result).toEqual(heatJoint({ ...joint, conductors: [long, long].map((one) => ({ ...one, clip })) }))
    expect(levers(heatJointAdvice({ ...joint, conductors: [{ ...side, stubMm: 2.5 }, long] }).toSpareInsulation)).not.toContain('clip')
    // If the position nearest to the insulation fails, one nearer to the joint may work.
    expect(levers(heatJointAdvice({ ...joint, conductors: [long, long], limits: { clip: { low: 2, high: 5 } } }).both)).toContain('clip')
  })

  test('what is allowed is allowed', () => {
    const exposure = Math.max(...heatJoint(joint).insulationExposureS)
    expect(heatJointAdvice({ ...joint, allowedExposureS: exposure + 1e-9 })).toEqual({ toFlow: [], toSpareInsulation: [], both: [] })
    const some = heatJointAdvice({ ...joint, allowedExposureS: exposure / 2 })
    const { to } = named(some.toSpareInsulation, 'stubMm')
    expect(to).toBeLessThan(named(advised().toSpareInsulation, 'stubMm').to as number)
  })

  test('only the shorter stubs grow', () => {
    const uneven = heatJointAdvice({ ...joint, conductors: [side, { ...side, stubMm: 24 }] })
    const { from, to, result } = named(uneven.toSpareInsulation, 'stubMm')
    expect(from).toBe(5)
    expect(result).toEqual(
      heatJoint({
        ...joint,
        conductors: [
          { ...side, stubMm: to as number },
          { ...side, stubMm: 24 },
        ],
      }),
    )
  })
})

describe('hot air', () => {
  const air = { kind: 'hot-air', airC: 350, airSpeedMPerS: 10, sweptMm: 15, sweptFilmWPerM2K: 180 } as const
  const input: HeatJointInput = { ...joint, tool: air, toolOffS: 10, sampleTimesS: [12] }

  test('its levers are its temperature, its speed and its stay', () => {
    const { toFlow } = heatJointAdvice(input)
    expect(levers(toFlow)).toEqual(expect.arrayContaining(['airC', 'toolOffS']))
    expect(levers(toFlow)).not.toContain('setC')
    for (const { result } of toFlow) expect(result.jointC).toHaveLength(1)
    const slow = heatJointAdvice({ ...input, tool: { ...air, airC: 420, airSpeedMPerS: 2, sweptMm: 0 }, alloy: 'Sn42Bi58', toolOffS: 12 })
    expect(named(slow.toFlow, 'airSpeedMPerS').to).toBeGreaterThan(2)
  })

  test('a film that is given leaves no speed to move', () => {
    const given = heatJointAdvice({ ...input, tool: { ...air, filmWPerM2K: 100 } })
    expect(levers([...given.toFlow, ...given.toSpareInsulation])).not.toContain('airSpeedMPerS')
  })

  test('a shorter stay keeps the samples in the run', () => {
    const hot = heatJointAdvice({ ...input, observeS: 12, toolOffS: 11.5 })
    expect(named(hot.toSpareInsulation, 'toolOffS').result.jointC).toHaveLength(1)
  })
})

test('what is refused, and by which name', () => {
  const refusal = (change: object): string => {
    try {
      heatJointAdvice({ ...joint, ...change })
      return 'accepted'
    } catch (error) {
      return error instanceof DomainError ? `${error.parameter} ${error.code}` : error instanceof UnknownEntryError ? 'unknown' : String(error)
    }
  }
  expect(refusal({ allowedExposureS: -1 })).toBe('allowedExposureS out-of-range')
  expect(refusal({ limits: { setC: { low: 400, high: 300 } } })).toBe('limits.setC.high contradiction')
  expect(refusal({ limits: { setC: { low: Number.NaN, high: 300 } } })).toBe('limits.setC.low not-a-number')
  expect(refusal({ limits: { maximumW: { low: 0, high: 300 } } })).toBe('limits.maximumW.low out-of-range')
  expect(refusal({ limits: { stubMm: { low: 0, high: Infinity } } })).toBe('limits.stubMm.high not-finite')
  expect(refusal({ alloys: ['Sn1'] })).toBe('unknown')
  // Refused even when no change is needed.
  expect(refusal({ alloys: ['Sn1'], allowedExposureS: 1e6 })).toBe('unknown')
  expect(refusal({ toolOffS: 0 })).toBe('toolOffS out-of-range')
})
