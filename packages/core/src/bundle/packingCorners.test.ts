import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { placeInCorners } from './packingCorners.ts'
import { type PackingProblem, packingProblem } from './packingEnergy.ts'

type Spot = readonly [x: number, y: number]

/** A problem of these radii with some wires placed; the rest lie far away. */
function problemOf(radii: readonly number[], spots: readonly Spot[] = [], bundle = 50): PackingProblem {
  const problem = packingProblem(Float64Array.from(radii))
  problem.place.fill(30)
  for (const [wire, [x, y]] of spots.entries()) {
    problem.place[wire] = x
    problem.place[radii.length + wire] = y
  }
  problem.place[2 * radii.length] = bundle
  return problem
}

const spotOf = ({ count, place }: PackingProblem, wire: number): Spot => [place[wire] ?? 0, place[count + wire] ?? 0]
const bundleOf = ({ count, place }: PackingProblem): number => place[2 * count] ?? 0
const radiusOf = ({ radii }: PackingProblem, wire: number): number => radii[wire] ?? 0
const inOrder = (count: number): readonly number[] => Array.from({ length: count }, (_wire, at) => at)
const distance = ([x1, y1]: Spot, [x2, y2]: Spot): number => Math.hypot(x1 - x2, y1 - y2)

function expectSpot(problem: PackingProblem, wire: number, [x, y]: Spot): void {
  const [gotX, gotY] = spotOf(problem, wire)
  expect(gotX).toBeCloseTo(x, 12)
  expect(gotY).toBeCloseTo(y, 12)
}

/** Positions of a circle that touches two others, by the angle at the first. */
function corners(problem: PackingProblem, radius: number, one: number, other: number): readonly Spot[] {
  const [x, y] = spotOf(problem, one)
  const [otherX, otherY] = spotOf(problem, other)
  const to1 = radiusOf(problem, one) + radius
  const to2 = radiusOf(problem, other) + radius
  const apart = distance([x, y], [otherX, otherY])
  if (apart > to1 + to2) return []
  const angle = Math.acos(Math.min(1, (to1 ** 2 + apart ** 2 - to2 ** 2) / (2 * to1 * apart)))
  const bearing = Math.atan2(otherY - y, otherX - x)
  return [angle, -angle].map((turn): Spot => [x + to1 * Math.cos(bearing + turn), y + to1 * Math.sin(bearing + turn)])
}

describe('wires laid one by one', () => {
  test('the first in the middle, the second beside it, the third into their corner: 3, 4 and 5', () => {
    const problem = problemOf([3, 1, 2])
    placeInCorners(problem, [1, 2, 0], 0)
    expect(spotOf(problem, 1)).toEqual([0, 0])
    expect(spotOf(problem, 2)).toEqual([3, 0])
    expectSpot(problem, 0, [0, -4])
    expect(bundleOf(problem)).toBeCloseTo(7, 12)
  })

  test('of two corners alike the first found is kept, the next wire takes the other', () => {
    const problem = problemOf([1, 1, 1, 1])
    placeInCorners(problem, [3, 1, 2, 0], 0)
    expect(spotOf(problem, 1)).toEqual([2, 0])
    expectSpot(problem, 2, [1, -Math.sqrt(3)])
    expectSpot(problem, 0, [1, Math.sqrt(3)])
    expect(bundleOf(problem)).toBeCloseTo(3, 12)
  })

  test('one wire alone is the bundle, two in a row reach from the first on', () => {
    const alone = problemOf([1.5])
    placeInCorners(alone, [0], 0)
    expect([...alone.place]).toEqual([0, 0, 1.5])
    const two = problemOf([1.5, 0.5])
    placeInCorners(two, [0, 1], 0)
    expect([...two.place]).toEqual([0, 2, 0, 0, 2.5])
  })

  test('seven equal ones make a hexagon about the first, and the eighth a corner outside', () => {
    const problem = problemOf(Array.from({ length: 8 }, () => 1))
    placeInCorners(problem, inOrder(8), 0)
    for (const wire of [1, 2, 3, 4, 5, 6]) expect(distance(spotOf(problem, wire), [0, 0])).toBeCloseTo(2, 12)
    expect(distance(spotOf(problem, 7), [0, 0])).toBeCloseTo(2 * Math.sqrt(3), 12)
    expect(bundleOf(problem)).toBeCloseTo(2 * Math.sqrt(3) + 1, 12)
  })

  test('each takes the free corner that is nearest to the centre', () => {
    const radius = fc.integer({ min: 200, max: 1000 }).map((value) => value / 1000)
    fc.assert(
      fc.property(fc.array(radius, { minLength: 3, maxLength: 8 }), (radii) => {
        const problem = problemOf(radii)
        const order = [...radii.keys()].reverse()
        placeInCorners(problem, order, 0)
        for (const [at, wire] of order.entries()) {
          const laid = order.slice(0, at)
          const roomAt = (spot: Spot): number => Math.min(...laid.map((other) => distance(spot, spotOf(problem, other)) - radiusOf(problem, other)))
          const own = radiusOf(problem, wire)
          expect(roomAt(spotOf(problem, wire))).toBeGreaterThan(own - 1e-12)
          if (at < 2) continue
          const free = laid
            .flatMap((one, k) => laid.slice(0, k).flatMap((other) => corners(problem, own, one, other)))
            .filter((spot) => roomAt(spot) > own - 1e-12)
            .map((spot) => distance(spot, [0, 0]))
          expect(distance(spotOf(problem, wire), [0, 0])).toBeCloseTo(Math.min(...free), 10)
        }
        expect(bundleOf(problem)).toBeCloseTo(Math.max(...radii.map((own, wire) => distance(spotOf(problem, wire), [0, 0]) + own)), 12)
      }),
      { numRuns: 60 },
    )
  })
})

