import { DomainError, requirePositive } from '../errors/index.ts'
import { leastPressurePa } from './constants.ts'

/** Requires an absolute pressure at which air round a wire is a continuum. */
export function requireAirPressure(parameter: string, pressurePa: number): number {
  requirePositive(parameter, pressurePa)
  if (pressurePa < leastPressurePa) {
    const allowed = `at least ${leastPressurePa}: in thinner air convection fades, and still-air correlations would promise too much`
    throw new DomainError(parameter, pressurePa, allowed)
  }
  return pressurePa
}
