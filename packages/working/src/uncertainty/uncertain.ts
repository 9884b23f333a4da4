import { DomainError, requireChoice, requireFinite, requireNotNegative, requirePositive } from '@strandwise/core/errors'

/** A value with its uncertainty: a standard uncertainty, a half-width and distribution, or two bounds (rectangular). */
export type Uncertain =
  | { readonly value: number; readonly standardUncertainty: number; readonly degreesOfFreedom?: number }
  | { readonly value: number; readonly halfWidth: number; readonly distribution: 'rectangular' | 'triangular' | 'u-shaped' }
  | { readonly low: number; readonly high: number }

/** An input in the form that both methods use. degreesOfFreedom null means infinite. */
export interface Known {
  readonly name: string
  readonly value: number
  readonly uncertainty: number
  readonly shape: 'normal' | 'rectangular' | 'triangular' | 'u-shaped'
  readonly degreesOfFreedom: number | null
}

/** Half-width over standard uncertainty: sqrt 3, sqrt 6 and sqrt 2 (GUM 4.3.7, 4.3.9 and, for the arcsine, H.1.3.4). */
export const widths = { rectangular: Math.sqrt(3), triangular: Math.sqrt(6), 'u-shaped': Math.SQRT2 } as const

/** Checks an input and converts it to that form. */
export function known(name: string, input: Uncertain): Known {
  const field = (key: string): string => `inputs.${name}.${key}`
  if (typeof input !== 'object' || input === null)
    throw new DomainError(`inputs.${name}`, input, 'a value with its uncertainty, or a low and a high', undefined, 'missing')
  if ('low' in input) {
    const low = requireFinite(field('low'), input.low)
    const high = requireFinite(field('high'), input.high)
    if (high < low) throw new DomainError(field('high'), high, `at least ${field('low')}, ${low}`)
    // Halves are added separately so that the largest doubles don't overflow.
    return { name, value: low / 2 + high / 2, uncertainty: (high / 2 - low / 2) / widths.rectangular, shape: 'rectangular', degreesOfFreedom: null }
  }
  const value = requireFinite(field('value'), input.value)
  if ('halfWidth' in input) {
    const shape = requireChoice(field('distribution'), input.distribution, ['rectangular', 'triangular', 'u-shaped'])
    return { name, value, uncertainty: requireNotNegative(field('halfWidth'), input.halfWidth) / widths[shape], shape, degreesOfFreedom: null }
  }
  const uncertainty = requireNotNegative(field('standardUncertainty'), input.standardUncertainty)
  const { degreesOfFreedom } = input
  if (degreesOfFreedom !== undefined) requirePositive(field('degreesOfFreedom'), degreesOfFreedom)
  return { name, value, uncertainty, shape: 'normal', degreesOfFreedom: degreesOfFreedom ?? null }
}
