import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { cutLengthMm } from './cutLength.ts'
import { recoveredWallMm } from './recoveredWall.ts'
import type { Sleeve } from './sleeve.ts'
import { stackLayers } from './stackLayers.ts'
import { steppedSleeve } from './steppedSleeve.ts'

const lined: Sleeve = Object.freeze({
  material: 'polyolefin-adhesive-lined',
  suppliedInsideMm: 9,
  recoveredInsideMm: 3,
  recoveredWallMm: 1.4,
  longitudinalChange: { low: -0.15, high: 0.05 },
  adhesiveWallMm: 0.4,
})
const plain: Sleeve = Object.freeze({
  material: 'polyolefin',
  suppliedInsideMm: 6.4,
  recoveredInsideMm: 3.2,
  recoveredWallMm: 0.6,
  longitudinalChange: { low: -0.1, high: 0 },
})

describe('cutLengthMm', () => {
  test('physics of the change of length: what is cut comes out at joint and both overlaps', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 500, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        fc.double({ min: -0.9, max: 0.5, noNaN: true }),
        (jointMm, overlapEachSideMm, longitudinalChange) => {
          const cut = cutLengthMm({ jointMm, overlapEachSideMm, longitudinalChange })
          expect(cut * (1 + longitudinalChange)).toBeCloseTo(jointMm + 2 * overlapEachSideMm, 9)
        },
      ),
    )
  })

  test('of a range the low end counts', () => {
    const i = { jointMm: 12, overlapEachSideMm: 12 }
    expect(cutLengthMm({ ...i, longitudinalChange: { low: -0.1, high: 0.4 } })).toBe(cutLengthMm({ ...i, longitudinalChange: -0.1 }))
    expect(cutLengthMm({ ...i, longitudinalChange: 0 })).toBe(36)
    expect(cutLengthMm({ jointMm: 0, overlapEachSideMm: 0, longitudinalChange: -0.1 })).toBe(0)
  })

  test.each([
    [{ jointMm: -1 }, 'jointMm'],
    [{ overlapEachSideMm: Number.NaN }, 'overlapEachSideMm'],
    [{ longitudinalChange: -1 }, 'longitudinalChange'],
    [{ longitudinalChange: Number.POSITIVE_INFINITY }, 'longitudinalChange'],
    [{ longitudinalChange: null }, 'longitudinalChange'],
    [{ longitudinalChange: { low: -1, high: 0 } }, 'longitudinalChange.low'],
    [{ longitudinalChange: { low: 0, high: Number.NaN } }, 'longitudinalChange.high'],
    [{ longitudinalChange: { low: 0.1, high: 0 } }, 'longitudinalChange.low'],
  ])('%o is refused by name', (change, parameter) => {
    const i = { jointMm: 1, overlapEachSideMm: 1, longitudinalChange: 0, ...change } as Parameters<typeof cutLengthMm>[0]
    expect(() => cutLengthMm(i)).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
  })
})

