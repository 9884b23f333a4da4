import { requireFinite, requireFiniteResult, requirePositive } from '../errors/index.ts'

/**
 * The resistance between the sense tips of a four-wire reading; with a second reading at reversed current thermal voltages cancel.
 *
 * The result keeps its sign: below zero, the sense tips are swapped or the offset is larger than the signal.
 *
 * @equation R = V/I; with reversal R = (V - V_r)/(2 I)
 * @symbol V - forwardV - V - between the sense tips, current forward
 * @symbol V_r - reversedV - V - between the same tips, current reversed, with its sign
 * @symbol I - currentA - A - size of the current in either direction
 * @symbol R - result - ohm - resistance between the sense tips
 * @domain forwardV: finite
 * @domain optional reversedV: finite
 * @domain currentA: above 0
 * @throws DomainError outside the domain
 * @example
 * fourWireResistanceOhm({ forwardV: 0.001003, reversedV: -0.000997, currentA: 1 }) // 0.001
 * @source ASTM B539-02, clause 9, current reversal
 */
export function fourWireResistanceOhm(i: { readonly forwardV: number; readonly reversedV?: number; readonly currentA: number }): number {
  const forward = requireFinite('forwardV', i.forwardV)
  const current = requirePositive('currentA', i.currentA)
  if (i.reversedV === undefined) return requireFiniteResult('forwardV', forward, forward / current)
  const reversed = requireFinite('reversedV', i.reversedV)
  return requireFiniteResult('forwardV', forward, (forward - reversed) / (2 * current))
}
