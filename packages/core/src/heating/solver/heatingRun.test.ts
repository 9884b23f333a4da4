import { beforeEach, describe, expect, test, vi } from 'vitest'
import { jointModel, stream, tube, wire } from '../heatModel.sample.ts'
import type { HeatModel, HeatSource } from '../heatModel.ts'
import { constantFilm } from '../streamFilm.ts'
import type { Wire } from './finZones.ts'
import { runTo } from './heatingLoop.ts'
import { heatingRun } from './heatingRun.ts'
import type { HeatingState } from './heatingState.ts'
import { heatedWire, meshSettings, rebase, shortestTimeS, withoutStream } from './heatingWires.ts'

vi.mock('./heatingLoop.ts', { spy: true })

const swept: Wire = { ...wire, tails: 2, swept: stream }
const iron: HeatSource = { kind: 'iron', setRiseK: 300, maximumW: 40, resistanceKPerW: 5 }
const heavy: HeatSource = { kind: 'heavy-iron', setRiseK: 300, maximumW: 80, tipResistanceKPerW: 2, contactResistanceKPerW: 3, capacityJPerK: 0.4 }
const model = (source: HeatSource, wires: readonly Wire[] = []): HeatModel => ({ ...jointModel(source, wires), toolOffS: 2, observeS: 9, accuracy: 0.5 })
const air: HeatSource = { kind: 'air', airRiseK: 330, film: constantFilm(150) }

/** The state at each of the two stretches, and what each comes to: the modes as told, the joint at a rise, the clock at its end. */
function stretches(one: HeatModel, before: (run: HeatingState) => void = () => {}): readonly HeatingState[] {
  const seen: HeatingState[] = []
  vi.mocked(runTo).mockImplementation((run, endS) => {
    const copies = (lists: readonly Float64Array[]): Float64Array[] => lists.map((list) => Float64Array.from(list))
    seen.push({ ...run, atChange: copies(run.atChange), step: { ...run.step, joint: { ...run.step.joint }, values: copies(run.step.values) } })
    before(run)
    run.step.joint.riseK = 90 + seen.length
    run.nowS = endS
  })
  heatingRun(one)
  return seen
}

beforeEach(() => {
  vi.restoreAllMocks()
})

describe('a run begins', () => {
  test('with steps eight doublings shorter than anything of interest, all at the surroundings', () => {
    const one = model(iron, [wire])
    const [first] = stretches(one)
    expect(first?.level).toBe(Math.floor(Math.log2(shortestTimeS(one))) - 8)
    expect(first?.toleranceK).toBeCloseTo(0.008 * 0.5 ** 1.5, 12)
    expect([first?.nowS, first?.step.joint.riseK, first?.toolOn, first?.step.body]).toEqual([0, 0, true, null])
    expect(first?.step.joint).toMatchObject({ capacityJPerK: 0.06, melt: one.melt, phase: 'solid' })
    expect(first?.edges).toHaveLength(1)
    const modes = heatedWire(wire, meshSettings(wire, one, shortestTimeS(one))).modes
    expect(first?.step.modes).toEqual([modes])
    expect(first?.step.admittanceWPerK).toBe(modes.admittanceWPerK)
  })

  test('at the limit of its heater where cold metal would take more', () => {
    const limited = (maximumW: number): boolean | undefined => stretches(model({ ...iron, maximumW }))[0]?.step.limited
    expect([limited(59.9), limited(60), limited(Infinity)]).toEqual([true, false, false])
  })

  test('with a tip that is hot already: its heater rests', () => {
    const [first] = stretches(model(heavy))
    expect(first?.step.body).toMatchObject({ capacityJPerK: 0.4, melt: null, riseK: 300 })
    expect(first?.step.limited).toBe(false)
  })

  test('with a cold tube that holds the ring: the joint has no solder of its own yet', () => {
    const one = model(tube)
    const [first] = stretches(one)
    expect(first?.step.body).toMatchObject({ capacityJPerK: 0.3, melt: one.melt, riseK: 0 })
    expect(first?.step.joint.melt).toEqual({ ...one.melt, latentJ: 0 })
  })
})

describe('when the tool goes', () => {
  test.each<[string, HeatSource]>([
    ['an iron', iron],
    ['a tip with mass', heavy],
    ['a stream', air],
  ])('%s leaves nothing behind; steps start again sixteen times shorter', (_name, source) => {
    const [first, second] = stretches(model(source, [wire]), (run) => Object.assign(run.step, { limited: true }))
    expect(second?.step).toMatchObject({ source: { kind: 'none' }, body: null, limited: false })
    expect([second?.toolOn, second?.nowS, second?.record.jointAtToolOffK]).toEqual([false, 2, 91])
    expect(second?.level).toBe((first?.level ?? 0) - 4)
    // The wires are as they were, and what left them is settled at the end alone.
    expect(second?.wires).toBe(first?.wires)
    expect(second?.sinceS).toBe(0)
  })

  test('a tube stays, in still air', () => {
    const [first, second] = stretches(model(tube))
    expect(second?.step.source).toEqual({ ...tube, film: null })
    expect(second?.step.body).toBe(first?.step.body)
  })

  test('edges go on from where joint and wires then stand', () => {
    const [first, second] = stretches(model(iron, [wire]), (run) => run.step.values[0]?.fill(2))
    const { edge, edgeJoint, edgeOffsetK } = second?.step.modes[0] ?? { edge: [], edgeJoint: Number.NaN, edgeOffsetK: Number.NaN }
    expect(second?.record.edgeNowK[0]).toBeCloseTo(2 * [...edge].reduce((sum, one) => sum + one, 0) + 91 * edgeJoint + edgeOffsetK, 9)
    expect(second?.edges).toHaveLength(1)
    expect(second?.edges).not.toBe(first?.edges)
  })

  test('a stream leaves the wires that it swept, and them alone: the same heat in other modes', () => {
    const one = model(air, [wire, swept])
    const [first, second] = stretches(one, (run) => run.step.values.forEach((values, w) => void values.fill(w + 2)))
    expect(second?.wires[0]).toBe(first?.wires[0])
    const heated = heatedWire(swept, meshSettings(swept, one, shortestTimeS(one)))
    const still = withoutStream(heated)
    expect(second?.wires[1]?.modes).toEqual(still.modes)
    expect(second?.step.modes[1]).toBe(second?.wires[1]?.modes)
    const profile = new Float64Array(still.modes.count).fill(3)
    rebase(profile, heated.modes, still.modes)
    expect(second?.step.values[1]).toEqual(profile)
    expect(second?.step.values[0]?.[0]).toBe(2)
    // What left the wires so far is settled with the modes that they had.
    expect(second?.sinceS).toBe(2)
    expect(second?.lossJ).not.toBe(0)
    expect(second?.atChange).toEqual(second?.step.values)
  })
})

test('at the end what left the wires is settled, and the balance told', () => {
  let last: HeatingState | undefined
  vi.mocked(runTo).mockImplementation((run, endS) => {
    last = run
    run.nowS = endS
    run.heatInJ = 9
    run.step.joint.riseK = 100
    run.lossJ = 2
  })
  const { record, energyResidual } = heatingRun(model(iron))
  expect(record).toBe(last?.record)
  expect(last?.sinceS).toBe(9)
  expect(energyResidual).toBeCloseTo((9 - 2 - 0.06 * 100) / 9, 12)
})

test('the two stretches end where the tool goes and where one looks no longer', () => {
  stretches(model(iron))
  expect(vi.mocked(runTo).mock.calls.map(([, endS]) => endS)).toEqual([2, 9])
})
