import { DomainError, requireFinite, requireFiniteResult, requirePositive } from '../errors/index.ts'
import { type MetalName, metal } from '../materials/index.ts'
import { conductorDefaults } from './conductorDefaults.ts'

/** Square metres in a square millimetre. */
const m2PerMm2 = 1e-6

/**
 * Mass of the bare metal of a metre of conductor: the reading of a scale for a stripped length.
 *
 * @equation m' = D A K
 * @symbol D - material - kg/m3 - density of the metal, its nominal
 * @symbol A - areaMm2 - mm2 - area of the conductor, square to its strands
 * @symbol K - layFactor - 1 - length of a strand over length of the wire
 * @symbol m' - result - kg/m - mass per metre of wire
 * @domain areaMm2: above 0
 * @domain optional layFactor: at least 1
 * @throws DomainError outside the domain
 * @throws UnknownEntryError for a metal that the table does not hold
 * @example
 * massKgPerM({ areaMm2: 1.5, material: 'annealed-copper', layFactor: 1.02 }) // 0.013602
 * @source geometry; ASTM B496 for the density of copper and the increment of the lay
 */
export function massKgPerM(i: { readonly areaMm2: number; readonly material: MetalName; readonly layFactor?: number }): number {
  requirePositive('areaMm2', i.areaMm2)
  const factor = requireFinite('layFactor', i.layFactor ?? conductorDefaults.layFactor)
  if (factor < 1) throw new DomainError('layFactor', factor, '1 or above: no strand is shorter than its wire')
  return requireFiniteResult('areaMm2', i.areaMm2, metal(i.material).densityKgPerM3.nominal * m2PerMm2 * i.areaMm2 * factor)
}
