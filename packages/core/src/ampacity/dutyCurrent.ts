import { requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'

/**
 * Gives the steady current that reaches the same peak temperature as an on-and-off load.
 *
 * @equation I = I_s sqrt((1 - exp(-(on + off)/tau))/(1 - exp(-on/tau)))
 * @symbol on - onS - s - time on in each cycle
 * @symbol off - offS - s - time off in each cycle
 * @symbol tau - timeConstantS - s - thermal time constant, the same on and off
 * @symbol I_s - steadyA - A - continuous current
 * @symbol I - result - A - current in the on-time
 * @domain onS: above 0
 * @domain offS: at least 0
 * @domain timeConstantS: above 0
 * @domain steadyA: at least 0
 * @throws DomainError outside the domain, and where the on-time is too short to tell
 * @example
 * dutyCurrentA({ onS: 30, offS: 90, timeConstantS: 60, steadyA: 10 }) // 14.82
 * @source one time constant, cyclic steady state; the limit of short cycles is the square-mean rule
 */
export function dutyCurrentA(i: { readonly onS: number; readonly offS: number; readonly timeConstantS: number; readonly steadyA: number }): number {
  const on = requirePositive('onS', i.onS)
  const off = requireNotNegative('offS', i.offS)
  const tau = requirePositive('timeConstantS', i.timeConstantS)
  const steady = requireNotNegative('steadyA', i.steadyA)
  return requireFiniteResult('onS', on, steady * Math.sqrt(Math.expm1(-(on + off) / tau) / Math.expm1(-on / tau)))
}
