import { DomainError, requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'
import { leastReynoldsPrandtl } from './constants.ts'

const source = 'Churchill and Bernstein, J. Heat Transfer 99 (1977), 300'

/** Churchill and Bernstein: unchecked, for solvers. */
export function crossFlowNusselt(reynolds: number, prandtl: number): number {
  const x = Math.cbrt(0.4 / prandtl)
  const pace = Math.sqrt(reynolds / 282000)
  const tail = Math.cbrt(prandtl) / Math.sqrt(Math.sqrt(1 + x * x))
  return 0.3 + 0.62 * Math.sqrt(reynolds) * tail * (1 + pace * Math.sqrt(Math.sqrt(pace))) ** 0.8
}

/**
 * Gives the Nusselt number of a stream across a cylinder, also below the range to which the fit was made.
 *
 * @equation Nu = 0.3 + 0.62 Re^(1/2) Pr^(1/3)/(1 + (0.4/Pr)^(2/3))^(1/4) (1 + (Re/282000)^(5/8))^(4/5)
 * @symbol Re - reynolds - 1 - Reynolds number on the diameter
 * @symbol Pr - prandtl - 1 - Prandtl number at the film temperature
 * @symbol Nu - result - 1 - Nusselt number on the diameter
 * @domain reynolds: at least 0
 * @domain prandtl: above 0
 * @throws DomainError outside the domain
 * @example
 * churchillBernsteinNusselt({ reynolds: 100, prandtl: 0.7 }) // 5.156
 * @source Churchill and Bernstein, J. Heat Transfer 99 (1977), 300; an extrapolation where Re Pr is at most 0.2
 */
export function churchillBernsteinNusselt(i: { readonly reynolds: number; readonly prandtl: number }): number {
  requireNotNegative('reynolds', i.reynolds)
  requirePositive('prandtl', i.prandtl)
  return requireFiniteResult('reynolds', i.reynolds, crossFlowNusselt(i.reynolds, i.prandtl))
}

/**
 * Gives the Nusselt number of a stream across a cylinder within the range of the fit.
 *
 * @equation Nu = 0.3 + 0.62 Re^(1/2) Pr^(1/3)/(1 + (0.4/Pr)^(2/3))^(1/4) (1 + (Re/282000)^(5/8))^(4/5), Re Pr > 0.2
 * @symbol Re - reynolds - 1 - Reynolds number on the diameter
 * @symbol Pr - prandtl - 1 - Prandtl number at the film temperature
 * @symbol Nu - result - 1 - Nusselt number on the diameter
 * @domain reynolds: above 0
 * @domain prandtl: above 0
 * @throws DomainError outside the domain, and where Re Pr is at most 0.2
 * @example
 * forcedConvectionNusselt({ reynolds: 100, prandtl: 0.7 }) // 5.156
 * @source Churchill and Bernstein, J. Heat Transfer 99 (1977), 300
 */
export function forcedConvectionNusselt(i: { readonly reynolds: number; readonly prandtl: number }): number {
  requirePositive('reynolds', i.reynolds)
  requirePositive('prandtl', i.prandtl)
  if (!(i.reynolds * i.prandtl > leastReynoldsPrandtl)) {
    throw new DomainError('reynolds', i.reynolds, `reynolds times prandtl above ${leastReynoldsPrandtl}`, source)
  }
  return requireFiniteResult('reynolds', i.reynolds, crossFlowNusselt(i.reynolds, i.prandtl))
}
