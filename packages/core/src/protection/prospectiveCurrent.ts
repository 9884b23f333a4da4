import { DomainError, requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'

/**
 * The current of a dead short at the far end, which must open the fuse.
 *
 * Use the hottest loop for the smallest current, and the cold loop for the largest current that the fuse must break.
 *
 * @equation I = V/(R_s + R_l)
 * @symbol V - supplyV - V - source voltage
 * @symbol R_s - sourceOhm - ohm - inside the source
 * @symbol R_l - loopOhm - ohm - feed, return, holder and joints up to the short
 * @symbol I - result - A - prospective current
 * @domain supplyV: above 0
 * @domain sourceOhm: at least 0
 * @domain loopOhm: at least 0
 * @throws DomainError outside the domain, and where nothing limits the current
 * @example
 * prospectiveCurrentA({ supplyV: 12, sourceOhm: 0.01, loopOhm: 0.11 }) // 100
 * @source derived: Ohm's law
 */
export function prospectiveCurrentA(i: { readonly supplyV: number; readonly sourceOhm: number; readonly loopOhm: number }): number {
  const V = requirePositive('supplyV', i.supplyV)
  const whole = requireNotNegative('sourceOhm', i.sourceOhm) + requireNotNegative('loopOhm', i.loopOhm)
  if (whole === 0) throw new DomainError('loopOhm', i.loopOhm, 'above 0 where sourceOhm is 0: nothing else limits the current')
  return requireFiniteResult('loopOhm', i.loopOhm, V / whole)
}
