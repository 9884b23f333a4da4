import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type DescentRoom, descentRoom, settle } from './packingDescent.ts'
import { type PackingProblem, packingEnergy, packingProblem } from './packingEnergy.ts'

type Matrix = readonly (readonly number[])[]
interface Pair {
  readonly move: readonly number[]
  readonly turn: readonly number[]
}

function problemOf(radii: readonly number[], place: readonly number[]): PackingProblem {
  const problem = packingProblem(Float64Array.from(radii))
  problem.place.set(place)
  return problem
}
const settleAll = (problem: PackingProblem, stiffness: number, mostSteps: number, steepness: number): number =>
  settle(problem, descentRoom(problem.count), stiffness, mostSteps, steepness)

function slopeAt(problem: PackingProblem, place: Float64Array, stiffness: number): { readonly energy: number; readonly slope: readonly number[] } {
  const slope = new Float64Array(place.length)
  return { energy: packingEnergy(problem, place, slope, stiffness), slope: [...slope] }
}

const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, value, at) => sum + value * (b[at] ?? 0), 0)
const times = (matrix: Matrix, vector: readonly number[]): readonly number[] => matrix.map((row) => dot(row, vector))

/** Inverse Hessian as a full matrix: scaled by the newest pair, then updated by the stored pairs, oldest first. */
function inverseCurvature(pairs: readonly Pair[], size: number): Matrix {
  const newest = pairs.at(-1)
  const scale = newest === undefined ? 0.5 : dot(newest.move, newest.turn) / dot(newest.turn, newest.turn)
  let inverse: Matrix = Array.from({ length: size }, (_row, i) => Array.from({ length: size }, (_entry, j) => (i === j ? scale : 0)))
  for (const { move, turn } of pairs) {
    const bend = dot(move, turn)
    const turned = times(inverse, turn)
    const stretch = 1 + dot(turn, turned) / bend
    const old = inverse
    inverse = old.map((row, i) =>
      row.map((entry, j) => {
        const both = (move[i] ?? 0) * (turned[j] ?? 0) + (turned[i] ?? 0) * (move[j] ?? 0)
        return entry + (stretch * (move[i] ?? 0) * (move[j] ?? 0) - both) / bend
      }),
    )
  }
  return inverse
}

/** The same descent with full matrices; counts shortened steps and steps of negative curvature. */
function settleByMatrix(
  problem: PackingProblem,
  stiffness: number,
  mostSteps: number,
): { place: Float64Array; energy: number; shortened: number; skipped: number } {
  let place = problem.place.slice()
  let { energy, slope } = slopeAt(problem, place, stiffness)
  let pairs: readonly Pair[] = []
  let shortened = 0
  let skipped = 0
  for (let steps = 0; steps < mostSteps; steps++) {
    const step = times(inverseCurvature(pairs, place.length), slope)
    for (let share = 1; share > 2 ** -12; share /= 2) {
      const next = place.map((value, at) => value - share * (step[at] ?? 0))
      const there = slopeAt(problem, next, stiffness)
      if (there.energy > energy - 1e-4 * share * dot(step, slope)) {
        shortened++
        continue
      }
      const from = place
      const before = slope
      const pair = { move: [...next].map((value, at) => value - (from[at] ?? 0)), turn: there.slope.map((value, at) => value - (before[at] ?? 0)) }
      if (dot(pair.move, pair.turn) > 1e-18) pairs = [...pairs, pair].slice(-5)
      else skipped++
      place = next
      energy = there.energy
      slope = there.slope
      break
    }
  }
  return { place, energy, shortened, skipped }
}

test('the room has a line for every place and the bundle, and five steps to look back', () => {
  const { next, slope, nextSlope, step, moves, turns, scale, share }: DescentRoom = descentRoom(3)
  expect([next, slope, nextSlope, step, ...moves, ...turns].map(({ length }) => length)).toEqual(Array.from({ length: 14 }, () => 7))
  expect([moves.length, turns.length, scale.length, share.length]).toEqual([5, 5, 5, 5])
  expect(new Set([next, slope, nextSlope, step, ...moves, ...turns]).size).toBe(14)
})

describe('one wire in a bundle that is too small: a parabola over the radius', () => {
  // Half the squared overhang plus a tenth of the radius: minimum at 0.9.
  const start = () => problemOf([1], [0, 0, 0])

  test.each([
    [0, 0, 5],
    [1, 0.45, 10 * (0.55 ** 2 / 2 + 0.045)],
    [2, 0.9, 0.95],
    [50, 0.9, 0.95],
  ])('after %i steps: none, half the slope, then straight to the lowest point', (mostSteps, bundle, energy) => {
    const problem = start()
    expect(settleAll(problem, 10, mostSteps, 1e-9)).toBeCloseTo(energy, 12)
    expect([problem.place[0], problem.place[1]]).toEqual([0, 0])
    expect(problem.place[2]).toBeCloseTo(bundle, 12)
  })

  test('it stops where the slope is below the steepness asked for, and goes on where it just is not', () => {
    for (const [steepness, bundle] of [
      [0.5, 0.25],
      [0.50001, 0],
      [0.2, 0.5],
      [0.3, 0.25],
    ] as const) {
      const problem = start()
      settleAll(problem, 2, 50, steepness)
      expect(problem.place[2]).toBeCloseTo(bundle, 12)
    }
  })
})

