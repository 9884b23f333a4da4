import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { packingProblem } from './packingEnergy.ts'
import { dropAnywhere, ringPlans, scattered, startInRings, startScattered } from './packingStarts.ts'

const anyState = fc.integer({ min: 0, max: 2 ** 32 - 1 })

/** The next pseudo-random numbers after a state. */
function draws(state: number, many: number): { readonly shares: readonly number[]; readonly state: number } {
  const shares: number[] = []
  let now = state
  for (let draw = 0; draw < many; draw++) {
    const next = scattered(now)
    shares.push(next.share)
    now = next.state
  }
  return { shares, state: now }
}

describe('the scattering sequence', () => {
  test('is the linear congruence to the last digit', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        const next = (BigInt(state) * 1664525n + 1013904223n) % 4294967296n
        expect(scattered(state)).toEqual({ state: Number(next), share: Number(next) / 2 ** 32 })
      }),
    )
  })

  test('begins after 0 with the increment alone', () => {
    expect(scattered(0)).toEqual({ state: 1013904223, share: 1013904223 / 4294967296 })
  })
})

describe('ring plans', () => {
  // By hand: the outer ring holds as many equal wires as fit round a bundle of fill factor 0.78; the rest make the inner rings.
  test.each([
    [1, []],
    [2, [[2]]],
    [3, [[3], [1, 2]]],
    [4, [[1, 3], [2, 2], [4]]],
    [5, [[1, 4], [2, 3], [5]]],
    [6, [[1, 5], [2, 4], [6]]],
    [
      7,
      [
        [2, 5],
        [3, 4],
        [1, 6],
      ],
    ],
    [
      8,
      [
        [2, 6],
        [3, 5],
        [1, 7],
      ],
    ],
    [
      12,
      [
        [4, 8],
        [5, 7],
        [3, 9],
      ],
    ],
    [
      15,
      [
        [5, 10],
        [1, 5, 9],
        [4, 11],
      ],
    ],
    [
      20,
      [
        [1, 7, 12],
        [2, 7, 11],
        [1, 6, 13],
      ],
    ],
    [
      33,
      [
        [1, 5, 10, 17],
        [1, 5, 11, 16],
        [5, 10, 18],
      ],
    ],
  ])('%i wires', (count, plans) => {
    expect(ringPlans(count)).toEqual(plans)
  })

  test('no plan loses a wire, nor has an empty ring', () => {
    for (let count = 2; count <= 80; count++) {
      const plans = ringPlans(count)
      expect(plans.length).toBe(Math.min(3, count - 1))
      for (const plan of plans) {
        expect(plan.reduce((sum, members) => sum + members, 0)).toBe(count)
        expect(Math.min(...plan)).toBeGreaterThan(0)
      }
    }
  })
})

