import { requireFiniteResult, requireNotNegative, requirePositive, UnknownEntryError } from '../errors/index.ts'
import { type Interval, type Metal, type MetalName, metal, metals } from '../materials/index.ts'

/**
 * Pull force on a crimp sample over the breaking force of its conductor.
 *
 * The low end is for the highest tensile strength of the metal, the high end for the lowest: 0.6 or more at the low end is a sound crimp of an unlisted pair.
 *
 * @equation low = F/(A sigma_high); high = F/(A sigma_low)
 * @symbol F - forceN - N - pull at which the sample gave
 * @symbol A - areaMm2 - mm2 - metal area of the conductor
 * @symbol sigma_high - material - MPa - highest and lowest tensile strength of the metal
 * @symbol low - result - 1 - share of the breaking force, low and high
 * @domain forceN: at least 0
 * @domain areaMm2: above 0
 * @throws DomainError outside the domain
 * @throws UnknownEntryError for a metal that is not known, or whose tensile strength is not
 * @example
 * pullShareOfConductor({ forceN: 89, areaMm2: 0.82, material: 'annealed-copper' }) // { low: 0.425634, high: 0.516841 }
 * @source breaking force of a uniform conductor; the 60 % of an unlisted pair is NASA-STD-8739.4 with change 6
 */
export function pullShareOfConductor(i: { readonly forceN: number; readonly areaMm2: number; readonly material: MetalName }): Interval {
  const { tensileMPa } = metal(i.material)
  if (tensileMPa === null) {
    const known = (Object.values(metals) as readonly Metal[]).filter((one) => one.tensileMPa !== null).map(({ name }) => name)
    throw new UnknownEntryError('material', i.material, known)
  }
  const force = requireNotNegative('forceN', i.forceN)
  const area = requirePositive('areaMm2', i.areaMm2)
  return {
    low: requireFiniteResult('forceN', force, force / (area * tensileMPa.high)),
    high: requireFiniteResult('forceN', force, force / (area * tensileMPa.low)),
  }
}
