import { describe, expect, test } from 'vitest'
import { lapCurrents } from './lapCurrents.ts'
import { lapJointResistanceOhm } from './lapJointResistance.ts'
import { lapNetworkResistanceOhm } from './lapNetworkResistance.ts'

// Independent model: loop equations of a resistor ladder, without the closed form. Rungs are at the nodes, half a rung at each end of a wetted stretch.
type Stretch = { readonly lengthMm: number; readonly interfaceSPerM: number }

function ladder(r1: number, r2: number, stretches: readonly Stretch[], perStretch: number): { readonly ohm: number; readonly first: Float64Array } {
  const rungs: number[] = []
  const lengths: number[] = [] // between rungs
  let lead = 0 // before the first rung only conductor 1 carries, behind the last only conductor 2
  let pending = 0
  for (const { lengthMm, interfaceSPerM } of stretches) {
    const l = lengthMm / 1000
    if (interfaceSPerM === 0) {
      if (rungs.length === 0) lead += l
      else pending += l
      continue
    }
    const h = l / perStretch
    for (let k = 0; k <= perStretch; k++) {
      const rung = interfaceSPerM * h * (k === 0 || k === perStretch ? 0.5 : 1)
      if (k === 0 && rungs.length > 0 && pending === 0) rungs[rungs.length - 1] = (rungs.at(-1) ?? 0) + rung
      else {
        if (rungs.length > 0) lengths.push(k === 0 ? pending : h)
        rungs.push(rung)
      }
      if (k === 0) pending = 0
    }
  }
  const n = lengths.length
  // Loop k: r1 h I_k - r2 h (1 - I_k) + (I_k - I_{k+1})/G_{k+1} - (I_{k-1} - I_k)/G_k = 0, with I_{-1} = 1 and I_n = 0.
  const c = new Float64Array(n)
  const first = new Float64Array(n)
  for (let k = 0; k < n; k++) {
    const h = lengths[k] ?? 0
    const left = 1 / (rungs[k] ?? 0)
    const right = 1 / (rungs[k + 1] ?? 0)
    const pivot = (r1 + r2) * h + left + right - (k === 0 ? 0 : left * (c[k - 1] ?? 0))
    c[k] = right / pivot
    first[k] = (r2 * h + left * (k === 0 ? 1 : (first[k - 1] ?? 0))) / pivot
  }
  for (let k = n - 2; k >= 0; k--) first[k] = (first[k] ?? 0) + (c[k] ?? 0) * (first[k + 1] ?? 0)
  let ohm = r1 * lead + r2 * pending + (first[n - 1] ?? 0) / (rungs[n] ?? 0)
  for (let k = 0; k < n; k++) ohm += r1 * (lengths[k] ?? 0) * (first[k] ?? 0)
  return { ohm, first }
}

/** Richardson extrapolation of two grids: the ladder's error is quadratic in its step; too fine a grid loses digits in the elimination. */
function extrapolated(r1: number, r2: number, stretches: readonly Stretch[], perStretch: number): number {
  const coarse = ladder(r1, r2, stretches, perStretch).ohm
  return (4 * ladder(r1, r2, stretches, 2 * perStretch).ohm - coarse) / 3
}

const relative = (got: number, want: number): number => Math.abs(got / want - 1)

describe('overlap against a ladder of resistors solved by Kirchhoff loops', () => {
  test.each([
    [0.0172, 0.0172, 1e5, 10],
    [0.0172, 0.0172, 1e7, 10],
    [0.0172, 1e-9, 2e5, 4],
    [0.0231, 0.0049, 3e6, 6],
    [0.0049, 0.0231, 3e6, 6],
    [0.35, 0.01, 5e4, 2],
    [0.02, 0.02, 40, 25],
  ])('r1 %d, r2 %d ohm/m, g %d S/m, %d mm', (r1, r2, interfaceSPerM, overlapMm) => {
    const got = lapJointResistanceOhm(Object.freeze({ overlapMm, conductorsOhmPerM: Object.freeze([r1, r2] as const), interfaceSPerM }))
    expect(relative(got, extrapolated(r1, r2, [{ lengthMm: overlapMm, interfaceSPerM }], 1000))).toBeLessThan(1e-9)
  })

  test('the share in the first conductor is the current between two rungs', () => {
    const { first } = ladder(0.0231, 0.0049, [{ lengthMm: 6, interfaceSPerM: 3e6 }], 2000)
    const atMm = [0.0015, 1.5015, 3.0015, 5.9985]
    const got = lapCurrents({ overlapMm: 6, conductorsOhmPerM: [0.0231, 0.0049], interfaceSPerM: 3e6, atMm })
    for (const [k, xMm] of atMm.entries()) expect(Math.abs((got[k]?.firstShare ?? 0) - (first[Math.floor((xMm / 6) * 2000)] ?? 0))).toBeLessThan(1e-6)
  })

  const wet = (lengthMm: number, interfaceSPerM: number): Stretch => ({ lengthMm, interfaceSPerM })
  const dry = (lengthMm: number): Stretch => ({ lengthMm, interfaceSPerM: 0 })
  test.each<[string, readonly Stretch[]]>([
    ['a dry middle', [wet(4, 1e6), dry(2), wet(4, 1e6)]],
    ['a dry start', [dry(3), wet(4, 2e6)]],
    ['a dry end', [wet(4, 2e6), dry(3)]],
    ['dry ends, two pieces each', [dry(1), dry(2), wet(4, 2e6), dry(1), dry(0.5)]],
    ['unlike neighbours', [wet(2, 1e7), wet(3, 1e5), wet(2, 4e6)]],
    ['interrupted and unlike', [dry(0.5), wet(1, 3e6), dry(0.7), dry(0.2), wet(2, 2e5), wet(0.5, 1e7), dry(1.5), wet(1, 1e6), dry(2)]],
    ['points of wetting', [wet(0.01, 1e6), dry(5), wet(0.01, 1e6)]],
  ])('partly wetted: %s', (_name, stretches) => {
    const got = lapNetworkResistanceOhm(Object.freeze({ conductorsOhmPerM: Object.freeze([0.0231, 0.0049] as const), stretches: Object.freeze(stretches) }))
    expect(relative(got, extrapolated(0.0231, 0.0049, stretches, 200))).toBeLessThan(1e-9)
  })
})
