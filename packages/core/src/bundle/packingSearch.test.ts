import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { searchPacking } from './packingSearch.ts'

const pack = (radii: readonly number[]): Float64Array => searchPacking(Float64Array.from(radii))
const bundleOf = (radii: readonly number[]): number => pack(radii)[2 * radii.length] ?? 0
const equal = (count: number): readonly number[] => Array.from({ length: count }, () => 1)

function expectPacked(radii: readonly number[], bundle: number): void {
  const got = bundleOf(radii)
  expect(got).toBeGreaterThan(bundle * (1 - 1e-12))
  expect(got).toBeLessThan(bundle * (1 + 1e-8))
}

describe('best bundles known by closed form', () => {
  const root = Math.sqrt
  test.each([
    [4, 1 + root(2)],
    [5, 1 + root(2 * (1 + 1 / root(5)))],
    [6, 3],
    [7, 3],
    [8, 1 + 1 / Math.sin(Math.PI / 7)],
  ])('%i equal wires', (count, ratio) => {
    expectPacked(equal(count), ratio)
  })

  test('wires that just fill the gaps beside two leave the bundle of the two', () => {
    expectPacked([1, 1, 2 / 3, 2 / 3], 2)
    // Descartes' circles: the next ones lie between those and the edge.
    expectPacked([1, 1, 2 / 3, 2 / 3, 1 / 3, 1 / 3, 1 / 3, 1 / 3], 2)
  })

  test('a wire that just fills the hole in the middle leaves the bundle of the others', () => {
    expectPacked([1, 1, 1, 2 / root(3) - 1], 1 + 2 / root(3))
    expectPacked([1, 1, 1, 1, 1, 1 / Math.sin(Math.PI / 5) - 1], 1 + 1 / Math.sin(Math.PI / 5))
  })
})

describe('any bundle', () => {
  const radius = fc.integer({ min: 100, max: 1000 }).map((value) => value / 1000)
  const someRadii = fc.array(radius, { minLength: 3, maxLength: 6 }).map((others) => [1, ...others.sort((one, other) => other - one)])

  test('is a real arrangement, the same for the same input, no wider than the wires in a row', () => {
    fc.assert(
      fc.property(someRadii, (radii) => {
        const place = pack(radii)
        const count = radii.length
        expect(pack(radii)).toEqual(place)
        const bundle = place[2 * count] ?? 0
        for (const [i, r1] of radii.entries()) {
          const [x, y] = [place[i] ?? 0, place[count + i] ?? 0]
          expect(Math.hypot(x, y) + r1).toBeLessThan(bundle * (1 + 1e-14))
          for (const [j, r2] of radii.slice(0, i).entries()) {
            expect(Math.hypot(x - (place[j] ?? 0), y - (place[count + j] ?? 0))).toBeGreaterThan((r1 + r2) * (1 - 1e-14))
          }
        }
        expect(bundle).toBeGreaterThan(Math.hypot(...radii))
        expect(bundle).toBeGreaterThan((1 + (radii[1] ?? 0)) * (1 - 1e-12))
        expect(bundle).toBeLessThan(radii.reduce((sum, one) => sum + one, 0))
      }),
      { numRuns: 5 },
    )
  })
})
