import { describe, expect, test } from 'vitest'
import { type JointModel, jointModel } from './jointModel.ts'
import type { JointSite } from './jointSite.ts'
import { startZone } from './sleeveZone.ts'
import { jump, spreadLoss } from './spreadJump.ts'
import { morganJumps, surfaceLoss } from './wireFlow.ts'

const wire = { areaMm2: 1, conductorDiameterMm: 1.28, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17 } as const
const sleeve = { lengthMm: 30, coreDiameterMm: 3, outsideDiameterMm: 4.6, conductivityWPerMK: 0.2 } as const
const model = (change: Partial<JointSite> = {}): JointModel => jointModel({ currentA: 10, ambientC: 25, conductors: [wire, wire], sleeve, ...change })
const nodes = (m: JointModel): number => startZone(m, m.sides[0], 50).surface.length

describe('the grid under the sleeve', () => {
  test('one node without sleeve; at least 32 steps; 40 for each length of decay; twice that by Morgan; no more than 64 lengths', () => {
    expect(nodes(model({ sleeve: null }))).toBe(1)
    expect(startZone(model({ sleeve: null }), model({ sleeve: null }).sides[0], 50).h).toBe(0)
    expect(nodes(model())).toBe(33)
    expect(nodes(model({ correlation: 'morgan' }))).toBe(65)
    const long = model({ sleeve: { ...sleeve, lengthMm: 400 } })
    const zone = startZone(long, long.sides[0], 50)
    // Loss per kelvin of the sleeve's conductor, less the slope of its own heating, gives gamma.
    const way = sleeveOf(long)
    const ts = zone.far.surfaceC + 50
    const lossPerK = (surfaceLoss(long, way, ts + 0.01) - surfaceLoss(long, way, ts - 0.01)) / 0.02
    const decay = Math.sqrt((lossPerK / (1 + way.wallMKPerW * lossPerK) - 100 * 0.017241 * 0.00393) / 391e-6)
    expect(zone.surface.length - 1).toBe(Math.ceil(40 * decay * 0.2))
    expect(zone.h).toBeCloseTo(0.2 / (zone.surface.length - 1), 15)
    const endless = model({ sleeve: { ...sleeve, lengthMm: 1e7 } })
    expect(nodes(endless)).toBe(64 * 40 + 1)
    expect(startZone(endless, endless.sides[0], 50).h * 64 * 40 * decay).toBeCloseTo(64, 2)
  })

  test('begins above the far wire, and knows the jumps of Morgan alone', () => {
    const m = model({ correlation: 'morgan' })
    const zone = startZone(m, m.sides[0], 50)
    expect(zone.wireSurfaceC).toBe(zone.far.surfaceC + 50)
    expect(zone.surface[3]).toBeCloseTo(zone.far.surfaceC + 25, 10)
    expect(zone.jumps.length).toBeGreaterThan(1)
    expect(startZone(model(), model().sides[0], 50).jumps).toEqual([])
    const bare = model({ correlation: 'morgan', sleeve: null })
    expect(startZone(bare, bare.sides[0], 50).jumps).toEqual([])
  })
})

const sleeveOf = (m: JointModel) => m.sides[0].sleeve ?? m.sides[0].wire

describe('a spread jump', () => {
  const m = model({ correlation: 'morgan' })
  const way = sleeveOf(m)
  const [, atC = 0] = morganJumps(m, way)
  const found = jump(m, way, atC)
  const exact = (rise: number): number => surfaceLoss(m, way, 25 + rise)
  const spread = (rise: number): number => spreadLoss(m, way, [found], rise)

  test('has the height of the law there, 0.19 % of its convection at a Rayleigh number of 100', () => {
    expect(found.rise).toBe(atC - 25)
    expect(found.halfWidth).toBeCloseTo(0.05 * found.rise, 12)
    const step = 1e-6
    const slope = (exact(found.rise - step) - exact(found.rise - 2 * step)) / step
    expect(found.height).toBeCloseTo(exact(found.rise + step) - exact(found.rise - step) - 2 * step * slope, 5)
    const convection = exact(found.rise - step) - surfaceLoss({ ...m, morgan: false }, way, 25 + found.rise) * 0
    expect(found.height / convection).toBeGreaterThan(0.0005)
    expect(found.height / convection).toBeLessThan(0.0019)
  })

  test('is the law itself outside, runs on evenly inside, and is its middle at the jump', () => {
    const { rise, halfWidth, height } = found
    for (const away of [-1.001, 1.001, -3, 3]) expect(spread(rise + away * halfWidth)).toBe(exact(rise + away * halfWidth))
    expect(spread(rise - 0.999 * halfWidth)).not.toBe(exact(rise - 0.999 * halfWidth))
    expect(spread(rise - 0.5 * halfWidth) - exact(rise - 0.5 * halfWidth)).toBeCloseTo(0.25 * height, 10)
    expect(spread(rise + 0.5 * halfWidth) - exact(rise + 0.5 * halfWidth)).toBeCloseTo(-0.25 * height, 10)
    expect(spread(rise + 1e-7) - spread(rise - 1e-7)).toBeLessThan(0.01 * height)
  })
})
