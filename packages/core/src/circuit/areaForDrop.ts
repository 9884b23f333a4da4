import { resistivityOhmM } from '../conductor/index.ts'
import { requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'
import type { MetalName } from '../materials/index.ts'

/** Square millimetres in a square metre. */
const mm2PerM2 = 1e6

/** Common input of both sizing functions: the run, its current and the allowed drop. */
interface DropRun {
  readonly currentA: number
  readonly outLengthM: number
  readonly returnLengthM: number
  readonly allowedDropV: number
  readonly material: MetalName
  readonly temperatureC: number
}

/** Drop times area of the run, in V mm2: the drop in a conductor of 1 mm2. */
export function dropTimesAreaVMm2(i: DropRun): number {
  const { currentA, outLengthM, returnLengthM } = i
  const numbers = typeof currentA === 'number' && typeof outLengthM === 'number' && typeof returnLengthM === 'number'
  // One combined check keeps the common case fast; on failure the checks below find the wrong parameter.
  if (numbers && currentA >= 0 && outLengthM >= 0 && returnLengthM >= 0) {
    const V = currentA * (outLengthM + returnLengthM) * resistivityOhmM(i.material, i.temperatureC) * mm2PerM2
    if (V < Infinity) return V
  }
  requireNotNegative('currentA', currentA)
  requireNotNegative('outLengthM', outLengthM)
  requireNotNegative('returnLengthM', returnLengthM)
  return requireFiniteResult('currentA', currentA, Infinity)
}

/**
 * The conductor area at which feed and return together drop exactly the allowed voltage.
 *
 * Subtract the drop of joints and contacts from the budget first; add lay and the standard's tolerance.
 *
 * @equation A = rho I (L_out + L_return)/V
 * @symbol rho - material - ohm m - resistivity of the metal at the temperature
 * @symbol T - temperatureC - C - temperature of the conductor
 * @symbol I - currentA - A - load current
 * @symbol L_out - outLengthM - m - wire from the source to the load
 * @symbol L_return - returnLengthM - m - wire back; 0 where a chassis returns the current
 * @symbol V - allowedDropV - V - what the wire may lose
 * @symbol A - result - mm2 - area of each of the two wires
 * @domain currentA: at least 0
 * @domain outLengthM: at least 0
 * @domain returnLengthM: at least 0
 * @domain allowedDropV: above 0
 * @domain temperatureC: from -60 to 300
 * @throws DomainError outside the domain, and above the metal's melting point
 * @throws UnknownEntryError for a metal that the table does not hold
 * @example
 * areaForDropMm2({ currentA: 4.2, outLengthM: 3, returnLengthM: 3, allowedDropV: 0.36, material: 'annealed-copper', temperatureC: 20 }) // 1.20687
 * @source Ohm's law with the resistance of a uniform conductor
 */
export function areaForDropMm2(i: {
  readonly currentA: number
  readonly outLengthM: number
  readonly returnLengthM: number
  readonly allowedDropV: number
  readonly material: MetalName
  readonly temperatureC: number
}): number {
  const allowedDropV = requirePositive('allowedDropV', i.allowedDropV)
  return requireFiniteResult('allowedDropV', allowedDropV, dropTimesAreaVMm2(i) / allowedDropV)
}
