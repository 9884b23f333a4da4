/** Dry air and the heat loss of a cylinder in it, from the published equations; independent of the library. */

export interface Air {
  readonly density: number
  readonly viscosity: number
  readonly conductivity: number
  readonly prandtl: number
}

export function air(c: number, pressurePa = 101325): Air {
  const t = c + 273.15
  const viscosity = (1.458e-6 * t ** 1.5) / (t + 110.4)
  const conductivity = (2.64638e-3 * t ** 1.5) / (t + 245.4 * 10 ** (-12 / t))
  return { density: (pressurePa * 28.9586e-3) / (8.314462618 * t), viscosity, conductivity, prandtl: (viscosity * 1006) / conductivity }
}

export const stefanBoltzmann = 5.670374419e-8

/** Morgan's bands: factor and exponent below each upper Rayleigh number. */
const morgan = [
  [1e-2, 0.675, 0.058],
  [1e2, 1.02, 0.148],
  [1e4, 0.85, 0.188],
  [1e7, 0.48, 0.25],
  [Number.POSITIVE_INFINITY, 0.125, 0.333],
] as const

export function morganNusselt(rayleigh: number): number {
  const [, factor, exponent] = morgan.find(([below]) => rayleigh < below) ?? morgan[4]
  return factor * rayleigh ** exponent
}

export function churchillChu(rayleigh: number, prandtl: number): number {
  return (0.6 + (0.387 * rayleigh ** (1 / 6)) / (1 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27)) ** 2
}

export function churchillBernstein(reynolds: number, prandtl: number): number {
  return 0.3 + ((0.62 * Math.sqrt(reynolds) * Math.cbrt(prandtl)) / (1 + (0.4 / prandtl) ** (2 / 3)) ** 0.25) * (1 + (reynolds / 282000) ** (5 / 8)) ** 0.8
}

/** Rayleigh number of a horizontal cylinder, on its diameter. */
export function rayleighOf(surfaceC: number, ambientC: number, diameterM: number, pressurePa?: number): number {
  const filmC = (surfaceC + ambientC) / 2
  const { density, viscosity, prandtl } = air(filmC, pressurePa)
  return (9.80665 * Math.abs(surfaceC - ambientC) * diameterM ** 3 * prandtl) / ((filmC + 273.15) * (viscosity / density) ** 2)
}

export interface Surroundings {
  readonly ambientC: number
  readonly emissivity?: number
  readonly airSpeedMPerS?: number
  readonly pressurePa?: number
  readonly correlation?: 'churchill-chu' | 'morgan'
  readonly solarAbsorbedWPerM?: number
  readonly filmWPerM2K?: number
}

/** Heat loss of a long horizontal cylinder, W/m: the larger of natural and forced convection, plus radiation, less the sun. */
export function lossWPerM(surfaceC: number, diameterM: number, around: Surroundings): number {
  const { ambientC, emissivity = 0.9, airSpeedMPerS = 0, pressurePa = 101325, correlation = 'churchill-chu', solarAbsorbedWPerM = 0, filmWPerM2K } = around
  if (filmWPerM2K !== undefined) return filmWPerM2K * Math.PI * diameterM * (surfaceC - ambientC) - solarAbsorbedWPerM
  const { density, viscosity, conductivity, prandtl } = air((surfaceC + ambientC) / 2, pressurePa)
  const kinematic = viscosity / density
  const rayleigh = rayleighOf(surfaceC, ambientC, diameterM, pressurePa)
  const natural = correlation === 'churchill-chu' ? churchillChu(rayleigh, prandtl) : rayleigh === 0 ? 0 : morganNusselt(rayleigh)
  const reynolds = (airSpeedMPerS * diameterM) / kinematic
  const forced = reynolds * prandtl > 0.2 ? churchillBernstein(reynolds, prandtl) : 0
  const radiation = emissivity * stefanBoltzmann * Math.PI * diameterM * ((surfaceC + 273.15) ** 4 - (ambientC + 273.15) ** 4)
  return Math.max(natural, forced) * conductivity * Math.PI * (surfaceC - ambientC) + radiation - solarAbsorbedWPerM
}
