import { DomainError, requireChoice, requireFiniteResult, requireNotNegative } from '../errors/index.ts'
import type { Interval } from '../materials/index.ts'
import { type ProofVerdict, proofVerdict } from './proofVerdict.ts'

/**
 * What the tone of a continuity tester proves about the drop at the working current.
 *
 * A tone says only "below the threshold", silence only "not below it", and the threshold itself is known within an interval.
 * Silence gives no upper bound: dropHighV is null and the proof never passes.
 *
 * @equation tone: 0 <= V <= I R_2; silence: V >= I R_1
 * @symbol R_1 - toneBelowOhm.low - ohm - below this it surely tones
 * @symbol R_2 - toneBelowOhm.high - ohm - above this it surely stays silent
 * @symbol I - currentA - A - working current
 * @symbol V - result - V - drop at the working current, low and high, with the verdict on allowedDropV
 * @domain toneBelowOhm.low: at least 0
 * @domain toneBelowOhm.high: at least 0
 * @domain currentA: at least 0
 * @domain allowedDropV: at least 0
 * @throws DomainError outside the domain, or where the high end of the threshold lies below its low end
 * @example
 * continuityProof({ toneBelowOhm: { low: 0, high: 30 }, toned: true, currentA: 4.2, allowedDropV: 0.05 }) // { verdict: "cannot tell", dropLowV: 0, dropHighV: 126 }
 * @source Ohm's law; JCGM 106:2012, guarded acceptance and guarded rejection
 */
export function continuityProof(i: { readonly toneBelowOhm: Interval; readonly toned: boolean; readonly currentA: number; readonly allowedDropV: number }): {
  readonly verdict: ProofVerdict
  readonly dropLowV: number
  readonly dropHighV: number | null
} {
  const surelyTones = requireNotNegative('toneBelowOhm.low', i.toneBelowOhm?.low)
  const surelySilent = requireNotNegative('toneBelowOhm.high', i.toneBelowOhm.high)
  if (surelySilent < surelyTones)
    throw new DomainError('toneBelowOhm.high', surelySilent, `at least toneBelowOhm.low, ${surelyTones}`, undefined, 'contradiction')
  const toned = requireChoice('toned', i.toned, [true, false])
  const current = requireNotNegative('currentA', i.currentA)
  const allowed = requireNotNegative('allowedDropV', i.allowedDropV)
  if (toned) {
    const dropHighV = requireFiniteResult('currentA', current, current * surelySilent)
    return { verdict: proofVerdict(0, dropHighV, allowed), dropLowV: 0, dropHighV }
  }
  const dropLowV = requireFiniteResult('currentA', current, current * surelyTones)
  return { verdict: proofVerdict(dropLowV, Infinity, allowed), dropLowV, dropHighV: null }
}