describe('a start in rings', () => {
  /** A ring's wires, its index from the inside, its radius. */
  type Ring = readonly [members: readonly number[], ring: number, ringRadius: number]

  /** Expects each wire in the middle of its sector of the ring, jittered by at most 1/40 of its radius. */
  function expectRings(
    radii: readonly number[],
    plan: readonly number[],
    order: readonly number[],
    rings: readonly Ring[],
    bundle: number,
    state: number,
  ): void {
    const problem = packingProblem(Float64Array.from(radii))
    const after = startInRings(problem, plan, order, state)
    const { shares, state: expected } = draws(state, 2 * radii.length)
    expect(after).toBe(expected)
    let drawn = 0
    for (const [members, ring, ringRadius] of rings) {
      const girth = members.reduce((sum, wire) => sum + (radii[wire] ?? 0), 0)
      members.forEach((wire, at) => {
        const before = members.slice(0, at).reduce((sum, other) => sum + (radii[other] ?? 0), 0)
        const radius = radii[wire] ?? 0
        const angle = ring + (Math.PI * (2 * before + radius)) / girth
        const onRing = [ringRadius * Math.cos(angle), ringRadius * Math.sin(angle)] as const
        for (const [axis, value] of onRing.entries()) {
          const got = problem.place[axis * radii.length + wire] ?? 0
          expect(Math.abs(got - value)).toBeLessThanOrEqual(radius / 40 + 1e-12)
          expect(got).toBeCloseTo(value + 0.05 * radius * ((shares[drawn++] ?? 0) - 0.5), 12)
        }
      })
    }
    expect(problem.place[2 * radii.length]).toBeCloseTo(bundle, 12)
  }

  test('six round one: the ring is as wide as its girth asks', () => {
    expectRings(
      [1, 1, 1, 1, 1, 1, 1],
      [1, 6],
      [0, 1, 2, 3, 4, 5, 6],
      [
        [[0], 0, 0],
        [[1, 2, 3, 4, 5, 6], 1, 6 / Math.PI],
      ],
      6 / Math.PI + 1,
      1,
    )
  })

  test('unlike wires in another order: a ring stands off the thickest within by nine tenths of its own thickest', () => {
    expectRings(
      [2, 1, 0.5, 1.5, 0.75],
      [2, 3],
      [3, 1, 4, 0, 2],
      [
        [[3, 1], 0, 1.35],
        [[4, 0, 2], 1, 1.35 + 1.5 + 1.8],
      ],
      1.35 + 1.5 + 1.8 + 2,
      4_000_000_000,
    )
  })

  test('a single wire lies in the middle only in the first ring plan', () => {
    expectRings(
      [1, 0.5, 0.5],
      [2, 1],
      [1, 2, 0],
      [
        [[1, 2], 0, 0.45],
        [[0], 1, 0.95 + 0.9],
      ],
      0.95 + 0.9 + 1,
      77,
    )
  })
})

describe('wires dropped anywhere', () => {
  test('one goes to an even chance of the section it has room in; the others stay', () => {
    fc.assert(
      fc.property(anyState, fc.double({ min: 0.6, max: 4, noNaN: true }), (state, bundle) => {
        const problem = packingProblem(Float64Array.of(1, 0.5, 0.25))
        problem.place.fill(7)
        const { shares, state: expected } = draws(state, 2)
        expect(dropAnywhere(problem, 1, bundle, state)).toBe(expected)
        const [turn = 0, area = 0] = shares
        const x = problem.place[1] ?? 0
        const y = problem.place[4] ?? 0
        expect((x * x + y * y) / (bundle - 0.5) ** 2).toBeCloseTo(area, 12)
        expect(x).toBeCloseTo(Math.hypot(x, y) * Math.cos(2 * Math.PI * turn), 12)
        expect(y).toBeCloseTo(Math.hypot(x, y) * Math.sin(2 * Math.PI * turn), 12)
        expect([0, 2, 3, 5, 6].map((at) => problem.place[at])).toEqual([7, 7, 7, 7, 7])
      }),
    )
  })

  test('one too thick for the bundle goes to the middle', () => {
    const problem = packingProblem(Float64Array.of(1, 0.5))
    problem.place.fill(7)
    dropAnywhere(problem, 0, 0.9, 5)
    expect([problem.place[0], problem.place[2]].map((value) => Math.abs(value ?? 9))).toEqual([0, 0])
  })

  test('all are scattered one by one over a bundle that they fill to 0.78', () => {
    for (const radii of [[0.1], [1, 0.5, 0.5, 0.25], [3, 3, 3, 3, 3, 2]]) {
      const problem = packingProblem(Float64Array.from(radii))
      const bundle = Math.sqrt(radii.reduce((sum, radius) => sum + radius * radius, 0) / 0.78)
      const alone = packingProblem(Float64Array.from(radii))
      let state = 12345
      for (const wire of radii.keys()) state = dropAnywhere(alone, wire, bundle, state)
      expect(startScattered(problem, 12345)).toBe(state)
      alone.place[2 * radii.length] = bundle
      for (const [at, value] of alone.place.entries()) expect(problem.place[at]).toBeCloseTo(value, 12)
    }
  })
})
