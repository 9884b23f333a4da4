import { beforeEach, describe, expect, test, vi } from 'vitest'
import { placeInCorners } from './packingCorners.ts'
import { settle } from './packingDescent.ts'
import { makeFeasible, type PackingProblem, packingProblem, updateForces } from './packingEnergy.ts'
import { searchPacking } from './packingSearch.ts'
import { dropAnywhere, ringPlans, scattered, startInRings, startScattered } from './packingStarts.ts'

vi.mock('./packingDescent.ts', { spy: true })
const forcesOf = ({ pairForces, edgeForces }: PackingProblem): number[] => [...pairForces, ...edgeForces]

/** A call of the settling, with the positions before it. */
interface Visit {
  readonly stiffness: number
  readonly mostSteps: number
  readonly steepness: number
  readonly place: readonly number[]
  readonly forces: readonly number[]
}
type Search = Readonly<Record<'starts' | 'rough' | 'exact', readonly Visit[]>> & { readonly packed: readonly number[] }

const firstSteps = (radii: readonly number[]): number => (radii.length > 60 ? 20 : 30)

/** Search with a stub for settling: the radius depends on the number of the start, and the end of an exact run on the number of the run. */
function search(radii: readonly number[], rankOf: (start: number, again: boolean) => number, endOf?: (run: number) => readonly number[]): Search {
  const rough: Visit[] = []
  const exact: Visit[] = []
  let start = -1
  let run = -1
  let last = ''
  vi.mocked(settle).mockImplementation((problem, _room, stiffness, mostSteps, steepness) => {
    const visit = { stiffness, mostSteps, steepness, place: [...problem.place], forces: forcesOf(problem) }
    if (stiffness !== 20) {
      rough.push(visit)
      const again = mostSteps !== firstSteps(radii)
      if (!again) start++
      return rankOf(start, again)
    }
    exact.push(visit)
    // A call that continues from the last positions belongs to the same run.
    if (visit.place.join() !== last) run++
    if (endOf !== undefined) problem.place.set(endOf(run))
    last = problem.place.join()
    return 0
  })
  const packed = [...searchPacking(Float64Array.from(radii))]
  return { starts: rough.filter(({ mostSteps }) => mostSteps === firstSteps(radii)), rough, exact, packed }
}

const equal = (count: number): readonly number[] => Array.from({ length: count }, () => 1)
const mixed = (count: number): readonly number[] => Array.from({ length: count }, (_one, wire) => 1 - wire / 100)
const problemOf = (radii: readonly number[]): PackingProblem => packingProblem(Float64Array.from(radii))
const inOrder = (radii: readonly number[]): readonly number[] => [...radii.keys()]
/** Every start is worse than the one before. */
const falling = (start: number): number => 10 + start

/** Wires placed in corners about the first wire, or about a given pair. */
function cornersOf(radii: readonly number[], pair: readonly number[] = []): readonly number[] {
  const problem = problemOf(radii)
  problem.place.set(pair)
  problem.place[2 * radii.length] = (radii[0] ?? 0) + (radii[1] ?? 0)
  placeInCorners(problem, inOrder(radii), pair.length)
  makeFeasible(problem)
  return [...problem.place]
}

beforeEach(() => {
  vi.mocked(settle).mockReset()
})

