import { requireChoice, requireFiniteResult, requirePositive } from '../errors/index.ts'

/** First root of the frequency equation of a beam: pinned at both ends, and held at both ends (cos k cosh k = 1). */
const firstRoot = { pinned: Math.PI, fixed: 4.730040744862704 } as const
/** Unit factor: sqrt(N mm2 / (kg/m)) is 1e-3 m2/s and mm2 in the denominator 1e-6 m2, which leaves 1000. */
const mmPerM = 1000

/**
 * The lowest frequency of a wire between two supports: a machine or engine running near it shakes the wire to pieces.
 *
 * Stiffness alone, no pull and no sag; a real tie lies between pinned and fixed, and strands that slide make a wire softer than a solid of its size.
 *
 * @equation f = k^2/(2 pi L^2) sqrt(EI/m)
 * @symbol k - ends - 1 - first root of the beam: pi where pinned, 4.7300 where fixed
 * @symbol L - spanMm - mm - free length between the supports
 * @symbol EI - stiffnessNMm2 - N mm2 - bending stiffness
 * @symbol m - massKgPerM - kg/m - mass per length, insulation and all
 * @symbol f - result - Hz - lowest natural frequency
 * @domain spanMm: above 0
 * @domain stiffnessNMm2: above 0
 * @domain massKgPerM: above 0
 * @throws DomainError outside the domain, and for ends that are neither pinned nor fixed
 * @example
 * freeSpanFrequencyHz({ spanMm: 300, stiffnessNMm2: 2000, massKgPerM: 0.012, ends: 'pinned' }) // 7.1253
 * @source Euler-Bernoulli beam, from memory; the root of the fixed beam solved here
 */
export function freeSpanFrequencyHz(i: {
  readonly spanMm: number
  readonly stiffnessNMm2: number
  readonly massKgPerM: number
  readonly ends: 'pinned' | 'fixed'
}): number {
  const L = requirePositive('spanMm', i.spanMm)
  const EI = requirePositive('stiffnessNMm2', i.stiffnessNMm2)
  const m = requirePositive('massKgPerM', i.massKgPerM)
  const k = firstRoot[requireChoice('ends', i.ends, ['pinned', 'fixed'])]
  // Separate square roots: the quotient alone may overflow where the frequency does not.
  const f = (((k * k) / (2 * Math.PI)) * mmPerM * (Math.sqrt(EI) / Math.sqrt(m))) / L / L
  return requireFiniteResult('spanMm', L, f)
}
