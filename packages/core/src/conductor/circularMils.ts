import { requireFiniteResult, requirePositive } from '../errors/index.ts'

/** Side of a mil in mm: a thousandth of an inch, exact since the inch is 25.4 mm. */
const milMm = 0.0254
/** A circular mil is the area of a circle one mil across, in mm2. */
const circularMilMm2 = (Math.PI / 4) * milMm ** 2

/**
 * Area in circular mils, the unit of thick wire in inch tables.
 *
 * @equation M = A/(pi/4 * 0.0254^2)
 * @symbol A - areaMm2 - mm2 - area
 * @symbol M - result - circular mil - area
 * @domain areaMm2: above 0
 * @throws DomainError outside the domain
 * @example
 * mm2ToCircularMils(1) // 1973.5
 * @source definition: the area of a circle 0.001 in across
 */
export function mm2ToCircularMils(areaMm2: number): number {
  return requireFiniteResult('areaMm2', areaMm2, requirePositive('areaMm2', areaMm2) / circularMilMm2)
}

/**
 * Area in mm2 of a size given in circular mils; 1 kcmil is 1000 of them.
 *
 * @equation A = M * pi/4 * 0.0254^2
 * @symbol M - circularMils - circular mil - area
 * @symbol A - result - mm2 - area
 * @domain circularMils: above 0
 * @throws DomainError outside the domain
 * @example
 * circularMilsToMm2(250000) // 126.68
 * @source definition: the area of a circle 0.001 in across
 */
export function circularMilsToMm2(circularMils: number): number {
  return requirePositive('circularMils', circularMils) * circularMilMm2
}
