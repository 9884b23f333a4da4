import { DomainError, requireBetween } from '../errors/index.ts'
import { type MetalName, metal } from '../materials/index.ts'

/** The linear law holds to about 1 % for copper from -60 to 300 degC. */
const coldestC = -60
const hottestC = 300
/** Reference temperature of the metals' resistivities, in degC. */
const referenceC = 20

/**
 * Resistivity of a conductor metal at its temperature, from the nominal values of the table of metals.
 *
 * @equation rho = rho20 * (1 + alpha20 * (T - 20))
 * @symbol T - temperatureC - C - temperature of the metal
 * @symbol rho20 - material - ohm m - resistivity of the metal at 20 C
 * @symbol alpha20 - material - 1/K - temperature coefficient at 20 C
 * @symbol rho - result - ohm m - resistivity at T
 * @domain temperatureC: from -60 to 300
 * @throws DomainError outside the domain, and above the metal's melting point
 * @throws UnknownEntryError for a metal that the table does not hold
 * @example
 * resistivityOhmM('annealed-copper', 75) // 2.0968e-8
 * @source IEC 60028, temperature coefficient at constant mass; other metals as the table of metals states
 */
export function resistivityOhmM(material: MetalName, temperatureC: number): number {
  const of = metal(material)
  if (typeof temperatureC === 'number' && temperatureC >= coldestC && temperatureC <= hottestC && temperatureC <= of.meltingC.nominal)
    return of.resistivity20OhmM.nominal * (1 + of.temperatureCoefficient20PerK.nominal * (temperatureC - referenceC))
  requireBetween('temperatureC', temperatureC, coldestC, hottestC)
  throw new DomainError('temperatureC', temperatureC, `up to ${of.meltingC.nominal}, where "${material}" melts`)
}
