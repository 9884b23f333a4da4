import { describe, expect, test } from 'vitest'
import { heatJoint } from './heatJoint.ts'
import type { HeatJointInput, HeatSide } from './heatJointTypes.ts'

/** erfcx: exp(z^2) erfc(z) for z >= 0, as (2/sqrt pi) times the integral of exp(-s^2 - 2 z s), by Simpson's rule. */
function erfcx(z: number): number {
  const [end, n] = [6.5, 4000]
  const h = end / n
  let sum = 0
  for (let k = 0; k <= n; k++) sum += (k === 0 || k === n ? 1 : k % 2 === 1 ? 4 : 2) * Math.exp(-(h * k) * (h * k + 2 * z))
  return (2 / Math.sqrt(Math.PI)) * (h / 3) * sum
}

const copper = { densityKgPerM3: 8890, specificHeatJPerKgK: 385, conductivityWPerMK: 391 }
/** A wire without loss, all of it metal. */
const lossless = (areaMm2: number, more: Partial<HeatSide> = {}): HeatSide => {
  const diameterMm = Math.sqrt((4 * areaMm2) / Math.PI)
  const film = { stubFilmWPerM2K: 0, insulationFilmWPerM2K: 0 }
  return { areaMm2, diameterMm, ...copper, stubMm: 4, insulation: 'PVC', insulationOutsideMm: diameterMm, ...film, ...more }
}
const timesS = [0.02, 0.1, 0.5, 2]

/** Constant power: set so hot, with so little contact resistance, that the heater stays at full power. */
const heated = (powerW: number, conductors: readonly HeatSide[], accuracy: number): HeatJointInput => ({
  ambientC: 20,
  tool: { kind: 'iron', setC: 3000, maximumW: powerW, tipResistanceKPerW: 0, contactResistanceKPerW: 1 },
  joint: { lapMm: 9, diameterMm: 3, solderMm3: 5, filmWPerM2K: 0, emissivity: 0 },
  conductors,
  alloy: { solidusC: 2900, liquidusC: 2900, densityKgPerM3: 8000, specificHeatJPerKgK: 150, latentHeatJPerKg: 5e4 },
  toolOffS: 2,
  sampleTimesS: timesS,
  accuracy,
})

/** Effusivity E = sum n A sqrt(k rho c), and heat capacity C of the lump: copper of all conductors over the lap, and solder. */
function figures(conductors: readonly HeatSide[]): { readonly E: number; readonly C: number } {
  const rc = 8890 * 385
  let E = 0
  let C = 5e-9 * 8000 * 150
  for (const side of conductors) {
    E += (side.tails ?? 1) * side.areaMm2 * 1e-6 * Math.sqrt((side.conductivityWPerMK ?? 0) * rc)
    C += 9e-3 * side.areaMm2 * 1e-6 * rc
  }
  return { E, C }
}

describe('thermal limit 1.7d: constant power into a lump and its tails, no loss', () => {
  test('the scaled error function by its limits', () => {
    expect(erfcx(0)).toBeCloseTo(1, 12)
    // erfc(1) = 0.157299207..., and the asymptotic series in 1/z^2.
    expect(erfcx(1)).toBeCloseTo(Math.E * 0.15729920705028513, 11)
    expect(erfcx(10) * 10 * Math.sqrt(Math.PI)).toBeCloseTo(1 - 1 / 200 + 3 / 4e4 - 15 / 8e6, 6)
  })

  test.each<[string, number, readonly HeatSide[]]>([
    ['two tails of 1 mm2', 10, [lossless(1), lossless(1)]],
    ['one thin tail, which the lump outlasts', 4, [lossless(0.2)]],
    ['unlike conductors, one that runs through', 25, [lossless(2.5, { tails: 2 }), lossless(0.5, { conductivityWPerMK: 200 }), lossless(1)]],
  ])('%s', (_name, powerW, conductors) => {
    const { E, C } = figures(conductors)
    const a = E / C
    for (const accuracy of [1, 0.01]) {
      const { jointC, energyResidual } = heatJoint(heated(powerW, conductors, accuracy))
      timesS.forEach((t, k) => {
        const wanted = (powerW / E) * (2 * Math.sqrt(t / Math.PI) - (1 - erfcx(a * Math.sqrt(t))) / a)
        expect(Math.abs((jointC[k] ?? Number.NaN) - 20 - wanted)).toBeLessThan(0.3 * accuracy)
      })
      expect(energyResidual).toBeLessThan(1e-3 * accuracy)
    }
  })

  test('limits: early on all heat stays in the lump, late all of it goes into the tails', () => {
    const wires = [lossless(1), lossless(1)]
    const { E, C } = figures(wires)
    const early = heatJoint({ ...heated(10, wires, 0.01), sampleTimesS: [1e-3] }).jointC[0] ?? 0
    const tails = (4 / 3) * (E / C) * Math.sqrt(1e-3 / Math.PI)
    expect((early - 20) / ((10 * 1e-3) / C)).toBeCloseTo(1 - tails, 2)
    const late = heatJoint({ ...heated(1, wires, 0.01), toolOffS: 400, sampleTimesS: [100, 400] }).jointC
    expect(((late[1] ?? 0) - (late[0] ?? 0)) / ((2 / E) * (Math.sqrt(400 / Math.PI) - Math.sqrt(100 / Math.PI)))).toBeCloseTo(1, 2)
  })
})
