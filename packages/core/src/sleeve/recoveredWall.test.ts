import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { recoveredWallMm } from './recoveredWall.ts'

const mm = fc.double({ min: 0.05, max: 100, noNaN: true })
const area = (insideMm: number, wallMm: number) => (insideMm + wallMm) * wallMm

describe('recoveredWallMm', () => {
  test('physics of the kept wall: onto its own recovered inside it has its recovered wall', () => {
    fc.assert(
      fc.property(mm, mm, (wall, inside) => {
        const got = recoveredWallMm({ recoveredWallMm: wall, recoveredInsideMm: inside, ontoMm: inside })
        expect(Math.abs(got - wall)).toBeLessThanOrEqual(1e-12 * wall)
      }),
    )
  })

  test('the cross-section is kept, and the wall thins as the core thickens', () => {
    fc.assert(
      fc.property(mm, mm, fc.double({ min: 1, max: 50, noNaN: true }), (wall, inside, times) => {
        const ontoMm = inside * times
        const got = recoveredWallMm({ recoveredWallMm: wall, recoveredInsideMm: inside, ontoMm })
        expect(Math.abs(area(ontoMm, got) / area(inside, wall) - 1)).toBeLessThan(1e-12)
        expect(recoveredWallMm({ recoveredWallMm: wall, recoveredInsideMm: inside, ontoMm: ontoMm * 1.1 })).toBeLessThan(got)
      }),
    )
  })

  test('by hand: 1 mm of wall on 2 mm inside, onto 4 mm: (2 + 1) 1 = (4 + w) w, w = sqrt(7) - 2', () => {
    expect(recoveredWallMm({ recoveredWallMm: 1, recoveredInsideMm: 2, ontoMm: 4 })).toBeCloseTo(Math.sqrt(7) - 2, 14)
  })

  test('a very thick core keeps its digits: the wall tends to (ID + w) w / D', () => {
    expect(recoveredWallMm({ recoveredWallMm: 1, recoveredInsideMm: 2, ontoMm: 1e9 })).toBeCloseTo(3e-9, 20)
    expect(recoveredWallMm({ recoveredWallMm: 1, recoveredInsideMm: 2, ontoMm: 1e200 }) / 3e-200).toBeCloseTo(1, 12)
  })

  test.each([
    [{ recoveredWallMm: 0 }, 'recoveredWallMm'],
    [{ recoveredWallMm: Number.NaN }, 'recoveredWallMm'],
    [{ recoveredInsideMm: -1 }, 'recoveredInsideMm'],
    [{ recoveredInsideMm: Number.POSITIVE_INFINITY }, 'recoveredInsideMm'],
    [{ ontoMm: 1.999 }, 'ontoMm'],
    [{ ontoMm: 0 }, 'ontoMm'],
    [{ ontoMm: Number.NEGATIVE_INFINITY }, 'ontoMm'],
  ])('%o is refused by name', (change, parameter) => {
    const i = { recoveredWallMm: 1, recoveredInsideMm: 2, ontoMm: 2, ...change }
    expect(() => recoveredWallMm(i)).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
  })
})
