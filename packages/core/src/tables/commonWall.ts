import { requirePositive } from '../errors/index.ts'
import { commonWalls } from './commonWalls.ts'

/**
 * Common wall of a single wire's insulation by its conductor area, where nobody measured it: from memory.
 *
 * @equation row of commonWalls
 * @symbol A - areaMm2 - mm2 - area of the conductor
 * @symbol w - result - mm - wall of the insulation
 * @domain areaMm2: above 0
 * @throws DomainError outside the domain
 * @example
 * commonWallMm(1.5) // 0.7
 * @source walls of general-purpose vehicle and boat wire (from memory)
 */
export function commonWallMm(areaMm2: number): number {
  requirePositive('areaMm2', areaMm2)
  for (const { largestAreaMm2, wallMm } of commonWalls.rows) if (largestAreaMm2 === null || areaMm2 <= largestAreaMm2) return wallMm
  throw new RangeError('the last row of commonWalls is open')
}
