import { describe, expect, test } from 'vitest'
import { airProperties, churchillBernsteinNusselt } from '../heat/index.ts'
import { constantFilm, crossFlowFilm, filmAt, tabled } from './streamFilm.ts'

describe('the film coefficient of a stream', () => {
  test.each([
    [10, 101325, 350],
    [15, 80000, 450],
    [0.2, 101325, 600],
    [0, 101325, 350],
  ] as const)('%s m/s at %s Pa and %s C: the table is the correlation', (airSpeedMPerS, pressurePa, airC) => {
    const diameterM = 2.8e-3
    const film = crossFlowFilm({ ambientC: -20, lowC: -40, highC: airC + 1, airC, airSpeedMPerS, pressurePa, diameterM, factor: 1 })
    for (let surfaceC = -40; surfaceC <= airC; surfaceC += 17) {
      const air = airProperties((airC + surfaceC) / 2, pressurePa)
      const reynolds = (air.densityKgPerM3 * airSpeedMPerS * diameterM) / air.viscosityPaS
      const wanted = (churchillBernsteinNusselt({ reynolds, prandtl: air.prandtl }) * air.conductivityWPerMK) / diameterM
      expect(filmAt(film, surfaceC + 20) / wanted).toBeCloseTo(1, 8)
    }
  })

  test('scales with its factor; a given film is taken as it is', () => {
    const given = { ambientC: 20, lowC: 19, highC: 351, airC: 350, airSpeedMPerS: 10, pressurePa: 101325, diameterM: 2e-3 }
    const once = filmAt(crossFlowFilm({ ...given, factor: 1 }), 100)
    expect(filmAt(crossFlowFilm({ ...given, factor: 1.5 }), 100)).toBeCloseTo(1.5 * once, 9)
    expect(filmAt(constantFilm(123), 77)).toBe(123)
  })

  test('any polynomial of low degree is tabled exactly', () => {
    const film = tabled(20, 0, 400, (c) => 3 + c - 0.01 * c * c)
    for (const c of [0, 33, 200, 400]) expect(filmAt(film, c - 20)).toBeCloseTo(3 + c - 0.01 * c * c, 9)
  })
})
