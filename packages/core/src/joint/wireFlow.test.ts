import { describe, expect, test } from 'vitest'
import { heatFlowWPerM } from '../heat/index.ts'
import { surfaceRayleigh } from '../heat/inner.ts'
import { type JointModel, jointModel } from './jointModel.ts'
import type { JointSite } from './jointSite.ts'
import { farWire, morganJumps, slopeStepK, surfaceLoss, wireEnd } from './wireFlow.ts'

const wire = { areaMm2: 1, conductorDiameterMm: 1.28, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17 } as const
const model = (change: Partial<JointSite> = {}, side: Partial<JointSite['conductors'][0]> = {}): JointModel =>
  jointModel({ currentA: 12, ambientC: 30, conductors: [{ ...wire, ...side }, wire], ...change })

/** int (q - I^2 R') dT over the conductor's temperature, by the trapezoidal rule in fine steps of the surface. */
function byTrapezoids(m: JointModel, from: number, to: number): number {
  const [side] = m.sides
  const steps = 20000
  let sum = 0
  let last: { core: number; net: number } | undefined
  for (let k = 0; k <= steps; k++) {
    const ts = from + ((to - from) * k) / steps
    const loss = surfaceLoss(m, side.wire, ts)
    const core = ts + side.wire.wallMKPerW * loss
    const net = loss - m.currentA ** 2 * side.r20 * (1 + side.alpha * (core - 20))
    if (last !== undefined) sum += 0.5 * (net + last.net) * (core - last.core)
    last = { core, net }
  }
  return sum
}

describe('the long wire', () => {
  test('its surface sheds what the checked heat flow says', () => {
    for (const correlation of ['churchill-chu', 'morgan'] as const) {
      const m = model({ correlation, pressurePa: 90000 }, { emissivity: 0.4 })
      const want = heatFlowWPerM({ surfaceC: 80, ambientC: 30, diameterMm: 2.48, emissivity: 0.4, pressurePa: 90000, correlation }).totalWPerM
      expect(Math.abs(surfaceLoss(m, m.sides[0].wire, 80) / want - 1)).toBeLessThan(1e-14)
    }
  })

  test('far away it loses what it makes', () => {
    const m = model()
    const far = farWire(m, m.sides[0])
    expect(Math.abs(far.lossWPerM / (144 * 0.017241 * (1 + 0.00393 * (far.coreC - 20))) - 1)).toBeLessThan(1e-12)
    expect(far.coreC).toBeCloseTo(far.surfaceC + m.sides[0].wire.wallMKPerW * far.lossWPerM, 12)
    expect(far.jumpsC).toEqual([])
  })

  test.each([
    ['Churchill-Chu', {}, {}],
    ['Morgan, across its jump', { correlation: 'morgan' as const }, { insulationThicknessMm: 1 }],
    ['bare', {}, { insulationThicknessMm: 0 }],
  ])('%s: the flow is the first integral, above and below the far temperature', (_name, change, side) => {
    const m = model(change, side)
    const far = farWire(m, m.sides[0])
    for (const ts of [far.surfaceC + 150, far.surfaceC + 20, far.surfaceC - 10, m.ambientC + 0.5]) {
      const end = wireEnd(m, m.sides[0], far, ts)
      const want = Math.sqrt(2 * m.sides[0].kA * byTrapezoids(m, far.surfaceC, ts))
      expect(Math.abs(end.flowW / (ts > far.surfaceC ? want : -want) - 1)).toBeLessThan(1e-6)
      expect(end.coreC).toBeCloseTo(ts + m.sides[0].wire.wallMKPerW * surfaceLoss(m, m.sides[0].wire, ts), 12)
    }
  })

  test('the Morgan case does cross a jump', () => {
    const m = model({ correlation: 'morgan' }, { insulationThicknessMm: 1 })
    const far = farWire(m, m.sides[0])
    expect(far.jumpsC.some((ts) => ts > far.surfaceC && ts < far.surfaceC + 150)).toBe(true)
    expect(far.jumpsC.some((ts) => ts < far.surfaceC)).toBe(true)
  })

  test('its slopes are those of the flow and of the conductor, at the far temperature too', () => {
    const m = model()
    const far = farWire(m, m.sides[0])
    const at = (ts: number) => wireEnd(m, m.sides[0], far, ts)
    for (const [off, tolerance] of [
      [100, 1e-4],
      [5, 1e-4],
      [-5, 1e-4],
      [0.001, 1e-3],
      [0, 1e-3],
    ] as const) {
      const ts = far.surfaceC + off
      const above = at(ts + 0.01)
      const below = at(ts - 0.01)
      expect(Math.abs(at(ts).flowWPerK / ((above.flowW - below.flowW) / (above.coreC - below.coreC)) - 1)).toBeLessThan(tolerance)
      expect(Math.abs(at(ts).corePerSurface / ((above.coreC - below.coreC) / 0.02) - 1)).toBeLessThan(1e-4)
    }
    expect(at(far.surfaceC).flowW).toBe(0)
    expect(slopeStepK(0)).toBe(1e-5)
    expect(slopeStepK(99)).toBeCloseTo(1e-3, 15)
  })
})

describe('jumps of Morgan', () => {
  const Ra = (m: JointModel, ts: number): number => surfaceRayleigh(ts, m.ambientC, m.sides[0].wire.outsideM, m.pressurePa)

  test('stand where the Rayleigh number passes an edge, rising and falling, in order', () => {
    const m = model({ correlation: 'morgan' }, { insulationThicknessMm: 1 })
    const found = morganJumps(m, m.sides[0].wire)
    expect(found).toEqual([...found].sort((a, b) => a - b))
    expect(found.map((ts) => Number(Ra(m, ts).toPrecision(6)))).toEqual([0.01, 100, 100])
    expect(Ra(m, (found[1] ?? 0) + 1)).toBeGreaterThan(100)
    expect(Ra(m, (found[2] ?? 0) + 1)).toBeLessThan(100)
  })

  test('a thin wire never reaches the second edge, a thick one goes further', () => {
    const thin = model({ correlation: 'morgan' }, { areaMm2: 0.1, conductorDiameterMm: 0.36, insulationThicknessMm: 0.2 })
    expect(morganJumps(thin, thin.sides[0].wire).map((ts) => Number(Ra(thin, ts).toPrecision(6)))).toEqual([0.01])
    const thick = model({ correlation: 'morgan' }, { areaMm2: 95, conductorDiameterMm: 12.6, insulationThicknessMm: 1.6 })
    expect(morganJumps(thick, thick.sides[0].wire).map((ts) => Number(Ra(thick, ts).toPrecision(6)))).toEqual([0.01, 100, 10000, 10000])
  })
})