describe('how long it looks', () => {
  // Expected starts: corners about one wire (and about two if sizes differ), rings, scattered starts of 300 or 600 wires in all, hops of 240 or 2400.
  test.each([
    [4, true, 1 + 3 + 75 + 60, 6],
    [8, true, 1 + 3 + 38 + 30, 6],
    [8, false, 2 + 6 + 75 + 300, 6],
    [9, true, 1 + 3 + 33 + 27, 2],
    [24, true, 1 + 3 + 13 + 10, 2],
    [24, false, 2 + 6 + 25 + 100, 2],
    [25, true, 1 + 3 + 2 + 2, 2],
    [25, false, 2 + 6 + 2 + 8, 2],
    [60, true, 1 + 3 + 2 + 2, 2],
    [61, true, 1 + 3, 1],
    [61, false, 2 + 6, 1],
  ])('%i wires, equal: %s: %i starts, of which %i are settled exactly', (count, alike, starts, exactOnes) => {
    const found = search(alike ? equal(count) : mixed(count), falling)
    expect(found.starts.length).toBe(starts)
    expect(new Set(found.exact.map(({ place }) => place.join())).size).toBe(exactOnes)
    const steps = count > 60 ? [20, 40] : [30, 50]
    expect(found.rough.slice(0, 2).map(({ mostSteps }) => mostSteps)).toEqual(steps)
    expect(found.rough.every((visit) => visit.stiffness === 10 && visit.steepness === 1e-3)).toBe(true)
    expect(found.exact.every((visit) => visit.mostSteps === 60 && visit.steepness === 1e-9)).toBe(true)
  })

  test('a start within a twentieth of the lowest so far is settled further, no other', () => {
    const ranks = [
      [2, 1],
      [1.04, 3],
      [1.05, 0],
      [1.06, 0],
      [0.9, 0.5],
      [1, 0],
      [0.52, 0.6],
      [0.53, 0],
    ]
    const found = search(equal(4), (start, again) => ranks[start]?.[again ? 1 : 0] ?? 9)
    const steps = found.rough.map(({ mostSteps }) => mostSteps)
    expect(steps.slice(0, 13)).toEqual([30, 50, 30, 50, 30, 30, 30, 50, 30, 30, 50, 30, 30])
    expect(new Set(steps.slice(13))).toEqual(new Set([30]))
  })
})

describe('where it starts', () => {
  const unlike = [1, 0.9, 0.9, 0.8, 0.8, 0.8, 0.5]

  test.each([[equal(7)], [unlike]])('in the corners, in every plan of rings, then scattered: %j', (radii) => {
    const problem = problemOf(radii)
    const expected = radii === unlike ? [cornersOf(radii), cornersOf(radii, [-0.9, 1])] : [cornersOf(radii)]
    let state = 1
    for (const plan of ringPlans(7)) {
      for (const order of radii === unlike ? [inOrder(radii), [...inOrder(radii)].reverse()] : [inOrder(radii)]) {
        state = startInRings(problem, plan, order, state)
        expected.push([...problem.place])
      }
    }
    for (let start = 0; start < (radii === unlike ? 86 : 43); start++) {
      state = startScattered(problem, state)
      expected.push([...problem.place])
    }
    const { starts } = search(radii, falling)
    expect(starts.slice(0, expected.length).map(({ place }) => place)).toEqual(expected)
  })

  /** Expects hops from the best two in turn: one wire dropped elsewhere, or swapped with one of another size a few ranks away. */
  function expectHops(radii: readonly number[], before: number, rankOf: (start: number) => number): void {
    const count = radii.length
    const { starts } = search(radii, rankOf)
    const problem = problemOf(radii)
    let state = 1
    for (let draw = 0; draw < (before - (radii === unlike ? 2 : 1)) * 2 * count; draw++) state = scattered(state).state
    for (const [turn, hopped] of starts.slice(before).entries()) {
      const ranked = [...Array(before + turn).keys()].sort((one, other) => rankOf(one) - rankOf(other))
      problem.place.set(starts[ranked[turn % 2] ?? 0]?.place ?? [])
      const first = scattered(state)
      const one = Math.floor(first.share * count)
      if (new Set(radii).size === 1 || turn % 3 === 0) state = dropAnywhere(problem, one, problem.place[2 * count] ?? 0, first.state)
      else {
        const second = scattered(first.state)
        state = second.state
        const ranksOn = 1 + Math.floor(3 * second.share)
        const others = radii.map((_radius, at) => (one + ranksOn + at) % count)
        const other = others.find((wire) => radii[wire] !== radii[one]) ?? 0
        const { place } = problem
        for (const [to, from] of [
          [one, other],
          [count + one, count + other],
        ] as const)
          [place[to], place[from]] = [place[from] ?? 0, place[to] ?? 0]
      }
      expect(hopped.place).toEqual([...problem.place])
    }
  }

  test('equal wires hop by one that is dropped elsewhere', () => {
    expectHops(equal(8), 1 + 3 + 38, falling)
  })

  test('unlike ones also change places, two in three times', () => {
    expectHops(unlike, 2 + 6 + 86, falling)
  })

  test('a hop that turns out well is the next to hop from', () => {
    expectHops(unlike, 2 + 6 + 86, (start) => 10 - ((start * 37) % 101) / 1000 - start / 1e4)
  })
})

