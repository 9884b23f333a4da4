import { expect, test } from 'vitest'
import { bundleTemperatureC } from './bundleTemperature.ts'
import { conductorTemperatureC } from './conductorTemperature.ts'
import { wireState } from './wireState.ts'

const wire = Object.freeze({ areaMm2: 1, conductorDiameterMm: 1.28, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17 })

/**
 * By hand, 1 mm2 copper, 0.6 mm PVC, 19 A, still air 30 C. Guess the surface: 72.0 C.
 *   D = 1.28 + 1.2 = 2.48 mm; film (72 + 30)/2 = 51 C = 324.15 K
 *   mu = 1.458e-6 x 324.15^1.5/434.55 = 1.958e-5; k = 0.02811; rho = 101325 x 0.02896/(8.3145 x 324.15) = 1.0887
 *   nu = 1.958e-5/1.0887 = 1.7986e-5; Pr = 1.958e-5 x 1006/0.02811 = 0.7009
 *   Ra = 9.807/324.15 x 42 x (0.00248)^3 x 0.7009/(1.7986e-5)^2 = 41.99
 *   Nu = (0.60 + 0.387 x 41.99^(1/6)/1.2058)^2 = (0.60 + 0.387 x 1.8644/1.2058)^2 = 1.436
 *   convection 1.436 x 0.02811 x 3.1416 x 42 = 5.327; radiation 0.9 x 5.6704e-8 x 3.1416 x 0.00248 x (345.15^4 - 303.15^4) = 2.285
 *   q = 7.612 W/m; wall ln(2.48/1.28)/(2 x 3.1416 x 0.17) = 0.6192; conductor 72.0 + 7.612 x 0.6192 = 76.71 C
 *   heat 19^2 x 0.017241 x (1 + 0.00393 x 56.71) = 7.611 W/m: it balances.
 * Library: 76.717 C.
 */
test('one wire in free air, worked by hand: 76.71 °C', () => {
  const state = wireState({ ...wire, ambientC: 30, currentA: 19 })
  expect(state.conductorC).toBeCloseTo(76.717, 3)
  expect(Math.abs(state.conductorC - 76.71)).toBeLessThan(0.01)
  expect(Math.abs(state.surfaceC - 72.0)).toBeLessThan(0.01)
  expect(Math.abs(state.rayleigh / 41.99 - 1)).toBeLessThan(1e-3)
  expect(Math.abs(state.convectionWPerM / 5.327 - 1)).toBeLessThan(1e-3)
  expect(Math.abs(state.radiationWPerM / 2.285 - 1)).toBeLessThan(1e-3)
})

/**
 * By hand, seven such wires in a bundle of 3 x 2.48 = 7.44 mm, 8 A in each, air 60 C. Packed by themselves they are the hottest:
 * 2.48 x sqrt(7/0.8) = 7.336 mm. Guess the surface: 84.3 C.
 *   film 72.15 C = 345.3 K: mu = 2.0529e-5, k = 0.02969, rho = 1.0221, nu = 2.0086e-5, Pr = 0.6955
 *   Ra = 9.807/345.3 x 24.3 x (0.007336)^3 x 0.6955/(2.0086e-5)^2 = 469.7
 *   Nu = (0.60 + 0.387 x 469.7^(1/6)/1.2065)^2 = (0.60 + 0.387 x 2.7881/1.2065)^2 = 2.233
 *   convection 2.233 x 0.02969 x 3.1416 x 24.3 = 5.062; radiation 0.9 x 5.6704e-8 x 3.1416 x 0.007336 x (357.45^4 - 333.15^4) = 4.713
 *   q = 9.775 W/m; within, q/(4 x 3.1416 x 0.2) = 3.889 K; centre 88.19 C
 *   heat 7 x 8^2 x 0.017241 x (1 + 0.00393 x 68.19) = 9.794 W/m, 0.2 % more: each kelvin sheds 0.46 W/m, so 84.34 and 88.24 C.
 * Library: 84.346 and 88.243 C. In free air at 60 C the same wire with 8 A reaches 69.0 C.
 */
test('seven such wires in a hot bundle, worked by hand: 84.3 °C outside, 88.2 °C in the middle', () => {
  const { centreC, surfaceC } = bundleTemperatureC({ ...wire, ambientC: 60, currentA: 8, loadedWires: 7, bundleOutsideMm: 7.44 })
  expect(centreC).toBeCloseTo(88.243, 3)
  expect(Math.abs(surfaceC - 84.34)).toBeLessThan(0.01)
  expect(Math.abs(centreC - 88.24)).toBeLessThan(0.01)
  expect(conductorTemperatureC({ ...wire, ambientC: 60, currentA: 8 })).toBeCloseTo(69.03, 2)
})
