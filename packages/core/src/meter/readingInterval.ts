import { requireFinite, requireFiniteResult, requireNotNegative } from '../errors/index.ts'
import { readingDefaults } from './readingDefaults.ts'

/** Standard uncertainty of a rectangular distribution: half width over the square root of 3 (GUM 4.3.7). */
const rectangularDivisor = Math.sqrt(3)

/** Half width from a meter's accuracy: a percentage of the reading plus a number of counts. */
export function accuracyBound(reading: number, percentOfReading: number, counts: number, resolution: number): number {
  return (Math.abs(reading) * percentOfReading) / 100 + counts * resolution
}

/**
 * The interval of a meter's reading that contains the true value, with accuracy, counts and test leads taken into account.
 *
 * The ends are not clipped: a low end below zero means that the meter cannot tell the value from zero. Gain error, counts and the null are taken as bounds and added; the standard uncertainty takes reading and null as independent.
 *
 * @equation a = |r| p/100 + n q; low = r - r_0 - (a + b); high = r - r_0 + (a + b); u = sqrt((a^2 + b^2)/3)
 * @symbol r - reading - ohm - as shown, or in the reading's own unit
 * @symbol p - percentOfReading - % - of the reading, from the meter's accuracy
 * @symbol n - counts - 1 - last digits added by the meter's accuracy
 * @symbol q - resolution - ohm - size of one count on the range in use
 * @symbol r_0 - leadOhm - ohm - reading with the tips held together
 * @symbol b - leadUncertaintyOhm - ohm - half width of that null
 * @symbol u - result - ohm - standard uncertainty, beside the low and high end
 * @domain reading: finite
 * @domain percentOfReading: at least 0
 * @domain counts: at least 0
 * @domain resolution: at least 0
 * @domain optional leadOhm: at least 0
 * @domain optional leadUncertaintyOhm: at least 0
 * @throws DomainError outside the domain
 * @example
 * readingInterval({ reading: 0.5, percentOfReading: 0.5, counts: 3, resolution: 0.1, leadOhm: 0.2, leadUncertaintyOhm: 0.1 }) // { low: -0.1025, high: 0.7025, standardUncertainty: 0.18394 }
 * @source JCGM 100:2008 (GUM), 4.3.7, rectangular distribution within bounds
 */
export function readingInterval(i: {
  readonly reading: number
  readonly percentOfReading: number
  readonly counts: number
  readonly resolution: number
  readonly leadOhm?: number
  readonly leadUncertaintyOhm?: number
}): { readonly low: number; readonly high: number; readonly standardUncertainty: number } {
  const { leadOhm = readingDefaults.leadOhm, leadUncertaintyOhm = readingDefaults.leadUncertaintyOhm } = i
  const r = requireFinite('reading', i.reading)
  const p = requireNotNegative('percentOfReading', i.percentOfReading)
  const n = requireNotNegative('counts', i.counts)
  const q = requireNotNegative('resolution', i.resolution)
  const r0 = requireNotNegative('leadOhm', leadOhm)
  const b = requireNotNegative('leadUncertaintyOhm', leadUncertaintyOhm)
  const a = accuracyBound(r, p, n, q)
  const standardUncertainty = requireFiniteResult('reading', r, Math.sqrt(a * a + b * b) / rectangularDivisor)
  return { low: requireFiniteResult('reading', r, r - r0 - (a + b)), high: requireFiniteResult('reading', r, r - r0 + (a + b)), standardUncertainty }
}
