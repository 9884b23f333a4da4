import { describe, expect, test } from 'vitest'
import { largestJointCurrentA, linearSide, settles, wireRunawayA } from './jointLinear.ts'
import { type JointModel, jointModel } from './jointModel.ts'
import type { JointSide, JointSite } from './jointSite.ts'

const wire: JointSide = { areaMm2: 1, conductorDiameterMm: 1.28, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, filmWPerM2K: 30 }
const site = (sleeveFilm: number, lengthMm: number, side: Partial<JointSide> = {}): JointModel =>
  jointModel({
    currentA: 10,
    ambientC: 25,
    conductors: [
      { ...wire, ...side },
      { ...wire, ...side },
    ],
    sleeve: { lengthMm, coreDiameterMm: 3, outsideDiameterMm: 4.6, conductivityWPerMK: 0.2, filmWPerM2K: sleeveFilm },
  } satisfies JointSite)

const loss = (wall: number, outsideM: number, film: number): number => 1 / (wall + 1 / (Math.PI * outsideM * film))
const sleeveWall = Math.log(4.6 / 3) / (2 * Math.PI * 0.2)
const wireLoss = loss(Math.log(2.48 / 1.28) / (2 * Math.PI * 0.17), 2.48e-3, 30)

/** The fin under the sleeve, integrated inwards by Runge-Kutta from a given rise at its end. */
function integrated(current: number, sleeveFilm: number, lengthM: number, endRise: number): { readonly rise: number; readonly flow: number } {
  const kA = 391e-6
  const heating = current ** 2 * 0.017241
  const w = heating * (1 + 0.00393 * 5)
  const Ge = wireLoss - heating * 0.00393
  const G1 = loss(sleeveWall, 4.6e-3, sleeveFilm) - heating * 0.00393
  let rise = endRise
  let slope = (Math.sqrt(kA * Ge) * (endRise - w / Ge)) / kA
  const n = 400
  const h = lengthM / n
  const f = (x: number): number => (G1 * x - w) / kA
  for (let k = 0; k < n; k++) {
    const a = f(rise)
    const b = f(rise + 0.5 * h * slope)
    const c = f(rise + 0.5 * h * slope + 0.25 * h * h * a)
    const d = f(rise + h * slope + 0.5 * h * h * b)
    rise += h * slope + ((h * h) / 6) * (a + b + c)
    slope += (h / 6) * (a + 2 * b + 2 * c + d)
  }
  return { rise, flow: kA * slope }
}

describe('a side with given films', () => {
  // At 1.32 W/(m2 K) and 15 A the sleeve's loss just offsets the rise of the wire's own heating: gamma is nearly 0.
  const even = 0.00393 * 225 * 0.017241
  const evenFilm = 1 / (1 / even - sleeveWall) / (Math.PI * 4.6e-3)
  test.each([
    ['decaying', 10, 12, 60],
    ['decaying far', 10, 12, 900],
    ['even', 15, evenFilm, 60],
    ['nearly even', 15, evenFilm * (1 + 1e-5), 60],
    ['nearly even, other sign', 15, evenFilm * (1 - 1e-5), 60],
    ['circular', 22, 0.8, 60],
    ['circular further', 22, 0.8, 110],
  ])('%s: %d A, sleeve film %d W/(m2 K), %d mm: the two-port is the integrated fin', (_name, current, film, lengthMm) => {
    const model = site(film, lengthMm)
    const side = linearSide(model, model.sides[0], current, false)
    expect(side.stable).toBe(true)
    for (const endRise of [5, 80]) {
      const want = integrated(current, film, lengthMm / 2000, endRise)
      expect(Math.abs((side.Y * want.rise - side.B) / want.flow - 1)).toBeLessThan(1e-6)
      expect(Math.abs((side.scale * want.rise + side.lift) / side.c0 / endRise - 1)).toBeLessThan(1e-6)
    }
  })

  test('an even zone: the series and the two forms beside it agree', () => {
    const at = (share: number) => {
      const model = site(evenFilm * (1 + share), 60)
      return linearSide(model, model.sides[0], 15, false)
    }
    // gamma^2 l^2 near 1e-6, on either side of the switch to the series.
    for (const share of [1e-6, 4e-5, 4e-4, -1e-6, -4e-5, -4e-4]) {
      expect(Math.abs(at(share).Y / at(0).Y - 1)).toBeLessThan(5e-2 * Math.abs(share) * 100)
      expect(Math.abs(at(share).B / at(0).B - 1)).toBeLessThan(5e-2 * Math.abs(share) * 100)
    }
  })

  test('not stable past the first zero, nor in the half wave after it where c0 is positive again', () => {
    const stable = (lengthMm: number) => {
      const model = site(0.8, lengthMm)
      return linearSide(model, model.sides[0], 22, false)
    }
    const lengths = [100, 800, 900, 1100, 1300, 1500, 1700, 1900].map(stable)
    expect(lengths.map((side) => side.stable).slice(0, 1)).toEqual([true])
    expect(lengths.slice(1).every((side) => !side.stable)).toBe(true)
    expect(lengths.slice(1).some((side) => side.c0 > 0)).toBe(true)
  })

  test('a wire that runs away takes nothing into account', () => {
    const model = site(12, 60)
    expect(linearSide(model, model.sides[0], 1000, false)).toEqual({ stable: false, farRise: 0, Y: 0, B: 0, scale: 0, lift: 0, c0: 0 })
    expect(settles(model, 0, 1000, false)).toBe(false)
    expect(settles(model, 0, 10, false)).toBe(true)
    expect(settles(model, 1e3, 10, false)).toBe(false)
  })

  test('bounds: wall and film in series, the wall alone with a film without end', () => {
    const model = site(12, 60)
    const wall = Math.log(2.48 / 1.28) / (2 * Math.PI * 0.17)
    expect(wireRunawayA(model, false)).toBeCloseTo(Math.sqrt(wireLoss / 0.017241 / 0.00393), 10)
    expect(wireRunawayA(model, true)).toBeCloseTo(Math.sqrt(1 / wall / 0.017241 / 0.00393), 9)
    const bare = site(12, 60, { insulationThicknessMm: 0 })
    expect(wireRunawayA(bare, true)).toBe(Number.POSITIVE_INFINITY)
    expect(wireRunawayA(bare, false)).toBeGreaterThan(10)
    const constant = site(12, 60, { temperatureCoefficient20PerK: 0 })
    expect(wireRunawayA(constant, false)).toBe(Number.POSITIVE_INFINITY)
    expect(largestJointCurrentA(constant, 0, false)).toBeNull()
    expect(largestJointCurrentA(constant, 1e-4, false)).toBeGreaterThan(0)
  })
})