describe('stackLayers', () => {
  test('inside out: each layer goes onto the one beneath, and covers all overlaps beneath and its own', () => {
    const stack = stackLayers({ coreMm: 4, jointMm: 20, layers: [Object.freeze({ ...plain, overlapEachSideMm: 6 }), { ...lined, overlapEachSideMm: 5 }] })
    const first = recoveredWallMm({ recoveredWallMm: 0.6, recoveredInsideMm: 3.2, ontoMm: 4 })
    const second = recoveredWallMm({ recoveredWallMm: 1.4, recoveredInsideMm: 3, ontoMm: 4 + 2 * first })
    expect(stack.layers).toEqual([
      { ontoMm: 4, wallMm: first, outsideMm: 4 + 2 * first, cutLengthMm: (20 + 2 * 6) / 0.9, grips: true },
      { ontoMm: 4 + 2 * first, wallMm: second, outsideMm: 4 + 2 * first + 2 * second, cutLengthMm: (20 + 2 * 6 + 2 * 5) / 0.85, grips: true },
    ])
    expect(stack.outsideMm).toBe(stack.layers[1]?.outsideMm)
  })

  test('a layer that does not grip has its recovered inside and wall, and the next layer covers that', () => {
    const stack = stackLayers({
      coreMm: 2,
      jointMm: 20,
      layers: [
        { ...lined, overlapEachSideMm: 5 },
        { ...plain, overlapEachSideMm: 5 },
      ],
    })
    expect(stack.layers[0]).toMatchObject({ ontoMm: 2, wallMm: 1.4, outsideMm: 5.8, grips: false })
    expect(stack.layers[1]).toMatchObject({ ontoMm: 5.8, grips: true })
  })

  test('no layer leaves the core', () => {
    expect(stackLayers({ coreMm: 2, jointMm: 20, layers: [] })).toEqual({ outsideMm: 2, layers: [] })
  })

  test.each([
    [{ coreMm: 0 }, 'coreMm'],
    [{ jointMm: Number.NaN }, 'jointMm'],
    [{ layers: undefined }, 'layers'],
    [{ layers: [lined] }, 'layers.0.overlapEachSideMm'],
    [
      {
        layers: [
          { ...plain, overlapEachSideMm: 1 },
          { ...lined, overlapEachSideMm: 1, recoveredInsideMm: 9 },
        ],
      },
      'layers.1.recoveredInsideMm',
    ],
  ])('%o is refused by path', (change, parameter) => {
    const i = { coreMm: 2, jointMm: 1, layers: [], ...change } as unknown as Parameters<typeof stackLayers>[0]
    expect(() => stackLayers(i)).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
  })
})

describe('steppedSleeve', () => {
  const steps = [
    { diameterMm: 2.5, lengthMm: 12 },
    { diameterMm: 4.4, lengthMm: 16 },
    { diameterMm: 3.1, lengthMm: 12 },
  ] as const

  test('each step by itself, the largest outside, the length to cut from the shorter to the longer', () => {
    const over = steppedSleeve({ sleeve: lined, steps })
    const barrel = recoveredWallMm({ recoveredWallMm: 1.4, recoveredInsideMm: 3, ontoMm: 4.4 })
    expect(over.steps[0]).toEqual({ wallMm: 1.4, outsideMm: 5.8, grips: false })
    expect(over.steps[1]).toEqual({ wallMm: barrel, outsideMm: 4.4 + 2 * barrel, grips: true })
    expect(over.steps[2]?.grips).toBe(true)
    expect(over.outsideMm).toBe(4.4 + 2 * barrel)
    expect(over.cutLengthMm).toEqual({ low: 40 / 1.05, high: 40 / 0.85 })
  })

  test('one step is the same as one layer', () => {
    const layer = stackLayers({ coreMm: 4, jointMm: 20, layers: [{ ...lined, overlapEachSideMm: 6 }] })
    const over = steppedSleeve({ sleeve: lined, steps: [{ diameterMm: 4, lengthMm: 32 }] })
    expect(over.outsideMm).toBe(layer.outsideMm)
    expect(over.cutLengthMm.high).toBe(layer.layers[0]?.cutLengthMm)
  })

  test('steps may come in any order: the outside and the length stay', () => {
    const back = steppedSleeve({ sleeve: lined, steps: [...steps].reverse() })
    const forth = steppedSleeve({ sleeve: lined, steps })
    expect(back.outsideMm).toBe(forth.outsideMm)
    expect(back.cutLengthMm).toEqual(forth.cutLengthMm)
  })

  test.each([
    [{ steps: [] }, 'steps'],
    [{ steps: undefined }, 'steps'],
    [{ steps: [{ diameterMm: 0, lengthMm: 1 }] }, 'steps.0.diameterMm'],
    [{ steps: [steps[0], { diameterMm: 1, lengthMm: -1 }] }, 'steps.1.lengthMm'],
    [{ sleeve: undefined }, 'sleeve'],
    [{ sleeve: { ...lined, suppliedInsideMm: Number.NaN } }, 'sleeve.suppliedInsideMm'],
  ])('%o is refused by path', (change, parameter) => {
    const i = { sleeve: lined, steps, ...change } as unknown as Parameters<typeof steppedSleeve>[0]
    expect(() => steppedSleeve(i)).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
  })
})