describe('a step that does not go down enough', () => {
  test('is halved: four wires in one point overshoot to a place as high as the start', () => {
    const problem = problemOf([1, 1, 1, 1], new Array(9).fill(0))
    // Six pairs that overlap by 2, four wires that overhang by 0.5, and twice the radius.
    expect(settleAll(problem, 0.5, 1, 0)).toBeCloseTo(0.5 * (12 + 0.5 + 1), 12)
    expect([...problem.place]).toEqual([0, 0, 0, 0, 0, 0, 0, 0, 0.5])
  })

  // Close to the middle each longer step crosses it and ends higher.
  const beside = (x: number) => problemOf([2], [x, 0, 1])

  test('is halved eleven times at most', () => {
    const x = 3e-5
    const share = 0.5 / 2048
    const problem = beside(x)
    settleAll(problem, 10, 1, 0)
    expect(problem.place[0]).toBeCloseTo(x - share * (1 + x), 14)
    expect(problem.place[2]).toBeCloseTo(1 + share * (1 + x - 0.1), 14)
  })

  test('then is not made at all', () => {
    const x = 2e-5
    const problem = beside(x)
    expect(settleAll(problem, 10, 9, 0)).toBeCloseTo(10 * ((1 + x) ** 2 / 2 + 0.1), 12)
    expect([...problem.place]).toEqual([x, 0, 1])
  })
})

describe('where the wires come to rest', () => {
  test('two: each edge bears half, and so does their contact', () => {
    const radius = fc.integer({ min: 300, max: 1500 }).map((value) => value / 1000)
    fc.assert(
      fc.property(radius, radius, fc.integer({ min: 5, max: 40 }), fc.integer({ min: 0, max: 628 }), (r1, r2, stiffness, turn) => {
        const [x, y] = [Math.cos(turn / 100), Math.sin(turn / 100)]
        const problem = problemOf([r1, r2], [0.6 * r2 * x, -0.7 * r1 * x, 0.6 * r2 * y, -0.7 * r1 * y, r1 + r2])
        expect(settleAll(problem, stiffness, 40, 1e-10)).toBeCloseTo(r1 + r2 - 3 / (8 * stiffness), 12)
        const [x1 = 0, x2 = 0, y1 = 0, y2 = 0, bundle = 0] = problem.place
        expect(bundle).toBeCloseTo(r1 + r2 - 3 / (4 * stiffness), 8)
        expect(Math.hypot(x1 - x2, y1 - y2)).toBeCloseTo(r1 + r2 - 1 / (2 * stiffness), 8)
        expect(Math.hypot(x1, y1)).toBeCloseTo(bundle - r1 + 1 / (2 * stiffness), 8)
      }),
      { numRuns: 30 },
    )
  })

  test('three equal ones: each edge bears a third, each contact that over the root of three, within 25 steps', () => {
    const problem = problemOf([1, 1, 1], [1, -0.8, -0.3, 0.1, 0.9, -1, 2])
    const stiffness = 20
    const contact = 1 / (3 * Math.sqrt(3))
    const out = (2 - contact / stiffness) / Math.sqrt(3)
    const bundle = out + 1 - 1 / (3 * stiffness)
    const energy = bundle + (3 * (1 / 9 + contact ** 2)) / (2 * stiffness)
    expect(settleAll(problem, stiffness, 25, 0)).toBeCloseTo(energy, 11)
    expect(problem.place[6]).toBeCloseTo(bundle, 6)
    expect(Math.hypot(...slopeAt(problem, problem.place, stiffness).slope)).toBeLessThan(1e-7)
  })
})

describe('the way down', () => {
  const anyPlace = fc.array(
    fc.integer({ min: -1500, max: 1500 }).map((value) => value / 1000),
    { minLength: 12, maxLength: 12 },
  )
  const radii = [1, 0.9, 0.8, 0.6, 0.5, 0.3]

  test('is that of full matrices from the last five steps, whether shortened or bent the wrong way', () => {
    let shortened = 0
    let skipped = 0
    fc.assert(
      fc.property(anyPlace, fc.integer({ min: 1, max: 16 }), (centres, mostSteps) => {
        const problem = problemOf(radii, [...centres, 1])
        const expected = settleByMatrix(problem, 10, mostSteps)
        shortened += expected.shortened
        skipped += expected.skipped
        expect(settleAll(problem, 10, mostSteps, 0)).toBeCloseTo(10 * expected.energy, 8)
        for (const [at, value] of expected.place.entries()) expect(problem.place[at]).toBeCloseTo(value, 6)
      }),
      { numRuns: 100 },
    )
    expect(shortened).toBeGreaterThan(10)
    expect(skipped).toBeGreaterThan(3)
  })

  test('never rises, and what it returns is the radius and its penalty there', () => {
    fc.assert(
      fc.property(anyPlace, (centres) => {
        const problem = problemOf(radii, [...centres, 1])
        let last = 8 * slopeAt(problem, problem.place, 8).energy
        for (let calls = 0; calls < 5; calls++) {
          const reached = settleAll(problem, 8, 3, 1e-9)
          expect(reached).toBeLessThanOrEqual(last)
          expect(reached).toBeCloseTo(8 * slopeAt(problem, problem.place, 8).energy, 12)
          last = reached
        }
      }),
      { numRuns: 20 },
    )
  })
})
