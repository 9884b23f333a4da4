import { describe, expect, test } from 'vitest'
import { edgeWithin, newEdgeStep, placeOf, shareAbove } from './edgeStep.ts'
import { firstStage } from './moments.ts'
import type { WireModes } from './wireModes.ts'

const none = new Float64Array(1)
/** One mode that decays at 3/s and is driven by the joint, of which the edge shows twice its value. */
const modes: WireModes = {
  count: 1,
  ratesPerS: Float64Array.of(3),
  coupling: Float64Array.of(1.2),
  drive: Float64Array.of(0.4),
  admittanceWPerK: 0,
  drivenW: 0,
  jointStoreJPerK: 0,
  edge: Float64Array.of(2),
  edgeJoint: 0,
  edgeOffsetK: 0.5,
  loss: none,
  lossJointWPerK: 0,
  lossOffsetW: 0,
  store: none,
  base: null,
}

/** The same by small steps of Euler's rule, from 7, the joint's rise being 10 + 20 x - 5 x^2. */
function byEuler(x: number, durationS: number): number {
  const n = 200_000
  let y = 7
  for (let k = 0; k < n; k++) {
    const at = ((k + 0.5) * x) / n
    y += ((x * durationS) / n) * (-3 * y + 1.2 * (10 + 20 * at - 5 * at * at) + 0.4)
  }
  return 0.5 + 2 * y
}

function step(durationS: number) {
  const one = newEdgeStep(modes, 13.2, Float64Array.of(7))
  one.durationS = durationS
  one.start = 10
  one.first = 10 + 20 * firstStage - 5 * firstStage ** 2
  one.last = 25
  return one
}

describe('the edge within a step', () => {
  test('near the joint its rise and slope hold their share of the joint', () => {
    const far = step(0.8)
    const near = { ...step(0.8), modes: { ...modes, edgeJoint: 0.3 } }
    for (const x of [0, 0.4, 1]) {
      edgeWithin(far, x)
      edgeWithin(near, x)
      expect((near.found[0] ?? 0) - (far.found[0] ?? 0)).toBeCloseTo(0.3 * (10 + 20 * x - 5 * x * x), 12)
      expect((near.found[1] ?? 0) - (far.found[1] ?? 0)).toBeCloseTo(0.3 * (20 - 10 * x), 12)
    }
  })

  test.each([0.25, 0.6, 1])('its rise and slope at %s of it', (x) => {
    const one = step(0.8)
    edgeWithin(one, x)
    expect(one.found[0]).toBeCloseTo(byEuler(x, 0.8), 4)
    const h = 1e-4
    edgeWithin(one, x - h)
    const before = one.found[0] ?? 0
    edgeWithin(one, x)
    const slope = one.found[1] ?? 0
    edgeWithin(one, Math.min(1, x + h))
    const after = one.found[0] ?? 0
    expect(slope).toBeCloseTo((after - before) / (x === 1 ? h : 2 * h), x === 1 ? 1 : 4)
  })

  test('on the joint it is the joint', () => {
    const one = newEdgeStep({ ...modes, edge: Float64Array.of(0), edgeJoint: 1, edgeOffsetK: 0 }, 13.2, Float64Array.of(7))
    Object.assign(one, { durationS: 0.8, start: 10, first: 10 + 20 * firstStage - 5 * firstStage ** 2, last: 25 })
    edgeWithin(one, 0.5)
    expect(one.found[0]).toBeCloseTo(18.75, 12)
    expect(one.found[1]).toBeCloseTo(15, 12)
  })

  const ends = (one: ReturnType<typeof step>): readonly number[] => {
    edgeWithin(one, 0)
    const [rise, slope] = one.found
    edgeWithin(one, 1)
    return [rise ?? 0, slope ?? 0, one.found[0] ?? 0, one.found[1] ?? 0]
  }

  test('where it turns and where it passes a value, to a millionth of the step', () => {
    const one = step(0.8)
    const [rise = 0, slope = 0, last = 0, slopeLast = 0] = ends(one)
    expect(slope).toBeLessThan(0)
    expect(slopeLast).toBeGreaterThan(0)
    const turn = placeOf(one, 1, 0, 0, slope, 1, slopeLast)
    edgeWithin(one, turn)
    expect(one.found[1]).toBeCloseTo(0, 4)
    const low = one.found[0] ?? 0
    expect(low).toBeLessThan(Math.min(rise, last))
    const value = (low + rise) / 2
    const place = placeOf(one, 0, value, 0, rise, turn, low)
    edgeWithin(one, place)
    expect(one.found[0]).toBeCloseTo(value, 5)
  })

  test('a place is found to the last digits in a dozen looks, by wires slow and quick, early and late in the step', () => {
    let cases = 0
    let looks = 0
    for (const rate of [0.5, 3, 30, 300, 3000]) {
      for (const [start, b, c] of [
        [10, 20, -5],
        [0, 300, -250],
        [100, -150, 60],
      ] as const) {
        let asked = 0
        const counted: WireModes = {
          ...modes,
          ratesPerS: Float64Array.of(rate),
          coupling: Float64Array.of(0.4 * rate),
          get edge() {
            asked++
            return Float64Array.of(2)
          },
        }
        const one = newEdgeStep(counted, 0, Float64Array.of(7))
        Object.assign(one, { durationS: 0.8, start, first: start + b * firstStage + c * firstStage ** 2, last: start + b + c })
        const [rise = 0, , last = 0] = ends(one)
        for (const share of [0.001, 0.1, 0.5, 0.9, 0.999]) {
          asked = 0
          const value = rise + (last - rise) * share
          const place = placeOf(one, 0, value, 0, rise, 1, last)
          cases++
          looks += asked
          expect(asked).toBeLessThanOrEqual(20)
          edgeWithin(one, place)
          expect(Math.abs(((one.found[0] ?? 0) - value) / (one.found[1] ?? 0))).toBeLessThan(1e-12)
        }
      }
    }
    expect(looks / cases).toBeLessThan(12.5)
  })

  test('the share above its limit, from either side', () => {
    const one = step(0.8)
    const [rise = 0, slope = 0, last = 0, slopeLast = 0] = ends(one)
    const turn = placeOf(one, 1, 0, 0, slope, 1, slopeLast)
    edgeWithin(one, turn)
    const low = one.found[0] ?? 0
    const falling = shareAbove(one, 0, rise, turn, low)
    edgeWithin(one, falling)
    expect(one.found[0]).toBeCloseTo(13.2, 5)
    const rising = shareAbove(one, turn, low, 1, last)
    edgeWithin(one, 1 - rising)
    expect(one.found[0]).toBeCloseTo(13.2, 5)
    expect(shareAbove(one, 0.2, 13.3, 0.7, 14)).toBeCloseTo(0.5, 12)
    expect(shareAbove(one, 0.2, 11, 0.7, 13.2)).toBe(0)
  })
})
