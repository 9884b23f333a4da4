import { requireNotNegative, requirePositive, requireWhole } from '../errors/index.ts'

/**
 * Metal left in a stranded conductor after strands broke and corrosion ate into the others all round.
 *
 * @equation A' = A (n - b)/n * (1 - 2 c/d)^2, d = sqrt(4 A/(pi n)); 0 where c is d/2 or more
 * @symbol A - areaMm2 - mm2 - area when new
 * @symbol n - strandCount - 1 - strands when new, all alike
 * @symbol b - brokenStrands - 1 - strands broken
 * @symbol c - corrodedDepthMm - mm - depth lost all round each strand that still holds
 * @symbol A' - result - mm2 - area left
 * @domain areaMm2: above 0
 * @domain strandCount: whole at least 1
 * @domain brokenStrands: whole from 0 to 19
 * @domain corrodedDepthMm: at least 0
 * @throws DomainError outside the domain, and for more broken strands than there are
 * @example
 * remainingAreaMm2({ areaMm2: 1, strandCount: 19, brokenStrands: 3, corrodedDepthMm: 0.01 }) // 0.71701
 * @source geometry
 */
export function remainingAreaMm2(i: {
  readonly areaMm2: number
  readonly strandCount: number
  readonly brokenStrands: number
  readonly corrodedDepthMm: number
}): number {
  requirePositive('areaMm2', i.areaMm2)
  requireWhole('strandCount', i.strandCount, 1)
  requireWhole('brokenStrands', i.brokenStrands, 0, i.strandCount)
  requireNotNegative('corrodedDepthMm', i.corrodedDepthMm)
  const strandDiameterMm = Math.sqrt((4 / Math.PI) * (i.areaMm2 / i.strandCount))
  const leftShare = strandDiameterMm > 2 * i.corrodedDepthMm ? 1 - (2 * i.corrodedDepthMm) / strandDiameterMm : 0
  return i.areaMm2 * ((i.strandCount - i.brokenStrands) / i.strandCount) * leftShare ** 2
}
