import { DomainError, requireAboveUpTo, requireFiniteResult, requireNotNegative, requirePositive } from '../errors/index.ts'
import { crimpDefaults } from './crimpDefaults.ts'

/**
 * The crimp height that compresses the strands by a given fraction, between dies of a given width.
 *
 * The barrel's metal keeps its area and the voids are closed. The height printed by the terminal's maker takes precedence.
 *
 * @equation h = (A_b + A (1 - c))/(w s)
 * @symbol A - conductorAreaMm2 - mm2 - metal area of the strands before the crimp
 * @symbol A_b - barrelMetalAreaMm2 - mm2 - section of the barrel's own metal
 * @symbol c - compressionFraction - 1 - share of the strands' area that is squeezed out
 * @symbol w - crimpWidthMm - mm - width of the crimped section
 * @symbol s - shapeFactor else crimpDefaults.shapeFactor - 1 - area of the section over width times height
 * @symbol h - result - mm - height of the crimped section
 * @domain conductorAreaMm2: above 0
 * @domain barrelMetalAreaMm2: at least 0
 * @domain compressionFraction: from 0 below 1
 * @domain crimpWidthMm: above 0
 * @domain optional shapeFactor: above 0 up to 1
 * @throws DomainError outside the domain
 * @example
 * crimpHeightMm({ conductorAreaMm2: 1, barrelMetalAreaMm2: 1.6, compressionFraction: 0.18, crimpWidthMm: 1.8, shapeFactor: 0.9 }) // 1.49383
 * @source derived: conservation of the barrel's section, and the definition of the compression
 */
export function crimpHeightMm(i: {
  readonly conductorAreaMm2: number
  readonly barrelMetalAreaMm2: number
  readonly compressionFraction: number
  readonly crimpWidthMm: number
  readonly shapeFactor?: number
}): number {
  const { shapeFactor = crimpDefaults.shapeFactor } = i
  const strandsMm2 = requirePositive('conductorAreaMm2', i.conductorAreaMm2)
  const barrelMm2 = requireNotNegative('barrelMetalAreaMm2', i.barrelMetalAreaMm2)
  const c = requireNotNegative('compressionFraction', i.compressionFraction)
  if (!(c < 1)) throw new DomainError('compressionFraction', c, 'from 0 to below 1')
  const w = requirePositive('crimpWidthMm', i.crimpWidthMm)
  requireAboveUpTo('shapeFactor', shapeFactor, 0, 1)
  return requireFiniteResult('crimpWidthMm', w, (barrelMm2 + strandsMm2 * (1 - c)) / (w * shapeFactor))
}
