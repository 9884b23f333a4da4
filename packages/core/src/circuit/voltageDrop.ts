import { requireFiniteResult, requireNotNegative } from '../errors/index.ts'
import { requireList } from './requireList.ts'

/**
 * The volts that feed, return and joints of a circuit take from its load.
 *
 * @equation V = I (R_out + R_return + sum(R_j))
 * @symbol I - currentA - A - load current
 * @symbol R_out - outResistanceOhm - ohm - wire from the source to the load
 * @symbol R_return - returnResistanceOhm - ohm - way back, wire or chassis
 * @symbol R_j - jointsOhm - ohm - each joint, contact and holder in the loop
 * @symbol V - result - V - lost on the way
 * @domain currentA: at least 0
 * @domain outResistanceOhm: at least 0
 * @domain returnResistanceOhm: at least 0
 * @domain optional jointsOhm.0: at least 0
 * @throws DomainError outside the domain
 * @example
 * voltageDropV({ currentA: 4.2, outResistanceOhm: 0.05, returnResistanceOhm: 0.05, jointsOhm: [0.002, 0.003] }) // 0.441
 * @source Ohm's law and Kirchhoff's voltage law
 */
export function voltageDropV(i: {
  readonly currentA: number
  readonly outResistanceOhm: number
  readonly returnResistanceOhm: number
  readonly jointsOhm?: readonly number[]
}): number {
  const { currentA, jointsOhm } = i
  requireNotNegative('currentA', currentA)
  let loopOhm = requireNotNegative('outResistanceOhm', i.outResistanceOhm) + requireNotNegative('returnResistanceOhm', i.returnResistanceOhm)
  if (jointsOhm !== undefined) {
    requireList('jointsOhm', jointsOhm, 0, 'a list of resistances in ohm')
    for (let k = 0; k < jointsOhm.length; k += 1) {
      const jointOhm = jointsOhm[k] as number
      // The parameter name is built only for a joint that is refused.
      if (!(typeof jointOhm === 'number' && jointOhm >= 0 && jointOhm < Infinity)) requireNotNegative(`jointsOhm.${k}`, jointOhm)
      loopOhm += jointOhm
    }
  }
  return requireFiniteResult('currentA', currentA, currentA * loopOhm)
}
