import { describe, expect, test } from 'vitest'
import { stream as swept, wire } from '../heatModel.sample.ts'
import type { HeatModel, HeatSource, HeatTube } from '../heatModel.ts'
import type { Wire } from './finZones.ts'
import { heatedWire, meshSettings, rebase, shortestTimeS, withoutStream } from './heatingWires.ts'
import type { WireModes } from './wireModes.ts'

const film = (value: number) => ({ coefficientsWPerM2K: Float64Array.of(value), lowRiseK: 0, highRiseK: 1 })
const iron: HeatSource = { kind: 'iron', setRiseK: 300, maximumW: Infinity, resistanceKPerW: 10 }
const model: HeatModel = {
  ambientC: 20,
  source: iron,
  surfaceM2: 1e-4,
  filmWPerM2K: 0,
  emissivity: 0,
  capacityJPerK: 0.06,
  melt: { solidusRiseK: 160, liquidusRiseK: 170, latentJ: 2 },
  wettedRiseK: 200,
  wires: [],
  wireOf: [],
  toolOffS: 100,
  observeS: 130,
  sampleTimesS: [],
  accuracy: 1,
}

describe('the shortest time of interest', () => {
  test('without wires: the full power into the lump up to the solidus', () => {
    expect(shortestTimeS(model)).toBeCloseTo((0.06 * 160) / 30, 12)
    expect(shortestTimeS({ ...model, source: { ...iron, maximumW: 20 } })).toBeCloseTo((0.06 * 160) / 20, 12)
    const heavy: HeatSource = { kind: 'heavy-iron', setRiseK: 300, maximumW: 9, tipResistanceKPerW: 2, contactResistanceKPerW: 5, capacityJPerK: 0.4 }
    expect(shortestTimeS({ ...model, source: heavy })).toBeCloseTo((0.06 * 160) / 60, 12)
    expect(shortestTimeS({ ...model, source: { kind: 'air', airRiseK: 330, film: film(150) } })).toBeCloseTo((0.06 * 160) / (150 * 1e-4 * 330), 12)
    const tube: HeatTube = {
      kind: 'tube',
      airRiseK: 330,
      film: film(140),
      stillFilmWPerM2K: 0,
      emissivity: 0,
      outsideM2: 4e-4,
      capacityJPerK: 0.3,
      recoveryRiseK: 100,
      gripped: false,
      tightWPerK: 0.02,
      gapM: 0,
      gapAir: film(0),
      gapM2: 0,
      gapEmissivity: 0,
    }
    expect(shortestTimeS({ ...model, source: tube })).toBeCloseTo((0.06 * 160) / (0.02 * 330), 12)
  })

  test('with wires: as long again as they alone would take, half-infinite rods under a constant flow', () => {
    const rods = [wire, { ...wire, tails: 2, conductanceWM: 100e-6 }]
    const E = Math.sqrt(391e-6 * 3.4) + 2 * Math.sqrt(100e-6 * 3.4)
    // Their rise is (2 P/E) sqrt(t/pi).
    const t = shortestTimeS({ ...model, wires: rods }) - (0.06 * 160) / 30
    expect(((2 * 30) / E) * Math.sqrt(t / Math.PI)).toBeCloseTo(160, 9)
  })

  test('no longer than a tenth of the stay of the tool, and never nothing', () => {
    expect(shortestTimeS({ ...model, toolOffS: 1 })).toBeCloseTo(0.1, 12)
    expect(shortestTimeS({ ...model, capacityJPerK: 1e-30 })).toBeCloseTo(130e-12, 24)
    expect(shortestTimeS({ ...model, source: { ...iron, setRiseK: 0 } })).toBe(10)
  })
})

