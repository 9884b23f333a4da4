import { DomainError, requireTemperature } from '../errors/index.ts'

/**
 * Gives the share of a tabulated current that a wire keeps in air hotter or colder than the table's.
 *
 * Assumes heat loss proportional to the rise; where a code has a table, the table takes precedence.
 *
 * @equation F = sqrt((Tl - Ta)/(Tl - Tr))
 * @symbol Tl - limitC - C - temperature limit of the insulation
 * @symbol Ta - ambientC - C - temperature of the air
 * @symbol Tr - referenceAmbientC - C - temperature of the air for which the table holds
 * @symbol F - result - 1 - factor on the current, 0 at the limit
 * @domain limitC: above -273.15
 * @domain ambientC: above -273.15
 * @domain referenceAmbientC: above -273.15
 * @throws DomainError outside the domain, for air above the limit, and for a reference at or above it
 * @example
 * ambientFactor({ limitC: 105, ambientC: 50, referenceAmbientC: 30 }) // 0.8563
 * @source NFPA 70, 310.15(B), and IEC 60364-5-52, B.52.14: the law that their ambient factors follow
 */
export function ambientFactor(i: { readonly limitC: number; readonly ambientC: number; readonly referenceAmbientC: number }): number {
  const limit = requireTemperature('limitC', i.limitC)
  const ambient = requireTemperature('ambientC', i.ambientC)
  const reference = requireTemperature('referenceAmbientC', i.referenceAmbientC)
  if (ambient > limit) throw new DomainError('ambientC', ambient, `at most limitC, ${limit}`)
  if (!(reference < limit)) throw new DomainError('referenceAmbientC', reference, `below limitC, ${limit}`)
  return Math.sqrt((limit - ambient) / (limit - reference))
}
