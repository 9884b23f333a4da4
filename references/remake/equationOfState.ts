/**
 * Dry air from its equation of state and the transport equations that go with it; independent of the library, which uses an ideal gas and closed fits.
 * Lemmon, Jacobsen, Penoncello and Friend (2000), J. Phys. Chem. Ref. Data 29; Lemmon and Jacobsen (2004), Int. J. Thermophys. 25.
 */

const gasConstant = 8.31451
const molarMassG = 28.9586
const reducingK = 132.6312
const reducingMolPerDm3 = 10.4477

/** Residual Helmholtz energy: coefficient, power of density, power of inverse temperature, power of density in the exponential. */
const residual = [
  [0.118160747229, 1, 0, 0],
  [0.713116392079, 1, 0.33, 0],
  [-1.61824192067, 1, 1.01, 0],
  [0.0714140178971, 2, 0, 0],
  [-0.0865421396646, 3, 0, 0],
  [0.134211176704, 3, 0.15, 0],
  [0.0112626704218, 4, 0, 0],
  [-0.0420533228842, 4, 0.2, 0],
  [0.0349008431982, 4, 0.35, 0],
  [0.000164957183186, 6, 1.35, 0],
  [-0.101365037912, 1, 1.6, 1],
  [-0.17381369097, 3, 0.8, 1],
  [-0.0472103183731, 5, 0.95, 1],
  [-0.0122523554253, 6, 1.25, 1],
  [-0.146629609713, 1, 3.6, 2],
  [-0.0316055879821, 3, 6, 2],
  [0.000233594806142, 11, 3.25, 2],
  [0.0148287891978, 1, 3.5, 3],
  [-0.00938782884667, 3, 15, 3],
] as const

const viscosityTerms = [
  [10.72, 1, 0.2, 0],
  [1.122, 4, 0.05, 0],
  [0.002019, 9, 2.4, 0],
  [-8.876, 1, 0.6, 1],
  [-0.02916, 8, 3.6, 1],
] as const

const conductivityTerms = [
  [8.743, 1, 0.1, 0],
  [14.76, 2, 0, 0],
  [-16.62, 3, 0.5, 2],
  [3.793, 7, 2.7, 2],
  [-6.142, 7, 0.3, 2],
  [-0.3778, 11, 1.3, 2],
] as const

/** Compression factor minus one: delta times the slope of the residual Helmholtz energy. */
function residualPressure(delta: number, tau: number): number {
  let sum = 0
  for (const [n, i, j, l] of residual) {
    const term = n * delta ** i * tau ** j
    sum += l === 0 ? i * term : term * Math.exp(-(delta ** l)) * (i - l * delta ** l)
  }
  return sum
}

/** Density at a pressure, mol/dm3: the ideal gas corrected until it settles, which it does at once near one atmosphere. */
function molarDensity(kelvin: number, pressurePa: number): number {
  const ideal = pressurePa / (gasConstant * kelvin) / 1000
  let density = ideal
  for (let n = 0; n < 100; n += 1) density = ideal / (1 + residualPressure(density / reducingMolPerDm3, reducingK / kelvin))
  return density
}

const sumOf = (terms: readonly (readonly [number, number, number, number])[], delta: number, tau: number): number =>
  terms.reduce((sum, [n, d, t, l]) => sum + n * tau ** t * delta ** d * (l === 0 ? 1 : Math.exp(-(delta ** l))), 0)

/** Viscosity of the dilute gas, in micropascal seconds. */
function diluteViscosity(kelvin: number): number {
  const x = Math.log(kelvin / 103.3)
  const collision = Math.exp(0.431 - 0.4623 * x + 0.08406 * x ** 2 + 0.005341 * x ** 3 - 0.00331 * x ** 4)
  return (0.0266958 * Math.sqrt(molarMassG * kelvin)) / (0.36 ** 2 * collision)
}

/** The critical enhancement of the conductivity is left out: below 1e-7 of it at one atmosphere from 250 K up. */
export function realAir(
  kelvin: number,
  pressurePa = 101325,
): { readonly densityKgPerM3: number; readonly viscosityPaS: number; readonly conductivityWPerMK: number } {
  const density = molarDensity(kelvin, pressurePa)
  const delta = density / reducingMolPerDm3
  const tau = reducingK / kelvin
  const dilute = diluteViscosity(kelvin)
  const diluteConductivity = 1.308 * dilute + 1.405 * tau ** -1.1 - 1.036 * tau ** -0.3
  return {
    densityKgPerM3: density * molarMassG,
    viscosityPaS: 1e-6 * (dilute + sumOf(viscosityTerms, delta, tau)),
    conductivityWPerMK: 1e-3 * (diluteConductivity + sumOf(conductivityTerms, delta, tau)),
  }
}
