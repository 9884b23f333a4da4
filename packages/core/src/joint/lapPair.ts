import { DomainError, requireNotNegative, requirePositive } from '../errors/index.ts'

/** Two conductors side by side over an overlap: the current enters the first at its start and leaves the second at its end. */
export interface LapPair {
  readonly overlapMm: number
  readonly conductorsOhmPerM: readonly [number, number]
  readonly interfaceSPerM: number
}

/** Millimetres in a metre. */
export const mmPerM = 1000

/** Smallest normal double; smaller products lose digits and are factored instead. */
export const smallestNormal = 2 ** -1022

/** Below this u the next term, of order u^2, is below double precision, so the short-overlap limit is exact. */
export const shortestCoupling = 1e-9

/** Requires two resistances per metre of 0 or above; 0 is a perfect conductor. */
export function requireConductors(pair: readonly [number, number]): readonly [number, number] {
  if (!Array.isArray(pair) || pair.length !== 2)
    throw new DomainError('conductorsOhmPerM', pair, 'two numbers, one a conductor', undefined, pair === undefined ? 'missing' : 'wrong-choice')
  requireNotNegative('conductorsOhmPerM.0', pair[0])
  requireNotNegative('conductorsOhmPerM.1', pair[1])
  return pair
}

/** Checks the input of an overlap. */
export function requireLapPair(i: LapPair): void {
  requirePositive('overlapMm', i.overlapMm)
  requireConductors(i.conductorsOhmPerM)
  requirePositive('interfaceSPerM', i.interfaceSPerM)
}

/** lambda = sqrt(g s) in 1/m, also where the product g s would overflow or lose digits. */
export function couplingPerM(g: number, s: number): number {
  const product = g * s
  return product >= smallestNormal && product < Infinity ? Math.sqrt(product) : Math.sqrt(g) * Math.sqrt(s)
}
