import { expect, test } from 'vitest'
import { energyResidual, linkWires, settleLosses, startEdges } from './heatingBalance.ts'
import type { HeatingState } from './heatingState.ts'
import type { WireModes } from './wireModes.ts'

/** One mode of hand figures: y' = -2 y + 0.5 rise + 3. */
const modes = {
  count: 1,
  ratesPerS: Float64Array.of(2),
  coupling: Float64Array.of(0.5),
  drive: Float64Array.of(3),
  admittanceWPerK: 0.2,
  drivenW: 0.7,
  jointStoreJPerK: 0.01,
  edge: Float64Array.of(4),
  edgeJoint: 0.1,
  edgeOffsetK: 6,
  loss: Float64Array.of(0.8),
  lossJointWPerK: 0.02,
  lossOffsetW: -0.3,
  store: Float64Array.of(1.5),
} as unknown as WireModes

function run(change: object = {}) {
  const state = {
    step: { joint: { capacityJPerK: 0.06, melt: null, riseK: 100, share: 0 }, body: null, values: [Float64Array.of(5)] },
    record: { edgeNowK: new Float64Array(1), edgeSlopeKPerS: new Float64Array(1) },
    wires: [{ modes, wire: { tails: 2, limitRiseK: 80 } }],
    edges: [],
    nowS: 7,
    sinceS: 4,
    riseKS: 250,
    atChange: [Float64Array.of(1)],
    lossJ: 10,
    heatInJ: 0,
    ...change,
  } as unknown as HeatingState
  linkWires(state)
  return state
}

test('wires are linked by the number of their tails', () => {
  const { step } = run()
  expect([step.jointStoreJPerK, step.admittanceWPerK, step.drivenW]).toEqual([0.02, 0.4, 1.4])
  expect(step.modes).toEqual([modes])
})

test('edges begin with the rise and the slope that the modes have', () => {
  const state = run()
  startEdges(state)
  expect(state.record.edgeNowK[0]).toBeCloseTo(6 + 10 + 20, 12)
  expect(state.record.edgeSlopeKPerS[0]).toBeCloseTo(4 * (50 + 3 - 10), 12)
  expect(state.edges[0]).toMatchObject({ limitRiseK: 80 })
})

test('what the wires lost is the integral of their modes, each once', () => {
  const state = run()
  settleLosses(state)
  // 2 times the integral of y is what drove it less what it gained.
  const ySeconds = (0.5 * 250 + 3 * 3 - (5 - 1)) / 2
  expect(state.lossJ).toBeCloseTo(10 + 2 * (-0.3 * 3 + 0.02 * 250 + 0.8 * ySeconds), 12)
  expect([state.riseKS, state.sinceS, state.atChange[0]?.[0]]).toEqual([0, 7, 5])
  const once = state.lossJ
  settleLosses(state)
  expect(state.lossJ).toBe(once)
})

// Joint 6 J, the wires' ends on it 2 J, their modes 15 J.
test.each([
  ['over what the tool put in', { heatInJ: 40, lossJ: 16 }, 1 / 40],
  ['nothing where it closes', { heatInJ: 40, lossJ: 17 }, 0],
  ['over the largest of what moved where the tool cooled', { heatInJ: -40, lossJ: -62 }, 1 / 62],
  ['over what was stored where that is most', { heatInJ: 0, lossJ: -22 }, 1 / 23],
  ['over what the tool took where that is most', { heatInJ: -30, lossJ: -20 }, 33 / 30],
])('what the balance misses counts %s', (_name, change, wanted) => {
  expect(energyResidual(run(change))).toBeCloseTo(wanted, 12)
})

test('a body of the tool or a tube counts, and where nothing moved nothing is missed', () => {
  const withBody = run({ heatInJ: 40, lossJ: 16 })
  withBody.step.body = { capacityJPerK: 0.01, melt: null, riseK: 100, phase: 'solid', share: 0 }
  expect(energyResidual(withBody)).toBeCloseTo(0, 12)
  const still = run({ lossJ: 0 })
  still.step.joint.riseK = 0
  still.step.values[0]?.fill(0)
  expect(energyResidual(still)).toBe(0)
})