describe('how fine and how far a wire is meshed', () => {
  const reach = (one: Wire, change: Partial<HeatModel> = {}): number =>
    meshSettings(one, { ...model, ...change }, 0.1).lengthM - Math.max(one.stubM, one.swept?.toM ?? 0, one.clip?.atM ?? 0)

  test('as far beyond the last change as heat gets: by its losses in a long run, by its time in a short one', () => {
    const long = { toolOffS: 1e5, observeS: 1e6 }
    // Past seven of the lengths over which a steady rise falls to 1/e: a thousandth is left.
    expect(reach(wire, long)).toBeCloseTo(7 * Math.sqrt(391e-6 / 0.1), 9)
    expect(reach(wire, { observeS: 4 }) / reach(wire, { observeS: 1 })).toBeCloseTo(2, 9)
    // What is 5 sqrt(alpha t) away has not felt a thousandth of a step at its end.
    expect(reach(wire, { observeS: 1 })).toBeGreaterThan(5 * Math.sqrt(391e-6 / 3.4))
    expect(reach(wire, { ...long, accuracy: 0.01 })).toBeGreaterThan(1.5 * reach(wire, long))
    for (const one of [
      { ...wire, stubM: 0.3 },
      { ...wire, clip: { atM: 0.2, resistanceKPerW: 1, riseK: 0 } },
      { ...wire, swept },
    ]) {
      expect(reach(one, long)).toBeCloseTo(reach(wire, long), 12)
    }
    expect(reach({ ...wire, swept: { ...swept, insulatedLossWPerMK: 0.05 } }, long)).toBeCloseTo(7 * Math.sqrt(391e-6 / 0.05), 9)
  })

  test('the first element by how far heat runs in the shortest time, within what the reach allows', () => {
    const first = (shortestS: number, change: Partial<HeatModel> = {}): number => meshSettings(wire, { ...model, ...change }, shortestS).firstM
    expect(first(0.04) / first(0.01)).toBeCloseTo(2, 9)
    expect(first(0.01)).toBeGreaterThan(0.5 * Math.sqrt((391e-6 / 3.4) * 0.01))
    expect(first(0.01)).toBeLessThan(2 * Math.sqrt((391e-6 / 3.4) * 0.01))
    expect(first(0.01, { accuracy: 0.01 })).toBeLessThan(first(0.01) / 2)
    expect(first(1e-20)).toBeCloseTo(1e-5 * reach(wire), 12)
    expect(first(1e20)).toBeCloseTo(reach(wire), 12)
    const { growth } = meshSettings(wire, model, 0.1)
    expect(meshSettings(wire, { ...model, accuracy: 0.01 }, 0.1).growth).toBeLessThan(growth)
  })
})

describe('a wire that the stream leaves', () => {
  const heated = () => heatedWire({ ...wire, swept }, { firstM: 2e-3, growth: 0.6, degree: 5, lengthM: 0.3 })
  const figures = (modes: WireModes, y: Float64Array): readonly number[] =>
    [modes.edge, modes.store].map((row) => row.reduce((sum, part, k) => sum + part * (y[k] ?? 0), 0))

  test('keeps its profile: edge and heat are the same in the new modes', () => {
    const on = heated()
    const off = withoutStream(on)
    const y = Float64Array.from({ length: on.modes.count }, (_, k) => Math.sin(k + 1))
    const before = figures(on.modes, y)
    const kept = Float64Array.from(y)
    rebase(y, on.modes, off.modes)
    expect(y).not.toEqual(kept)
    figures(off.modes, y).forEach((figure, k) => {
      expect(figure).toBeCloseTo(before[k] ?? 0, 10)
    })
    expect([...off.modes.ratesPerS].reduce((a, b) => a + b)).toBeLessThan([...on.modes.ratesPerS].reduce((a, b) => a + b))
    expect(off.mesh).toBe(on.mesh)
  })

  test('only a wire in the stream keeps the whole base, and without one nothing moves', () => {
    const still = heatedWire(wire, { firstM: 2e-3, growth: 0.6, degree: 5, lengthM: 0.3 })
    expect(still.modes.base).toBeNull()
    expect(heated().modes.base).not.toBeNull()
    const y = Float64Array.from({ length: still.modes.count }, (_, k) => k)
    rebase(y, still.modes, still.modes)
    expect(y[3]).toBe(3)
  })
})
