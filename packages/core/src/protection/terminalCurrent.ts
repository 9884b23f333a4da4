import { DomainError, requireAboveUpTo, requireFiniteResult, requireNotNegative, requireTemperature } from '../errors/index.ts'
import { protectionDefaults } from './protectionDefaults.ts'

const source = 'a terminal heats with the square of its current'

/**
 * The current a terminal may carry in a warmer place than the one it is rated in.
 *
 * The rise is proportional to the square of the current, so the current is proportional to the root of the remaining rise.
 *
 * @equation I = I_r sqrt((T_l - T_a)/(T_l - T_r)) k
 * @symbol I_r - ratedCurrentA - A - rated current, the one that brings the terminal to its limit
 * @symbol T_r - ratedAmbientC - C - ambient at which it is rated
 * @symbol T_l - limitC - C - highest temperature of the terminal
 * @symbol T_a - ambientC - C - ambient where it works
 * @symbol k - reserveFactor else protectionDefaults.reserveFactor - 1 - share of the law that is used; 0.8 turns a measured curve into a derating curve
 * @symbol I - result - A - current that the terminal may carry there
 * @domain ratedCurrentA: at least 0
 * @domain ratedAmbientC: above -273.15
 * @domain limitC: above -273.15
 * @domain ambientC: above -273.15
 * @domain optional reserveFactor: above 0 up to 1
 * @throws DomainError outside the domain, where the rated ambient is not below the limit, and where the ambient is above it
 * @example
 * terminalCurrentA({ ratedCurrentA: 10, ratedAmbientC: 20, limitC: 105, ambientC: 60, reserveFactor: 0.8 }) // 5.820855
 * @source IEC 60512-5-2, test 5b, current-temperature derating
 */
export function terminalCurrentA(i: {
  readonly ratedCurrentA: number
  readonly ratedAmbientC: number
  readonly limitC: number
  readonly ambientC: number
  readonly reserveFactor?: number
}): number {
  const { reserveFactor = protectionDefaults.reserveFactor } = i
  const rated = requireNotNegative('ratedCurrentA', i.ratedCurrentA)
  const limitC = requireTemperature('limitC', i.limitC)
  const ratedAmbientC = requireTemperature('ratedAmbientC', i.ratedAmbientC)
  const ambientC = requireTemperature('ambientC', i.ambientC)
  requireAboveUpTo('reserveFactor', reserveFactor, 0, 1)
  if (!(ratedAmbientC < limitC)) throw new DomainError('ratedAmbientC', ratedAmbientC, `below limitC, ${limitC}`, source, 'contradiction')
  if (ambientC > limitC) throw new DomainError('ambientC', ambientC, `at most limitC, ${limitC}`, source)
  return requireFiniteResult('ratedCurrentA', rated, rated * Math.sqrt((limitC - ambientC) / (limitC - ratedAmbientC)) * reserveFactor)
}
