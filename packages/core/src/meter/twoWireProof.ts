import { requireFinite, requireFiniteResult, requireNotNegative } from '../errors/index.ts'
import { type ProofVerdict, proofVerdict } from './proofVerdict.ts'
import { readingDefaults } from './readingDefaults.ts'
import { accuracyBound } from './readingInterval.ts'

/**
 * Whether a two-lead resistance reading proves that a joint stays within its allowed drop at the working current.
 *
 * The ends are not clipped. A hand meter's smallest reading is often far above a good joint; then it cannot tell.
 *
 * @equation a = |r| p/100 + n q; V_low = I (r - r_0 - a - b); V_high = I (r - r_0 + a + b)
 * @symbol r - readingOhm - ohm - as shown
 * @symbol p - meter.percentOfReading - % - of the reading, from the meter's accuracy
 * @symbol n - meter.counts - 1 - last digits added by the meter's accuracy
 * @symbol q - meter.resolutionOhm - ohm - size of one count on the range in use
 * @symbol r_0 - meter.leadOhm - ohm - reading with the tips held together
 * @symbol b - meter.leadUncertaintyOhm - ohm - half width of that null
 * @symbol I - currentA - A - working current
 * @symbol V - result - V - drop at the working current, low and high, with the verdict on allowedDropV
 * @domain readingOhm: finite
 * @domain meter.percentOfReading: at least 0
 * @domain meter.counts: at least 0
 * @domain meter.resolutionOhm: at least 0
 * @domain optional meter.leadOhm: at least 0
 * @domain optional meter.leadUncertaintyOhm: at least 0
 * @domain currentA: at least 0
 * @domain allowedDropV: at least 0
 * @throws DomainError outside the domain
 * @example
 * twoWireProof({ readingOhm: 0.3, meter: { percentOfReading: 0.5, counts: 3, resolutionOhm: 0.1, leadOhm: 0.2, leadUncertaintyOhm: 0.1 }, currentA: 4.2, allowedDropV: 0.05 }) // { verdict: "cannot tell", dropLowV: -1.2663, dropHighV: 2.1063 }
 * @source JCGM 106:2012, guarded acceptance and guarded rejection; Ohm's law
 */
export function twoWireProof(i: {
  readonly readingOhm: number
  readonly meter: {
    readonly percentOfReading: number
    readonly counts: number
    readonly resolutionOhm: number
    readonly leadOhm?: number
    readonly leadUncertaintyOhm?: number
  }
  readonly currentA: number
  readonly allowedDropV: number
}): { readonly verdict: ProofVerdict; readonly dropLowV: number; readonly dropHighV: number } {
  const r = requireFinite('readingOhm', i.readingOhm)
  const p = requireNotNegative('meter.percentOfReading', i.meter?.percentOfReading)
  const { leadOhm = readingDefaults.leadOhm, leadUncertaintyOhm = readingDefaults.leadUncertaintyOhm } = i.meter
  const n = requireNotNegative('meter.counts', i.meter.counts)
  const q = requireNotNegative('meter.resolutionOhm', i.meter.resolutionOhm)
  const r0 = requireNotNegative('meter.leadOhm', leadOhm)
  const b = requireNotNegative('meter.leadUncertaintyOhm', leadUncertaintyOhm)
  const current = requireNotNegative('currentA', i.currentA)
  const allowedV = requireNotNegative('allowedDropV', i.allowedDropV)
  const halfWidth = accuracyBound(r, p, n, q) + b
  // Adding 0 turns the -0 of a current of 0 into 0.
  const dropLowV = requireFiniteResult('readingOhm', r, current * (r - r0 - halfWidth) + 0)
  const dropHighV = requireFiniteResult('readingOhm', r, current * (r - r0 + halfWidth) + 0)
  return { verdict: proofVerdict(dropLowV, dropHighV, allowedV), dropLowV, dropHighV }
}
