import { resistanceAtTemperatureOhm } from '../conductor/index.ts'
import { DomainError } from '../errors/index.ts'
import { type MetalName, metal } from '../materials/index.ts'
import { circuitDefaults } from './circuitDefaults.ts'

/**
 * The resistance of a winding at another temperature: cold it draws more, hot it pulls less.
 *
 * @equation R_2 = R (1 + alpha (T_2 - 20))/(1 + alpha (T - 20))
 * @symbol R - resistanceOhm - ohm - as measured
 * @symbol T - atC - C - temperature of the winding while it was measured
 * @symbol T_2 - wantedC - C - temperature that is asked for
 * @symbol alpha - material - 1/K - temperature coefficient of the metal at 20 C
 * @symbol R_2 - result - ohm - at the wanted temperature
 * @domain resistanceOhm: at least 0
 * @domain atC: from -60 to 300
 * @domain wantedC: from -60 to 300
 * @throws DomainError outside the domain, and above the metal's melting point
 * @throws UnknownEntryError for a metal that the table does not hold
 * @example
 * coilResistanceAtOhm({ resistanceOhm: 85, atC: 23, wantedC: 85, material: 'annealed-copper' }) // 105.4698
 * @source IEC 60028 for copper, temperature coefficient rule
 */
export function coilResistanceAtOhm(i: {
  readonly resistanceOhm: number
  readonly atC: number
  readonly wantedC: number
  readonly material?: MetalName
}): number {
  const { material = circuitDefaults.coilMaterial, resistanceOhm, atC, wantedC } = i
  const { temperatureCoefficient20PerK, meltingC } = metal(material)
  const result = resistanceAtTemperatureOhm({ resistanceOhm, atC, wantedC, coefficientPerK: temperatureCoefficient20PerK.nominal })
  requireBelowMelting('atC', atC, meltingC.nominal)
  requireBelowMelting('wantedC', wantedC, meltingC.nominal)
  return result
}

function requireBelowMelting(parameter: string, temperatureC: number, meltingC: number): void {
  if (temperatureC > meltingC) throw new DomainError(parameter, temperatureC, `at most ${meltingC}, where the material melts`)
}
