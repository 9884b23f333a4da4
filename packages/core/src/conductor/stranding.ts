import { requireFiniteResult, requirePositive, requireWhole } from '../errors/index.ts'

/** Overall diameter in strands of one to four full layers round a centre strand: 1 + 2 per layer. */
const concentricDiameters: Readonly<Record<number, number>> = { 1: 1, 7: 3, 19: 5, 37: 7 }
/** Bunched strands lie at random and fill three quarters of their circle: sqrt(n/0.75) = 1.155 sqrt(n) strands across. */
const bunchedDiameters = 1.155

/**
 * Metal area of a stranded conductor.
 *
 * Voids between the strands do not count.
 *
 * @equation A = n * pi/4 * d^2
 * @symbol n - strandCount - 1 - number of strands
 * @symbol d - strandDiameterMm - mm - diameter of one strand
 * @symbol A - result - mm2 - area of metal, square to the strands
 * @domain strandCount: whole at least 1
 * @domain strandDiameterMm: above 0
 * @throws DomainError outside the domain
 * @example
 * strandedAreaMm2({ strandCount: 16, strandDiameterMm: 0.2 }) // 0.50265
 * @source derived: geometry
 */
export function strandedAreaMm2(i: { readonly strandCount: number; readonly strandDiameterMm: number }): number {
  requireWhole('strandCount', i.strandCount, 1)
  requirePositive('strandDiameterMm', i.strandDiameterMm)
  return requireFiniteResult('strandDiameterMm', i.strandDiameterMm, i.strandCount * (Math.PI / 4) * i.strandDiameterMm ** 2)
}

/**
 * Overall diameter of a bare stranded conductor: concentric for 1, 7, 19 and 37 strands, else bunched.
 * For two to six strands the bunched rule is only rough: two strands side by side measure 1.63 to 2 strands across.
 *
 * @equation D = (1, 3, 5 or 7) d for n = 1, 7, 19, 37; else D = 1.155 d sqrt(n)
 * @symbol n - strandCount - 1 - number of strands
 * @symbol d - strandDiameterMm - mm - diameter of one strand
 * @symbol D - result - mm - diameter of the circle round all strands
 * @domain strandCount: whole at least 1
 * @domain strandDiameterMm: above 0
 * @throws DomainError outside the domain
 * @example
 * strandedDiameterMm({ strandCount: 19, strandDiameterMm: 0.29 }) // 1.45
 * @source geometry of full layers round a centre strand; bunched: three quarters of the circle is metal, common practice
 */
export function strandedDiameterMm(i: { readonly strandCount: number; readonly strandDiameterMm: number }): number {
  requireWhole('strandCount', i.strandCount, 1)
  requirePositive('strandDiameterMm', i.strandDiameterMm)
  const across = concentricDiameters[i.strandCount] ?? bunchedDiameters * Math.sqrt(i.strandCount)
  return requireFiniteResult('strandDiameterMm', i.strandDiameterMm, across * i.strandDiameterMm)
}