describe('how it ends', () => {
  const four = equal(4)
  const root2 = Math.sqrt(2)
  const root3 = Math.sqrt(3)
  const square = [root2, 0, -root2, 0, 0, root2, 0, -root2, 1 + root2]
  const rhombus = [root3, 0, -root3, 0, 0, 1, 0, -1, 1 + root3]
  const turned = [0, 1, 0, -1, root3, 0, -root3, 0, 1 + root3]
  const row = [-3, -1, 1, 3, 0, 0, 0, 0, 4]

  /** Starting positions of the exact runs of one round. */
  const begun = ({ exact }: Search): readonly string[] => exact.map(({ place }) => place.join())
  const startsAt = ({ starts }: Search, ...which: readonly number[]): readonly string[] => which.map((start) => starts[start]?.place.join() ?? '')
  function expectPlace(got: readonly number[], expected: readonly number[]): void {
    for (const [at, value] of expected.entries()) expect(got[at]).toBeCloseTo(value, 12)
  }

  test('where the best few end no better than the corners, the corners remain; the best ranked had the last say', () => {
    const found = search(four, falling, () => row)
    expect(begun(found)).toEqual(startsAt(found, 0, 1, 2, 3, 4, 5, 0))
    expect(found.packed).toEqual(cornersOf(four))
  })

  test('one that ends with nothing overlapping is done in a round; else five rounds each, and 25 for the winner', () => {
    const roundsAt = (bundle: number): number => search(four, falling, () => [...row.slice(0, 8), bundle]).exact.length
    expect([roundsAt(4), roundsAt(4 - 5e-10)]).toEqual([7, 7])
    expect([roundsAt(1), roundsAt(4 - 2e-9)]).toEqual([6 * 5 + 25, 6 * 5 + 25])
  })

  test('the narrowest of them wins and is settled once more', () => {
    const found = search(four, falling, (run) => [row, rhombus, row, square, rhombus, row, row][run] ?? row)
    expect(begun(found)).toEqual(startsAt(found, 0, 1, 2, 3, 4, 5, 3))
    expectPlace(found.packed, square)
  })

  test('where the last settling ends narrower, that is the bundle', () => {
    const found = search(four, falling, (run) => [row, row, rhombus, row, row, row, square][run] ?? row)
    expect(begun(found).at(-1)).toBe(startsAt(found, 2)[0])
    expectPlace(found.packed, square)
  })

  test('of bundles alike the first stays', () => {
    const found = search(four, falling, (run) => [row, rhombus, row, turned, row, row, turned][run] ?? row)
    expect(begun(found).at(-1)).toBe(startsAt(found, 1)[0])
    expectPlace(found.packed, rhombus)
  })

  test('the best ranked are settled, of those ranked alike one', () => {
    const ranks = [9, 3, 1e-6, 0, 1.5e-6, 2e-6, 5, 4, 4 + 5e-7, 6]
    const rankOf = (start: number): number => ranks[start] ?? 20 + start
    const found = search(four, rankOf, () => row)
    expect(begun(found)).toEqual(startsAt(found, 3, 2, 5, 1, 7, 6, 3))
    const lastIsBest = (start: number): number => falling(start === 138 ? -1 : start)
    const late = search(four, lastIsBest, () => row)
    expect(begun(late).slice(0, 2)).toEqual(startsAt(late, 138, 0))
  })

  test('the contacts begin with what they press at a stiffness of 10, and take up 20 times what is left each round', () => {
    const pressed = [...square.slice(0, 8).map((value) => 0.9 * value), 2]
    const { exact } = search(four, falling, () => pressed)
    const problem = problemOf(four)
    for (const run of [0, 1]) {
      problem.pairForces.fill(0)
      problem.edgeForces.fill(0)
      problem.place.set(exact[5 * run]?.place ?? [])
      updateForces(problem, 10)
      expect(exact[5 * run]?.forces).toEqual(forcesOf(problem))
      problem.place.set(pressed)
      for (const round of [1, 2, 3, 4]) {
        updateForces(problem, 20)
        expect(exact[5 * run + round]?.forces).toEqual(forcesOf(problem))
      }
    }
    expect(Math.max(...(exact[5]?.forces ?? []))).toBeGreaterThan(0)
  })
})
