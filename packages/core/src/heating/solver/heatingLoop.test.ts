import { beforeEach, describe, expect, test, vi } from 'vitest'
import type { HeatSource } from '../heatModel.ts'
import { findPassing, happen } from './heatingEvents.ts'
import { runOf, toleranceK } from './heatingLoop.sample.ts'
import { runTo } from './heatingLoop.ts'
import { recordBody, recordJoint } from './heatingRecord.ts'
import type { HeatingState } from './heatingState.ts'
import { solveStep } from './heatingStep.ts'
import { levelTable, oddTable } from './heatingWires.ts'
import { newLump } from './lump.ts'
import type { StepTable } from './stepTable.ts'

vi.mock('./heatingStep.ts', { spy: true })
vi.mock('./heatingEvents.ts', { spy: true })
vi.mock('./heatingRecord.ts', { spy: true })
vi.mock('./heatingWires.ts', { spy: true })

/** Lengths of the steps that were solved, and of those that were taken with the times they began. */
const solved = (): number[] => vi.mocked(solveStep).mock.calls.map(([, durationS]) => durationS)
const taken = (): number[] => vi.mocked(recordJoint).mock.calls.map(([, , , durationS]) => durationS)
const began = (): number[] => vi.mocked(recordJoint).mock.calls.map(([, , atS]) => atS)

const evenly = (timeS: number): number => timeS
const calm = (): number => 0.5 * toleranceK

/** Instead of a balance: the joint follows a curve of the time, and the step's error is as told; one that lets steps be as long as they are where nothing is told. */
function follow(run: HeatingState, rise = evenly, errorK: (durationS: number, trial: number) => number = calm): void {
  let trial = 0
  vi.mocked(solveStep).mockImplementation((step, durationS) => {
    step.joint1 = rise(run.nowS + durationS / 3)
    step.joint2 = rise(run.nowS + durationS)
    step.jointMoves1 = step.joint1
    step.jointMoves2 = step.joint2
    step.heatInJ = 2 * durationS
    step.surfaceJ = 0.5 * durationS
    step.errorK = errorK(durationS, trial++)
  })
}

beforeEach(() => {
  vi.restoreAllMocks()
})

describe("a step's length", () => {
  test.each([
    ['far below what is allowed: four times longer', 1e-30, 4],
    ['an eighth of it, aimed at nine tenths: twice as long', 0.9 / 8.001, 2],
    ['a little more: as long again', 0.9 / 7.999, 1],
  ])('an error %s', (_name, share, growth) => {
    const run = runOf(-3)
    follow(run, evenly, () => share * toleranceK)
    runTo(run, 100)
    expect(taken().slice(0, 2)).toEqual([1 / 8, growth / 8])
  })

  test.each([
    ['just too large: half as long', 0.9 * 1.001, 1 / 2],
    ['eight times what is aimed at: a quarter', 0.9 * 8.001, 1 / 4],
    ['just below that: half', 0.9 * 7.999, 1 / 2],
    ['past all bounds: a thirty-second', 1e30, 1 / 32],
    ['endless: a thirty-second too', Infinity, 1 / 32],
  ])('an error %s, and nothing is taken before', (_name, share, shrinkage) => {
    const run = runOf(-3)
    follow(run, evenly, (_durationS, trial) => (trial === 0 ? share * toleranceK : calm()))
    runTo(run, 1)
    expect(solved().slice(0, 2)).toEqual([1 / 8, shrinkage / 8])
    expect(taken()[0]).toBe(shrinkage / 8)
  })

  test('the last step is what is left, and if it errs, the next is shorter than it by a power of two', () => {
    const run = runOf(-1)
    follow(run, evenly, (durationS) => (durationS > 0.3 ? toleranceK : 0.5 * toleranceK))
    runTo(run, 0.4)
    expect(solved()).toEqual([0.4, 0.25, 0.4 - 0.25])
    expect(taken()).toEqual([0.25, 0.4 - 0.25])
    expect(run.nowS).toBe(0.4)
  })

  test('a remainder of rounding is not left for a step of its own', () => {
    const run = runOf(-1)
    follow(run)
    runTo(run, 0.5 * (1 + 0.5e-12))
    expect(taken()).toEqual([0.5 * (1 + 0.5e-12)])
    const other = runOf(-1)
    follow(other)
    runTo(other, 0.5 * (1 + 2e-12))
    expect(taken().slice(1)).toHaveLength(2)
    // 0.2 and what is left to 0.9 make a little less than 0.9.
    const late = Object.assign(runOf(3), { nowS: 0.2 })
    follow(late)
    runTo(late, 0.9)
    expect(taken().slice(3)).toEqual([0.9 - 0.2])
    expect(late.nowS).toBe(0.9)
  })

  test('what does not come within its error is taken at a billionth of a thousandth of the time', () => {
    const run = runOf(-3)
    let errs = true
    follow(run, evenly, (durationS) => {
      const errorK = errs ? 1e30 : 0
      errs &&= durationS > 8e-12
      return errorK
    })
    runTo(run, 8)
    const first = solved().findIndex((durationS) => durationS <= 8e-12)
    expect(first).toBeGreaterThan(3)
    expect(solved()[first - 1]).toBeGreaterThan(8e-12)
    expect(taken()[0]).toBe(solved()[first])
    expect(run.nowS).toBe(8)
  })

  test('sums grow by what the steps say: the rise by its parabola', () => {
    const run = runOf(-2)
    follow(run, (t) => 60 * t * t)
    runTo(run, 3)
    expect(run.riseKS).toBeCloseTo(20 * 27, 9)
    expect(run.heatInJ).toBeCloseTo(6, 12)
    expect(run.lossJ).toBeCloseTo(1.5, 12)
    expect(run.step.joint.riseK).toBeCloseTo(540, 9)
    let sum = 0
    began().forEach((atS, k) => {
      expect(atS).toBe(sum)
      sum += taken()[k] ?? 0
    })
  })
})

