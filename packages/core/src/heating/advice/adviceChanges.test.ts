import { beforeEach, describe, expect, test, vi } from 'vitest'
import { heatJoint } from '../heatJoint.ts'
import type { HeatChange, HeatJointInput, HeatJointResult } from '../heatJointTypes.ts'
import { type iron, ironJoint } from '../ironJoint.sample.ts'
import { changesFor } from './adviceChanges.ts'
import { type GivenLimits, readLimits } from './adviceLimits.ts'

vi.mock('../heatJoint.ts', { spy: true })

const side = { areaMm2: 1, stubMm: 6, insulation: 'PVC', insulationOutsideMm: 2.5 } as const
const joint = ironJoint(side, { ...side, stubMm: 8 })

/** Test double for the heating curve: whether solder flows is a function of the input. Returns the changes that make it flow. */
function toFlow(
  flows: (input: HeatJointInput) => boolean,
  input: HeatJointInput = joint,
  given: GivenLimits = {},
  alloys: readonly string[] = [],
): readonly HeatChange[] {
  vi.mocked(heatJoint).mockImplementation((one) => ({ wettedAtS: flows(one) ? 1 : null, insulationExposureS: [0], input: one }) as unknown as HeatJointResult)
  const search = { input, start: heatJoint(input), allowedExposureS: 0, alloys: alloys as readonly 'SAC305'[], limits: readLimits(given) }
  vi.mocked(heatJoint).mockClear()
  return changesFor(search, 'flow')
}
const levers = (changes: readonly HeatChange[]): readonly string[] => changes.map(({ lever }) => lever)
const setC = (input: HeatJointInput): number => (input.tool as { readonly setC: number }).setC
const contact = (input: HeatJointInput): number => (input.tool as { readonly contactResistanceKPerW: number }).contactResistanceKPerW
const clipsAt = (input: HeatJointInput): readonly (number | undefined)[] => input.conductors.map((one) => one.clip?.distanceMm)
/** Clip positions tried, in order. */
const tried = (): readonly number[] =>
  vi.mocked(heatJoint).mock.calls.flatMap(([input]) =>
    clipsAt(input)
      .slice(0, 1)
      .flatMap((at) => (at === undefined ? [] : [at])),
  )

beforeEach(() => {
  vi.restoreAllMocks()
})

describe('levers that slide', () => {
  test('where any change serves, each lever that there is serves, and no other', () => {
    const plain: HeatJointInput = { ...joint, tool: { kind: 'iron', setC: 360, tipResistanceKPerW: 0, contactResistanceKPerW: 3 } }
    const any = (input: HeatJointInput) => JSON.stringify(input) !== JSON.stringify(plain) && clipsAt(input).every((at) => at === undefined)
    expect([...levers(toFlow(any, plain))].sort()).toEqual(['contactResistanceKPerW', 'setC', 'stubMm', 'toolOffS'])
  })

  test('a stub that would have to be shorter is none: stubs only grow', () => {
    expect(toFlow((input) => input.conductors.every(({ stubMm }) => stubMm < 6))).toEqual([])
    expect(toFlow((input) => input.conductors.every(({ stubMm }) => stubMm > 9))).toMatchObject([{ lever: 'stubMm', from: 6 }])
  })

  test('the smallest change comes first, whichever lever; changes without a size come last', () => {
    const either = (input: HeatJointInput) => setC(input) >= 380 || contact(input) <= 1 || input.alloy === 'Sn42Bi58'
    const changes = toFlow(either, joint, {}, ['Sn42Bi58'])
    expect(levers(changes)).toEqual(['setC', 'contactResistanceKPerW', 'alloy'])
    const other = (input: HeatJointInput) => setC(input) >= 400 || contact(input) <= 2.9 || input.alloy === 'Sn42Bi58'
    expect(levers(toFlow(other, joint, {}, ['Sn42Bi58']))).toEqual(['contactResistanceKPerW', 'setC', 'alloy'])
  })

  test('nothing is sought where it flows', () => {
    expect(toFlow(() => true)).toEqual([])
    expect(vi.mocked(heatJoint)).not.toHaveBeenCalled()
  })
})

