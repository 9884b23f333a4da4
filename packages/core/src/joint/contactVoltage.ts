import { absoluteZeroC, DomainError, requireFiniteResult, requireNotNegative, requireTemperature } from '../errors/index.ts'

/** Lorenz number of metals, in V2/K2: the theoretical value, close to that of copper. */
const lorenzV2PerK2 = 2.45e-8

/**
 * Voltage over a contact at which its spot reaches a temperature, whatever the spot's size and the current.
 *
 * Heat and current take the same path, so the voltage alone fixes the temperature; at the softening or melting point it is the metal's softening or melting voltage. Assumes clean metal, the same on both sides, and both parts at one bulk temperature.
 *
 * @equation V = 2 sqrt(Lo (T_m^2 - T_0^2)), both in kelvin, Lo = 2.45e-8 V2/K2
 * @symbol T_m - peakC - C - temperature of the spot
 * @symbol T_0 - bulkC - C - temperature of the parts
 * @symbol V - result - V - voltage over the contact
 * @domain peakC: above -273.15
 * @domain bulkC: above -273.15
 * @throws DomainError outside the domain, and where peakC is below bulkC: a current never cools a spot
 * @example
 * contactVoltageV({ peakC: 1083, bulkC: 20 }) // 0.4145
 * @source Holm, Electric Contacts, 1967: voltage and temperature relation (from memory)
 */
export function contactVoltageV(i: { readonly peakC: number; readonly bulkC: number }): number {
  const bulk = requireTemperature('bulkC', i.bulkC) - absoluteZeroC
  const peak = requireTemperature('peakC', i.peakC) - absoluteZeroC
  if (peak < bulk) throw new DomainError('peakC', i.peakC, `at least bulkC, ${i.bulkC}`, undefined, 'contradiction')
  return requireFiniteResult('peakC', i.peakC, 2 * Math.sqrt(lorenzV2PerK2 * (peak - bulk) * (peak + bulk)))
}

/**
 * Temperature of a contact's spot, from the voltage across it.
 *
 * @equation T_m = sqrt(V^2/(4 Lo) + T_0^2), in kelvin, Lo = 2.45e-8 V2/K2
 * @symbol V - contactV - V - voltage over the contact
 * @symbol T_0 - bulkC - C - temperature of the parts
 * @symbol T_m - result - C - temperature of the spot
 * @domain contactV: at least 0
 * @domain bulkC: above -273.15
 * @throws DomainError outside the domain
 * @example
 * contactPeakC({ contactV: 0.05, bulkC: 40 }) // 78.38
 * @source Holm, Electric Contacts, 1967: voltage and temperature relation (from memory)
 */
export function contactPeakC(i: { readonly contactV: number; readonly bulkC: number }): number {
  const V = requireNotNegative('contactV', i.contactV)
  const bulk = requireTemperature('bulkC', i.bulkC) - absoluteZeroC
  return requireFiniteResult('contactV', V, Math.hypot(V / (2 * Math.sqrt(lorenzV2PerK2)), bulk) + absoluteZeroC)
}
