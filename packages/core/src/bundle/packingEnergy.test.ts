import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { makeFeasible, type PackingProblem, packingEnergy, packingProblem, updateForces } from './packingEnergy.ts'

type Wire = readonly [radius: number, x: number, y: number]

function problemOf(wires: readonly Wire[], bundle: number, pairForces: readonly number[] = [], edgeForces: readonly number[] = []): PackingProblem {
  const problem = packingProblem(Float64Array.from(wires, ([radius]) => radius))
  problem.place.set([...wires.map(([, x]) => x), ...wires.map(([, , y]) => y), bundle])
  problem.pairForces.set(pairForces)
  problem.edgeForces.set(edgeForces)
  return problem
}

/** Energy and gradient, with the gradient array left dirty by an earlier call. */
function energyOf(problem: PackingProblem, stiffness: number): { readonly energy: number; readonly slope: readonly number[] } {
  const slope = new Float64Array(problem.place.length).fill(99)
  return { energy: packingEnergy(problem, problem.place, slope, stiffness), slope: [...slope] }
}

const centreOf = ({ count, place }: PackingProblem, wire: number): readonly [number, number] => [place[wire] ?? 0, place[count + wire] ?? 0]
const outOf = (problem: PackingProblem, wire: number): number => Math.hypot(...centreOf(problem, wire))
function apart(problem: PackingProblem, one: number, other: number): number {
  const [x1, y1] = centreOf(problem, one)
  const [x2, y2] = centreOf(problem, other)
  return Math.hypot(x1 - x2, y1 - y2)
}
const pairsOf = (count: number): readonly (readonly [number, number])[] =>
  Array.from({ length: count }, (_one, i) => Array.from({ length: i }, (_other, j) => [i, j] as const)).flat()

/** Energy contact by contact: half the squares of all overlaps with multipliers, plus the bundle's radius. */
function energyByContact(problem: PackingProblem, stiffness: number): number {
  const { count, radii, place, pairForces, edgeForces } = problem
  const bundle = place[2 * count] ?? 0
  const edges = Array.from(radii, (radius, wire) => outOf(problem, wire) + radius + (edgeForces[wire] ?? 0) / stiffness - bundle)
  const pairs = pairsOf(count).map(([i, j], pair) => (radii[i] ?? 0) + (radii[j] ?? 0) + (pairForces[pair] ?? 0) / stiffness - apart(problem, i, j))
  return [...edges, ...pairs].reduce((sum, press) => sum + Math.max(0, press) ** 2 / 2, 0) + bundle / stiffness
}

const ofThousands = (least: number, most: number) => fc.integer({ min: 1000 * least, max: 1000 * most }).map((value) => value / 1000)
const anyWires = (least: number) => fc.array(fc.tuple(ofThousands(0.3, 1.5), ofThousands(-2, 2), ofThousands(-2, 2)), { minLength: least, maxLength: 5 })
const forces = (most: number) => fc.array(ofThousands(0, 3), { minLength: most, maxLength: most })

test('a fresh problem has room for all centres, the bundle, one force a pair and one an edge', () => {
  const problem = packingProblem(Float64Array.of(3, 2, 1, 1))
  expect(problem.count).toBe(4)
  expect([...problem.radii]).toEqual([3, 2, 1, 1])
  expect([...problem.place]).toEqual([0, 0, 0, 0, 0, 0, 0, 0, 0])
  expect([...problem.pairForces]).toEqual([0, 0, 0, 0, 0, 0])
  expect([...problem.edgeForces]).toEqual([0, 0, 0, 0])
})

describe('energy and slope', () => {
  test('by hand: one wire sticks out by 1, another overlaps it by a half', () => {
    const { energy, slope } = energyOf(
      problemOf(
        [
          [2, 3, 4],
          [1, 3, 1.5],
        ],
        6,
      ),
      4,
    )
    expect(energy).toBeCloseTo((1 + 0.25) / 2 + 6 / 4, 14)
    expect(slope.map((one) => Number(one.toFixed(14)))).toEqual([0.6, 0, 0.3, 0.5, -0.75])
  })

  test('a contact with a force presses before it overlaps', () => {
    const wires: readonly Wire[] = [
      [1, 2, 0],
      [1, -1, 0],
    ]
    const problem = problemOf(wires, 3, [6], [2, 0])
    const { energy, slope } = energyOf(problem, 4)
    expect(energy).toBeCloseTo((0.5 ** 2 + 0.5 ** 2) / 2 + 3 / 4, 14)
    expect(slope.map((one) => one + 0)).toEqual([0, 0.5, 0, 0, -0.25])
  })

  test('wires that just touch one another and the edge leave only the radius', () => {
    const touching = problemOf(
      [
        [1, -2, 0],
        [2, 1, 0],
      ],
      3,
    )
    expect(energyOf(touching, 8)).toEqual({ energy: 3 / 8, slope: [0, 0, 0, 0, 1 / 8] })
  })

  test('is half the squares of all that presses; its slope is that of fine differences', () => {
    fc.assert(
      fc.property(anyWires(1), ofThousands(0.2, 3), forces(10), forces(5), ofThousands(2, 20), (wires, bundle, pairForces, edgeForces, stiffness) => {
        const count = wires.length
        const problem = problemOf(wires, bundle, pairForces.slice(0, (count * (count - 1)) / 2), edgeForces.slice(0, count))
        fc.pre(wires.every((_one, wire) => outOf(problem, wire) > 0.05) && pairsOf(count).every(([i, j]) => apart(problem, i, j) > 0.05))
        const { energy, slope } = energyOf(problem, stiffness)
        expect(energy).toBeCloseTo(energyByContact(problem, stiffness), 11)
        const fine = 1e-5
        for (const [at, value] of [...problem.place].entries()) {
          problem.place[at] = value + fine
          const above = energyByContact(problem, stiffness)
          problem.place[at] = value - fine
          const below = energyByContact(problem, stiffness)
          problem.place[at] = value
          expect(Math.abs((slope[at] ?? 0) - (above - below) / (2 * fine))).toBeLessThan(1e-5)
        }
      }),
      { numRuns: 80 },
    )
  })

  test('two wires with one centre overlap by the sum of their radii, without a direction of push', () => {
    const same: readonly Wire[] = [
      [1, 0, 1],
      [2, 0, 1],
    ]
    expect(energyOf(problemOf(same, 9), 3)).toEqual({ energy: 4.5 + 3, slope: [0, 0, 0, 0, 1 / 3] })
  })

  test('centres have no direction up to 1e-12 apart', () => {
    const near = (distance: number) =>
      energyOf(
        problemOf(
          [
            [1, 0, 0],
            [1, distance, 0],
          ],
          9,
        ),
        2,
      ).slope.slice(0, 2)
    expect(near(1e-12)).toEqual([0, 0])
    expect(near(2e-12)[0]).toBeCloseTo(2, 10)
    expect(near(2e-12)[1]).toBeCloseTo(-2, 10)
  })

  test('a wire thicker than the bundle sticks out at its very middle, without a direction up to 1e-12', () => {
    expect(energyOf(problemOf([[2, 0, 0]], 1.5), 4)).toEqual({ energy: 0.125 + 0.375, slope: [0, 0, -0.25] })
    expect(energyOf(problemOf([[2, 1e-12, 0]], 1.5), 4).slope.slice(0, 2)).toEqual([0, 0])
    expect(energyOf(problemOf([[2, 0, 2e-12]], 1.5), 4).slope[1]).toBeCloseTo(0.5, 10)
  })
})

