import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { packFew } from './packFew.ts'

const pack = (...radii: readonly number[]): readonly number[] => [...packFew(Float64Array.from(radii))]
const radius = (least: number) => fc.double({ min: least, max: 1, noNaN: true })

/** Gap between two of three wires. */
function gap(place: readonly number[], radii: readonly number[], one: number, other: number): number {
  const at = (index: number): number => place[index] ?? 0
  return Math.hypot(at(one) - at(other), at(3 + one) - at(3 + other)) - (radii[one] ?? 0) - (radii[other] ?? 0)
}
/** Distance of a wire of three from the bundle's edge. */
const within = (place: readonly number[], radii: readonly number[], wire: number): number =>
  (place[6] ?? 0) - Math.hypot(place[wire] ?? 0, place[3 + wire] ?? 0) - (radii[wire] ?? 0)

test('one wire is the bundle', () => {
  expect(pack(1.5)).toEqual([0, 0, 1.5])
})

test('two lie side by side, each against the edge', () => {
  expect(pack(1, 0.25)).toEqual([-0.25, 1, 0, 0, 1.25])
})

describe('three wires', () => {
  test('three equal wires form a triangle around the middle', () => {
    const place = pack(1, 1, 1)
    const out = 2 / Math.sqrt(3)
    const expected = [-out, out / 2, out / 2, 0, -1, 1, 1 + out]
    for (const [at, value] of expected.entries()) expect(place[at]).toBeCloseTo(value, 14)
  })

  test('by Pythagoras: 3, 2 and 1 touch at a right angle, within the circle of the two', () => {
    const place = pack(3, 2, 1)
    const expected = [-2, 3, -2 + 16 / 5, 0, 0, 12 / 5, 5]
    for (const [at, value] of expected.entries()) expect(place[at]).toBeCloseTo(value, 14)
  })

  test('a thin third touches both in the gap beside them, and they alone make the bundle', () => {
    fc.assert(
      fc.property(radius(0.2), radius(0.01), (r2, share) => {
        const radii = [1, r2, share * ((r2 * (1 + r2)) / (1 + r2 + r2 * r2)) * 0.999]
        const place = pack(...radii)
        expect(place[6]).toBe(1 + r2)
        expect([place[0], place[1], place[3], place[4]]).toEqual([-r2, 1, 0, 0])
        expect(Math.abs(gap(place, radii, 0, 2))).toBeLessThan(1e-13)
        expect(Math.abs(gap(place, radii, 1, 2))).toBeLessThan(1e-13)
        expect(within(place, radii, 2)).toBeGreaterThan(0)
      }),
    )
  })

  test('a thick third touches both and all three touch the edge', () => {
    fc.assert(
      fc.property(radius(0.4), radius(0), (r2, share) => {
        const inGap = (r2 * (1 + r2)) / (1 + r2 + r2 * r2)
        fc.pre(inGap < r2)
        const radii = [1, r2, inGap + share * (r2 - inGap) + 1e-4]
        const place = pack(...radii)
        expect(place[6]).toBeGreaterThan(1 + r2)
        for (const [one, other] of [
          [0, 1],
          [0, 2],
          [1, 2],
        ] as const)
          expect(Math.abs(gap(place, radii, one, other))).toBeLessThan(1e-10)
        for (const wire of [0, 1, 2]) expect(Math.abs(within(place, radii, wire))).toBeLessThan(1e-10)
        expect([place[3], Math.sign(place[0] ?? 0), Math.sign(place[4] ?? 0), Math.sign(place[5] ?? 0)]).toEqual([0, -1, -1, 1])
      }),
    )
  })

  test('a third wire up to two thirds of two equal ones fits in their gap; at two thirds it touches the edge', () => {
    const place = pack(3, 3, 2)
    expect(place.slice(0, 2)).toEqual([-3, 3])
    expect(place.slice(3, 5)).toEqual([0, 0])
    expect([place[2], place[5], place[6]]).toEqual([0, 4, 6])
    expect(pack(3, 3, 2.001)[6]).toBeGreaterThan(6.0000001)
    expect(pack(3, 3, 1.999)[6]).toBe(6)
  })
})