describe('clips', () => {
  const clip = { distanceMm: 3, resistanceKPerW: 8, temperatureC: 23 }
  const clipped: HeatJointInput = { ...joint, conductors: [{ ...side, clip }, side] }

  test('are tried at five even places, from a millimetre short of the shorter stub inwards, one a side', () => {
    expect(toFlow(() => false)).toEqual([])
    expect(tried()).toEqual([5, 4.25, 3.5, 2.75, 2])
    expect(toFlow((input) => clipsAt(input).every((at) => at !== undefined && at < 3))).toMatchObject([{ lever: 'clip', from: null, to: 2.75 }])
  })

  test('stay within their limits; where no place is left, none is tried', () => {
    toFlow(() => false, joint, { clip: { low: 1, high: 4 } })
    expect(tried()).toEqual([4, 3.25, 2.5, 1.75, 1])
    toFlow(() => false, joint, { clip: { low: 5, high: 9 } })
    expect(new Set(tried())).toEqual(new Set([5]))
    toFlow(() => false, joint, { clip: { low: 5.01, high: 9 } })
    expect(tried()).toEqual([])
  })

  test('that sit there already are taken off, if that serves', () => {
    const off = (input: HeatJointInput) => clipsAt(input).every((at) => at === undefined)
    expect(toFlow(off, clipped)).toMatchObject([{ lever: 'clip', from: 3, to: 'none' }])
    expect(toFlow(() => false, clipped)).toEqual([])
  })
})

describe('another alloy', () => {
  const offered = (input: HeatJointInput, given: GivenLimits = {}, alloys: readonly string[] = ['Sn42Bi58', 'In52Sn48', 'Sn63Pb37']): unknown =>
    toFlow(
      (one) =>
        one.alloy !== input.alloy &&
        clipsAt(one).every((at) => at === undefined) &&
        one.toolOffS === 4 &&
        setC(one) === 360 &&
        one.conductors === input.conductors &&
        typeof one.alloy === 'string' &&
        contact(one) === 3 &&
        (one.tool as typeof iron).maximumW === 60 &&
        (one.tool as typeof iron).tipResistanceKPerW === 1.5,
      input,
      given,
      alloys,
    )[0]?.to

  test('is the nearest in its liquidus, within its limits to the very end', () => {
    expect(offered(joint)).toBe('Sn63Pb37')
    expect(offered(joint, { alloy: { low: 0, high: 182.9 } })).toBe('Sn42Bi58')
    expect(offered(joint, { alloy: { low: 0, high: 138 } })).toBe('Sn42Bi58')
    expect(offered(joint, { alloy: { low: 138, high: 138 } })).toBe('Sn42Bi58')
    expect(offered(joint, { alloy: { low: 0, high: 137.9 } })).toBe('In52Sn48')
    expect(offered(joint, { alloy: { low: 138.1, high: 182.9 } })).toBeUndefined()
  })

  test('is solid in the surroundings', () => {
    const hot = (ambientC: number): unknown => offered({ ...joint, ambientC }, {}, ['Sn42Bi58'])
    expect([hot(137.9), hot(138), hot(139)]).toEqual(['Sn42Bi58', undefined, undefined])
  })

  test('is not the one of the same name', () => {
    const values = { name: 'SAC305', solidusC: 317, liquidusC: 320, densityKgPerM3: 7380, specificHeatJPerKgK: 232, latentHeatJPerKg: 60_000 }
    expect(offered({ ...joint, alloy: values }, {}, ['SAC305'])).toBeUndefined()
    expect(offered({ ...joint, alloy: { ...values, name: 'ours' } }, {}, ['SAC305'])).toBe('SAC305')
  })
})