describe('wires added to others that lie', () => {
  test('the others and their wide bundle stay; the new one takes the nearest corner', () => {
    const problem = problemOf(
      [1, 2, 3],
      [
        [5, 1],
        [5, 4],
      ],
      20,
    )
    placeInCorners(problem, inOrder(3), 2)
    expect([spotOf(problem, 0), spotOf(problem, 1)]).toEqual([
      [5, 1],
      [5, 4],
    ])
    expectSpot(problem, 2, [1, 1])
    expect(bundleOf(problem)).toBe(20)
  })

  test('a second wire lies beside the first wherever that is', () => {
    const problem = problemOf([1, 0.5], [[2, 3]], 4)
    placeInCorners(problem, inOrder(2), 1)
    expect([...problem.place]).toEqual([2, 3.5, 3, 3, Math.hypot(3.5, 3) + 0.5])
  })

  test('a corner found first gives way to a nearer one that it overlaps', () => {
    const problem = problemOf(
      [1, 1, 1, 1],
      [
        [-0.2, 3],
        [-0.2, -0.2],
        [2.9, -0.2],
      ],
    )
    placeInCorners(problem, inOrder(4), 3)
    const found = inOrder(3).flatMap((one) => inOrder(one).flatMap((other) => corners(problem, 1, one, other)))
    const free = found.filter((spot) => inOrder(3).every((other) => distance(spot, spotOf(problem, other)) > 2 - 1e-12))
    const nearest = free.reduce((best, spot) => (distance(spot, [0, 0]) < distance(best, [0, 0]) ? spot : best))
    expectSpot(problem, 3, nearest)
  })

  test('without a free corner it goes beside them all, on the axis', () => {
    const problem = problemOf(
      [1, 1, 0.5],
      [
        [-3, 0],
        [3, 0],
      ],
      4,
    )
    placeInCorners(problem, inOrder(3), 2)
    expect(spotOf(problem, 2)).toEqual([4.5, 0])
    expect(bundleOf(problem)).toBe(5)
  })

  test('a wire that just bridges two lies between them', () => {
    const problem = problemOf(
      [1, 1, 1],
      [
        [-2, 0],
        [2, 0],
      ],
      3,
    )
    placeInCorners(problem, inOrder(3), 2)
    expect(spotOf(problem, 2).map((one) => one + 0)).toEqual([0, 0])
    expect(bundleOf(problem)).toBe(3)
  })

  test('a neighbour too near for it by the rounding leaves it there; a nearer one pushes it off', () => {
    const bridge = (tooNear: number): number => {
      const problem = problemOf(
        [1, 1, 1, 1],
        [
          [-2, 0],
          [2, 0],
          [0, 2 - tooNear],
        ],
        3,
      )
      placeInCorners(problem, inOrder(4), 3)
      expect(spotOf(problem, 3)[0]).toBeCloseTo(0, 12)
      return spotOf(problem, 3)[1]
    }
    expect(Math.abs(bridge(1e-14))).toBe(0)
    expect(bridge(2e-14)).toBeLessThan(-1e-14)
  })
})
