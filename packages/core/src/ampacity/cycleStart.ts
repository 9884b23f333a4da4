import type { Motion } from './motion.ts'
import { changeAfterK } from './passage.ts'

/** A current and its duration. */
export interface Step {
  readonly currentA: number
  readonly timeS: number
}

/** Convergence: a start within this many K of the steady cycle's, or a gain below this fraction of the cycle's excursion. */
const startAllowedK = 1e-9
const shareAllowed = 1e-12
/** Two starts closer than this, in K, give no secant slope. */
const slopeApartK = 1e-6
/** Limit of secant rounds; then a scan in this many strides up to the melting point, and bisections of the stride found. */
const fastRounds = 40
const strides = 64
const halvings = 60

/** Temperature change over the steps from a start; Infinity from the step in which the metal melts. */
export function changesOver(motions: readonly Motion[], steps: readonly Step[], startC: number): readonly number[] {
  let T = startC
  return motions.map((m, index) => {
    const change = T < Infinity ? changeAfterK(m, T, (steps[index] as Step).timeS) : Infinity
    T += change
    return change
  })
}

const sum = (changes: readonly number[]): number => changes.reduce((total, change) => total + change, 0)

/**
 * Start temperature of the periodic cycle: the first one above the coolest start; Infinity if none below melting.
 *
 * A cycle keeps the order of starts, so adding a start's own gain never passes the fixed point: that step is safe. Secant steps are faster but may pass it, so they are kept between the last start that gained and the first that lost or melted.
 */
export function cycleStart(motions: readonly Motion[], steps: readonly Step[], coolestC: number, meltingC: number): number {
  let T = coolestC
  let low = coolestC
  let lowGain = 0
  let high = Infinity
  let safe = true
  let T0 = Number.NaN
  let gain0 = Number.NaN
  let slope = Number.NaN
  for (let n = 0; n < fastRounds; n += 1) {
    const each = changesOver(motions, steps, T)
    const gain = sum(each)
    if (!(gain < Infinity)) {
      if (safe) return Infinity
      high = T
      T = low + lowGain
      safe = true
      continue
    }
    if (Number.isNaN(slope) || Math.abs(T - T0) > slopeApartK) slope = (gain - gain0) / (T - T0)
    const span = each.reduce((total, change) => total + Math.abs(change), 0)
    if (Math.abs(gain) <= shareAllowed * span || Math.abs(gain / slope) <= startAllowedK) return T
    if (gain > 0) {
      low = T
      lowGain = gain
    } else high = T
    T0 = T
    gain0 = gain
    const next = T - gain / slope
    safe = !(slope < 0 && next > low && next < high && n % 8 !== 7)
    if (!safe) T = next
    else if (gain > 0 && T + gain < high) T += gain
    else T = 0.5 * (low + Math.min(high, T0))
    if (T === T0) return T
  }
  return scanForStart(motions, steps, low, meltingC)
}

/** Fallback: scans for the first stride at whose end the cycle loses, then bisects it. */
function scanForStart(motions: readonly Motion[], steps: readonly Step[], fromC: number, meltingC: number): number {
  const stride = (meltingC - fromC) / strides
  for (let n = 1; n <= strides; n += 1) {
    let high = fromC + n * stride
    if (!(sum(changesOver(motions, steps, high)) < 0)) continue
    let low = high - stride
    for (let k = 0; k < halvings && high - low > startAllowedK; k += 1) {
      const middle = 0.5 * (low + high)
      if (sum(changesOver(motions, steps, middle)) < 0) high = middle
      else low = middle
    }
    return high
  }
  return Infinity
}
