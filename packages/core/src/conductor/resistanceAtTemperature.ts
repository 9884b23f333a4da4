import { DomainError, requireBetween, requireFiniteResult, requireNotNegative } from '../errors/index.ts'
import { conductorDefaults } from './conductorDefaults.ts'

const coldestC = -60
const hottestC = 300

/**
 * A measured resistance converted to another temperature, with any temperature coefficient and its base temperature.
 * IEC 60228 takes readings to 20 degC with 0.004 per kelvin; physics handbooks state coefficients at 0 degC.
 *
 * A straight line: within about 1 % for copper from -60 to 300 °C.
 *
 * @equation R2 = R1 (1 + alpha (T2 - Tb))/(1 + alpha (T1 - Tb))
 * @symbol R1 - resistanceOhm - ohm - resistance as measured
 * @symbol T1 - atC - C - its temperature
 * @symbol T2 - wantedC - C - temperature wanted
 * @symbol alpha - coefficientPerK - 1/K - temperature coefficient at the base
 * @symbol Tb - coefficientAtC else conductorDefaults.temperatureC - C - base of the coefficient
 * @symbol R2 - result - ohm - resistance at T2
 * @domain resistanceOhm: at least 0
 * @domain atC: from -60 to 300
 * @domain wantedC: from -60 to 300
 * @domain coefficientPerK: at least 0
 * @domain optional coefficientAtC: from -60 to 300
 * @throws DomainError outside the domain, and for a coefficient that leaves no resistance at one of the temperatures
 * @example
 * resistanceAtTemperatureOhm({ resistanceOhm: 100, atC: 0, wantedC: 70, coefficientPerK: 0.0043, coefficientAtC: 0 }) // 130.1
 * @source IEC 60028, temperature coefficient rule; IEC 60228:2004, temperature correction
 */
export function resistanceAtTemperatureOhm(i: {
  readonly resistanceOhm: number
  readonly atC: number
  readonly wantedC: number
  readonly coefficientPerK: number
  readonly coefficientAtC?: number
}): number {
  requireNotNegative('resistanceOhm', i.resistanceOhm)
  requireBetween('atC', i.atC, coldestC, hottestC)
  requireBetween('wantedC', i.wantedC, coldestC, hottestC)
  requireNotNegative('coefficientPerK', i.coefficientPerK)
  const baseC = requireBetween('coefficientAtC', i.coefficientAtC ?? conductorDefaults.temperatureC, coldestC, hottestC)
  const there = 1 + i.coefficientPerK * (i.atC - baseC)
  const wanted = 1 + i.coefficientPerK * (i.wantedC - baseC)
  if (!(there > 0) || !(wanted > 0))
    throw new DomainError('coefficientPerK', i.coefficientPerK, 'a coefficient that leaves some resistance at "atC" and "wantedC"', undefined, 'contradiction')
  return requireFiniteResult('resistanceOhm', i.resistanceOhm, i.resistanceOhm * (wanted / there))
}