describe('the tables of a step', () => {
  test('are those of its level, or made for its odd length, one a wire', () => {
    const run = { ...runOf(-2), wires: [{}, {}] as unknown as HeatingState['wires'] }
    const told = (length: number): StepTable => ({ durationS: length }) as StepTable
    vi.mocked(levelTable).mockImplementation((_heated, level) => told(level))
    vi.mocked(oddTable).mockImplementation((_heated, durationS) => told(durationS))
    const seen: number[][] = []
    follow(run)
    const plain = vi.mocked(solveStep).getMockImplementation()
    vi.mocked(solveStep).mockImplementation((step, durationS, tables) => {
      seen.push(tables.map((table) => table.durationS))
      plain?.(step, durationS, tables)
    })
    runTo(run, 0.6)
    expect(seen.flat()).toEqual([-2, -2, -2, -2, 0.6 - 0.5, 0.6 - 0.5])
    // While an event is sought, each length has its own.
    Object.assign(run.step.joint, { melt: { solidusRiseK: 0.9, liquidusRiseK: 1, latentJ: 1 } })
    vi.mocked(happen).mockImplementation((step) => Object.assign(step.joint, { melt: null }))
    runTo(run, 1.5)
    expect(seen.slice(3, 6).flat()).toEqual([-2, -2, -2, -2, 0.9 - 0.85, 0.9 - 0.85].map((value) => expect.closeTo(value, 12)))
  })
})

