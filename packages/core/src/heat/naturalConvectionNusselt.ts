import { requireBetween, requireChoice, requireFiniteResult, requirePositive } from '../errors/index.ts'
import { frozen } from '../errors/inner.ts'
import { largestRayleigh } from './constants.ts'
import { type Correlation, correlations, heatDefaults } from './correlation.ts'

/** Factor C and exponent n of Nu = C Ra^n below each upper edge of the Rayleigh number; the last band has no edge. */
export const morganBands = /* @__PURE__ */ frozen([
  { below: 1e-2, factor: 0.675, exponent: 0.058 },
  { below: 1e2, factor: 1.02, exponent: 0.148 },
  { below: 1e4, factor: 0.85, exponent: 0.188 },
  { below: 1e7, factor: 0.48, exponent: 0.25 },
  { below: Infinity, factor: 0.125, exponent: 0.333 },
] as const)

/** Churchill and Chu's 0.60 + 0.387 form: unchecked, for solvers. */
export function churchillChuNusselt(rayleigh: number, prandtl: number): number {
  const root = 0.6 + (0.387 * Math.cbrt(Math.sqrt(rayleigh))) / (1 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27)
  return root * root
}

/** Morgan's piecewise power law; a band holds below its upper edge: unchecked, for solvers. */
export function morganNusselt(rayleigh: number): number {
  if (rayleigh < 1e2) return rayleigh < 1e-2 ? 0.675 * rayleigh ** 0.058 : 1.02 * rayleigh ** 0.148
  if (rayleigh < 1e4) return 0.85 * rayleigh ** 0.188
  return rayleigh < 1e7 ? 0.48 * Math.sqrt(Math.sqrt(rayleigh)) : 0.125 * rayleigh ** 0.333
}

/**
 * Gives the Nusselt number of still air round a horizontal cylinder such as a wire.
 *
 * @equation Nu = (0.60 + 0.387 Ra^(1/6)/(1 + (0.559/Pr)^(9/16))^(8/27))^2, or C Ra^n by bands of Ra
 * @symbol Ra - rayleigh - 1 - Rayleigh number on the diameter
 * @symbol Pr - prandtl - 1 - Prandtl number at the film temperature; the piecewise law does not use it
 * @symbol Nu - result - 1 - Nusselt number on the diameter
 * @domain rayleigh: from 0 to 1e12
 * @domain prandtl: above 0
 * @throws DomainError outside the domain
 * @example
 * naturalConvectionNusselt({ rayleigh: 1000, prandtl: 0.7, correlation: 'churchill-chu' }) // 2.608
 * @source Churchill and Chu, Int. J. Heat Mass Transfer 18 (1975), 1049; Morgan, Advances in Heat Transfer 11 (1975), 199
 */
export function naturalConvectionNusselt(i: { readonly rayleigh: number; readonly prandtl: number; readonly correlation?: Correlation }): number {
  const Ra = requireBetween('rayleigh', i.rayleigh, 0, largestRayleigh, 'range of the fits, Rayleigh number up to 1e12')
  const Pr = requirePositive('prandtl', i.prandtl)
  const correlation = requireChoice<Correlation>('correlation', i.correlation ?? heatDefaults.correlation, correlations)
  return requireFiniteResult('prandtl', Pr, correlation === 'morgan' ? morganNusselt(Ra) : churchillChuNusselt(Ra, Pr))
}
