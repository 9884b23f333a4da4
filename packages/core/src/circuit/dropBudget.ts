import { requireFiniteResult, requireNotNegative } from '../errors/index.ts'
import { requireList } from './requireList.ts'

/**
 * How the lost volts of a circuit divide among its wires, joints and contacts.
 *
 * The shares add to 1; without any resistance each is 0.
 *
 * @equation V_k = I R_k; V = sum(V_k); share_k = R_k/sum(R)
 * @symbol I - currentA - A - load current, the same in every element
 * @symbol R_k - elements.0.resistanceOhm - ohm - resistance of one element
 * @symbol V - result - V - whole drop, and of each element its drop and share
 * @domain currentA: at least 0
 * @domain elements.0.resistanceOhm: at least 0
 * @throws DomainError outside the domain, and for an empty list
 * @example
 * dropBudget({ currentA: 5, elements: [{ name: 'feed', resistanceOhm: 0.03 }, { name: 'joint', resistanceOhm: 0.01 }] }) // { dropV: 0.2, shares: [{ name: "feed", dropV: 0.15, share: 0.75 }, { name: "joint", dropV: 0.05, share: 0.25 }] }
 * @source Ohm's law and Kirchhoff's voltage law
 */
export function dropBudget(i: { readonly currentA: number; readonly elements: readonly { readonly name: string; readonly resistanceOhm: number }[] }): {
  readonly dropV: number
  readonly shares: readonly { readonly name: string; readonly dropV: number; readonly share: number }[]
} {
  const { currentA, elements } = i
  requireNotNegative('currentA', currentA)
  requireList('elements', elements, 1, 'at least one element with its resistance')
  let loopOhm = 0
  for (const [k, element] of elements.entries()) loopOhm += requireNotNegative(`elements.${k}.resistanceOhm`, element?.resistanceOhm)
  const dropV = requireFiniteResult('currentA', currentA, currentA * requireFiniteResult('elements', elements, loopOhm))
  const shares = elements.map(({ name, resistanceOhm }) => ({ name, dropV: currentA * resistanceOhm, share: loopOhm === 0 ? 0 : resistanceOhm / loopOhm }))
  return { dropV, shares }
}