describe('events', () => {
  /** The same search by false position: between the last lengths that end short of the bound and past it. */
  function falsePosition(rise: (timeS: number) => number, bound: number, durationS: number, share: number): readonly number[] {
    const lengths = [share * durationS]
    let [low, high] = [0, durationS]
    while (lengths.length < 7) {
      const length = lengths.at(-1) ?? 0
      const gap = bound - rise(length)
      if (Math.abs(gap) <= 1e-9 * (bound + 1)) break
      if (gap > 0 === bound > rise(0)) low = length
      else high = length
      lengths.push(low + ((high - low) * (bound - rise(low))) / (rise(high) - rise(low)))
    }
    return lengths
  }
  const passed = (): void => void vi.mocked(happen).mockImplementation((step) => Object.assign(step.joint, { melt: null }))

  test.each<[string, (timeS: number) => number, number, number]>([
    ['warms ever faster', (t) => 400 * t ** 3 + 10 * t, 0, 160],
    ['warms ever slower', (t) => 400 * (1 - Math.exp(-t)), 0, 160],
    ['hardly warms until the end', (t) => 400 * t ** 12, 0, 160],
    ['is warm already, in half a second', (t) => 100 + 400 * t ** 3, -1, 140],
    ['cools ever faster', (t) => 300 - 80 * t ** 2, 0, 260],
    ['cools ever slower, in half a second', (t) => 150 + 150 * Math.exp(-3 * t), -1, 240],
  ])('the step in which a joint %s past the melt is found by false position, and ends on it', (_name, rise, level, bound) => {
    const run = runOf(level, bound === 160 || bound === 140 ? bound : bound - 100)
    Object.assign(run.step.joint, { riseK: rise(0), phase: rise(0) > bound ? 'liquid' : 'solid' })
    follow(run, rise)
    passed()
    runTo(run, 64)
    const [first = 0, ...refined] = solved()
    expect(first).toBe(2 ** level)
    const share = (refined[0] ?? 0) / first
    const wanted = falsePosition(rise, bound, first, share)
    expect(refined.slice(0, wanted.length)).toEqual(wanted.map((length) => expect.closeTo(length, 12)))
    expect(taken()[0]).toBe(refined[wanted.length - 1])
    expect(vi.mocked(happen).mock.calls[0]?.[3]).toBe(taken()[0])
    // After it sixteen times shorter than the largest power of two within it, at most.
    expect(refined[wanted.length]).toBe(2 ** (Math.floor(Math.log2(taken()[0] ?? 0)) - 4))
  })

  test('one that is already there and about to pass takes no time: four at an instant, then the step is taken', () => {
    const run = runOf(-2)
    follow(run)
    // Half of what counts as an instant of this run.
    vi.mocked(findPassing).mockImplementation((_step, found) => Object.assign(found, { kind: 'limited', share: 8e-14, bound: 0 }))
    runTo(run, 4)
    expect(taken()).toEqual(Array.from({ length: 16 }, () => 1 / 4))
    expect(solved()).toEqual(Array.from({ length: 80 }, () => 1 / 4))
    expect(vi.mocked(happen).mock.calls.map(([, , , atS]) => atS)).toEqual(Array.from({ length: 64 }, (_, k) => Math.floor(k / 4) / 4))
  })

  test('one at the very end of a step needs no search; after it three more may come at once', () => {
    const run = runOf(-2)
    follow(run)
    let calls = 0
    vi.mocked(findPassing).mockImplementation((_step, found) => Object.assign(found, { kind: 'limited', share: calls++ === 0 ? 1 : 0, bound: 0 }))
    runTo(run, 1)
    // A quarter, then from 2^-6 on what the shortened steps add up to.
    expect(taken()[0]).toBe(1 / 4)
    expect(solved().slice(0, 5)).toEqual([1 / 4, 1 / 64, 1 / 64, 1 / 64, 1 / 64])
    expect(
      vi
        .mocked(happen)
        .mock.calls.slice(0, 5)
        .map(([, , , atS]) => atS),
    ).toEqual([1 / 4, 1 / 4, 1 / 4, 1 / 4, 1 / 4 + 1 / 64])
  })

  test('a step that was growing is not longer after one than before it', () => {
    const run = runOf(-6)
    follow(run)
    let calls = 0
    vi.mocked(findPassing).mockImplementation((_step, found) =>
      Object.assign(found, calls++ === 0 ? { kind: 'limited', share: 1, bound: 0 } : { kind: 'none', share: 2 }),
    )
    runTo(run, 1 / 32)
    expect(solved().slice(0, 2)).toEqual([1 / 64, 1 / 1024])
  })
})

describe('the peak of what holds the ring', () => {
  const tube = { kind: 'tube', gripped: true } as unknown as HeatSource
  test.each<[string, HeatSource, number]>([
    ['a tube that grips', tube, 4],
    ['a tube that hangs loose', { ...tube, gripped: false } as HeatSource, 0],
    ['an iron with mass', { kind: 'heavy-iron', gripped: true } as unknown as HeatSource, 0],
  ])('%s', (_name, source, times) => {
    const run = runOf(-2, 1e9, source, newLump(0.3, null, 20))
    follow(run)
    vi.mocked(findPassing).mockImplementation((_step, found) => Object.assign(found, { kind: 'none', share: 2 }))
    vi.mocked(recordBody).mockImplementation(() => {})
    Object.assign(run.step, { body1: 31, body2: 32, bodyMoves2: 33 })
    runTo(run, 1)
    expect(vi.mocked(recordBody)).toHaveBeenCalledTimes(times)
    if (times > 0) expect(vi.mocked(recordBody).mock.calls[0]?.slice(2)).toEqual([0, 1 / 4, 20, 31, 32])
    expect(run.step.body?.riseK).toBe(33)
  })
})
