import { DomainError, requireFinite, requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'
import type { MetalName } from '../materials/index.ts'
import { conductorDefaults } from './conductorDefaults.ts'
import { resistivityOhmM } from './resistivity.ts'

/** Square millimetres in a square metre. */
const mm2PerM2 = 1e6
const straight = conductorDefaults.layFactor

/** One combined check keeps the common case fast; on failure the checks below find the wrong parameter. */
function resistance(areaMm2: number, lengthM: number, material: MetalName, temperatureC: number, layFactor: number): number {
  const numbers = typeof areaMm2 === 'number' && typeof lengthM === 'number' && typeof layFactor === 'number'
  if (numbers && areaMm2 > 0 && areaMm2 < Infinity && lengthM >= 0 && layFactor >= 1) {
    const R = lengthM * ((resistivityOhmM(material, temperatureC) * layFactor * mm2PerM2) / areaMm2)
    if (R < Infinity) return R
  }
  requireNotNegative('lengthM', lengthM)
  requirePositive('areaMm2', areaMm2)
  if (!(requireFinite('layFactor', layFactor) >= 1)) throw new DomainError('layFactor', layFactor, '1 or above: no strand is shorter than its wire')
  const perMetre = requireFiniteResult('areaMm2', areaMm2, (resistivityOhmM(material, temperatureC) * layFactor * mm2PerM2) / areaMm2)
  return requireFiniteResult('lengthM', lengthM, lengthM * perMetre)
}

/**
 * Resistance of a metre of conductor at its temperature.
 *
 * @equation R' = rho K/A
 * @symbol rho - material - ohm m - resistivity of the metal at the temperature
 * @symbol T - temperatureC - C - temperature of the metal
 * @symbol K - layFactor - 1 - length of a strand over length of the wire
 * @symbol A - areaMm2 - mm2 - area of the conductor, square to its strands
 * @symbol R' - result - ohm/m - resistance per metre of wire
 * @domain areaMm2: above 0
 * @domain temperatureC: from -60 to 300
 * @domain optional layFactor: at least 1
 * @throws DomainError outside the domain
 * @throws UnknownEntryError for a metal that the table does not hold
 * @example
 * resistanceOhmPerM({ areaMm2: 1.5, material: 'annealed-copper', temperatureC: 20, layFactor: 1.02 }) // 0.011724
 * @source IEC 60028 for copper, temperature coefficient rule; geometry of the lay
 */
export function resistanceOhmPerM(i: {
  readonly areaMm2: number
  readonly material: MetalName
  readonly temperatureC: number
  readonly layFactor?: number
}): number {
  return resistance(i.areaMm2, 1, i.material, i.temperatureC, i.layFactor ?? straight)
}

/**
 * Resistance of a run of conductor at its temperature; one way, so a circuit needs its return as well.
 *
 * @equation R = rho K L/A
 * @symbol rho - material - ohm m - resistivity of the metal at the temperature
 * @symbol T - temperatureC - C - temperature of the metal
 * @symbol K - layFactor - 1 - length of a strand over length of the wire
 * @symbol L - lengthM - m - length of the wire
 * @symbol A - areaMm2 - mm2 - area of the conductor, square to its strands
 * @symbol R - result - ohm - resistance from end to end
 * @domain areaMm2: above 0
 * @domain lengthM: at least 0
 * @domain temperatureC: from -60 to 300
 * @domain optional layFactor: at least 1
 * @throws DomainError outside the domain
 * @throws UnknownEntryError for a metal that the table does not hold
 * @example
 * resistanceOhm({ areaMm2: 1, lengthM: 10, material: 'annealed-copper', temperatureC: 20, layFactor: 1 }) // 0.17241
 * @source IEC 60028 for copper, temperature coefficient rule; geometry of the lay
 */
export function resistanceOhm(i: {
  readonly areaMm2: number
  readonly lengthM: number
  readonly material: MetalName
  readonly temperatureC: number
  readonly layFactor?: number
}): number {
  return resistance(i.areaMm2, i.lengthM, i.material, i.temperatureC, i.layFactor ?? straight)
}
