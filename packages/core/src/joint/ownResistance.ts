import { DomainError, requireFiniteResult, requireNotNegative } from '../errors/index.ts'
import { referenceC } from './jointModel.ts'
import { jointDefaults } from './jointSite.ts'

/** The joint's own resistance at 20 degC and its temperature coefficient, checked against the ambient temperature. */
export function jointResistance(ohm: number, coefficientPerK: number | undefined, ambientC: number): { readonly R: number; readonly a: number } {
  const R = requireNotNegative('jointResistanceOhm', ohm)
  const a = coefficientPerK === undefined ? jointDefaults.jointResistanceCoefficientPerK : requireNotNegative('jointResistanceCoefficientPerK', coefficientPerK)
  if (!(requireFiniteResult('jointResistanceCoefficientPerK', a, 1 + a * (ambientC - referenceC)) > 0))
    throw new DomainError(
      'jointResistanceCoefficientPerK',
      a,
      `below ${1 / (referenceC - ambientC)}: at ${ambientC} °C the joint's resistance would be negative`,
      undefined,
      'contradiction',
    )
  return { R, a }
}

/** Heat generated in the joint itself, in W. */
export function ownHeatW(currentA: number, R: number, a: number, jointC: number): number {
  return currentA * currentA * R * (1 + a * (jointC - referenceC))
}