describe('forces carried over', () => {
  const wires: readonly Wire[] = [
    [1, 0, 0],
    [2.25, 3, 4],
    [2.5, 3, 0],
  ]

  test('by hand: stiffness times the overlap is added, pair by pair and edge by edge', () => {
    const problem = problemOf(wires, 6, [8, 1, 0.5], [30, 1, 3])
    expect(updateForces(problem, 4)).toBe(1.25)
    expect([...problem.pairForces]).toEqual([1, 3, 3.5])
    expect([...problem.edgeForces]).toEqual([10, 6, 1])
  })

  test('the worst overlap is one of two wires where none sticks out; a force never pulls', () => {
    const problem = problemOf(wires, 10, [6, 0, 0], [5, 0, 20])
    expect(updateForces(problem, 4)).toBe(0.75)
    expect([...problem.pairForces]).toEqual([0, 2, 3])
    expect([...problem.edgeForces]).toEqual([0, 0, 2])
  })

  test('where all have room nothing is left of the forces, nor any overlap', () => {
    const loose = problemOf(
      [
        [1, 0, 5],
        [1, 3, 1],
        [1, -4, 1],
      ],
      9,
      [1, 1, 1],
      [1, 1, 1],
    )
    expect(updateForces(loose, 1)).toBe(0)
    expect([...loose.pairForces]).toEqual([0, 0, 0])
    expect([...loose.edgeForces]).toEqual([0, 0, 0])
  })
})

describe('a real arrangement of a near one', () => {
  test('by hand: two wires that overlap move apart from the centre, two far ones come together', () => {
    for (const width of [1.5, 15]) {
      const problem = problemOf(
        [
          [1, -width / 3, 0.4 * width],
          [2, (width * 2) / 3 - width / 3, 0],
        ],
        77,
      )
      const spread = 3 / apart(problem, 0, 1)
      const bundle = Math.max(spread * outOf(problem, 0) + 1, spread * outOf(problem, 1) + 2)
      expect(makeFeasible(problem)).toBeCloseTo(bundle, 12)
      expect(problem.place[4]).toBeCloseTo(bundle, 12)
      expect(problem.place[0]).toBeCloseTo((-width / 3) * spread, 12)
      expect(problem.place[3]).toBe(0)
    }
  })

  test('one wire goes to the middle and fills the bundle', () => {
    const problem = problemOf([[1.5, 4, -2]], 3)
    expect(makeFeasible(problem)).toBe(1.5)
    expect([...problem.place].map(Math.abs)).toEqual([0, 0, 1.5])
  })

  test('all places grow alike until the tightest pair touches and none overlaps, to the last digit', () => {
    fc.assert(
      fc.property(anyWires(2), ofThousands(0, 3), (wires, bundle) => {
        const problem = problemOf(wires, bundle)
        const { count, radii, place } = problem
        fc.pre(pairsOf(count).every(([i, j]) => apart(problem, i, j) > 0.05))
        const spread = Math.max(...pairsOf(count).map(([i, j]) => ((radii[i] ?? 0) + (radii[j] ?? 0)) / apart(problem, i, j)))
        const before = place.slice(0, 2 * count)
        const got = makeFeasible(problem)
        for (const [at, value] of before.entries()) expect(Math.abs((place[at] ?? 0) - spread * value)).toBeLessThan(1e-12 * spread)
        for (const [i, j] of pairsOf(count)) expect(apart(problem, i, j)).toBeGreaterThanOrEqual((radii[i] ?? 0) + (radii[j] ?? 0))
        expect(got).toBe(place[2 * count])
        expect(got).toBeCloseTo(Math.max(...Array.from(radii, (radius, wire) => outOf(problem, wire) + radius)), 10)
      }),
      { numRuns: 60 },
    )
  })
})
