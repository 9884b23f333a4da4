import type { FusePoint } from '../tables/index.ts'
import { openingTimeS } from './fuseBand.ts'
import { scan } from './scan.ts'

/** A fuse compared with its wire. */
export interface FuseOverWire {
  readonly protects: boolean
  /** The current with the smallest ratio of the wire's time to the fuse's; null if none. */
  readonly worst: { readonly currentA: number; readonly fuseLongestS: number | null; readonly wireS: number | null }
  /** Current ranges in which the wire passes its limit before the fuse opens. */
  readonly unprotected: readonly { readonly lowA: number; readonly highA: number }[]
}

/** Within this fraction of the wire's steady limit its time counts as endless. */
const nearSteadyShare = 1e-6
/** Step off a point of the band, relative: larger than the tolerance of the point itself. */
const besideShare = 1e-9
/** Bisections of a current range down to rounding. */
const halvings = 60
/** Halvings of a panel, one inside the other, before it is scanned. */
const boundHalvings = 5

/** The wire beside its fuse, and what is asked. */
interface Compared {
  /** Time of the wire to its limit at a current: null for never, never rising with the current. */
  readonly wireS: (currentA: number) => number | null
  /** False where wireS is null. */
  readonly harms: (currentA: number) => boolean
  readonly gapsOnly: boolean
}

/**
 * Compares the slow edge of a band with the wire's time to its limit.
 *
 * With gapsOnly, panels that are clear by bounds are not searched, so that worst may lie elsewhere; the unprotected ranges are the same.
 */
export function matchBand(
  band: readonly FusePoint[],
  atAmbientA: number,
  steadyA: number,
  highestA: number,
  { wireS, harms, gapsOnly }: Compared,
): FuseOverWire {
  const fuseS = (currentA: number): number | null => openingTimeS(band, 'longestS', currentA / atAmbientA)
  const lowestA = highestA > steadyA ? leastHarmfulA(steadyA, highestA, harms) : null
  if (lowestA === null) return { protects: true, worst: { currentA: highestA, fuseLongestS: fuseS(highestA), wireS: null }, unprotected: [] }

  let lowA = lowestA
  let highA = lowestA
  /** Logarithmic interpolation from lowA to highA, exact at both ends. */
  const currentAt = (share: number): number => (share === 1 ? highA : lowA * (highA / lowA) ** share)
  /** ln(wire's time / fuse's time): below 0 the wire reaches its limit first. */
  const margin = (share: number): number => {
    const currentA = currentAt(share)
    const wire = wireS(currentA)
    return wire === null ? Infinity : Math.log(wire / (fuseS(currentA) ?? Infinity))
  }
  let worstA = highestA
  let least = Infinity
  const unprotected: { lowA: number; highA: number }[] = []
  const add = (fromA: number, toA: number): void => {
    const before = unprotected.at(-1)
    if (before !== undefined && fromA <= before.highA * (1 + besideShare)) before.highA = toA
    else unprotected.push({ lowA: fromA, highA: toA })
  }
  const edges = [lowestA, ...band.map(({ multiple }) => multiple * atAmbientA).filter((edgeA) => edgeA > lowestA && edgeA < highestA), highestA]
  for (let k = 1; k < edges.length; k += 1) {
    lowA = edges[k - 1] as number
    highA = edges[k] as number
    if (fuseS(Math.sqrt(lowA * highA)) === null) {
      add(lowA, highA)
      // The ratio is 0 throughout: the wire's shortest time is at the upper end, next to a point at which the fuse opens.
      worstA = fuseS(highA) === null ? highA : highA * (1 - besideShare)
      least = -Infinity
      continue
    }
    if (gapsOnly && isClear(lowA, highA, fuseS, wireS, boundHalvings)) continue
    const found = scan(margin)
    for (const [from, to] of found.below) add(currentAt(from), currentAt(to))
    if (found.least < least) {
      worstA = currentAt(found.leastAt)
      least = found.least
    }
  }
  return { protects: unprotected.length === 0, worst: { currentA: worstA, fuseLongestS: fuseS(worstA), wireS: wireS(worstA) }, unprotected }
}

/** True if the fuse opens first at every current of the range, shown by bounds: the wire's time is least at the upper end, the fuse's, linear in logarithms, is greatest at an end. */
function isClear(lowA: number, highA: number, fuseS: (currentA: number) => number | null, wireS: (currentA: number) => number | null, left: number): boolean {
  const wire = wireS(highA) ?? Infinity
  const atHigh = fuseS(highA) ?? Infinity
  if (wire < atHigh) return false
  if (wire >= (fuseS(lowA) ?? Infinity)) return true
  if (left === 0) return false
  const middleA = Math.sqrt(lowA * highA)
  return isClear(middleA, highA, fuseS, wireS, left - 1) && isClear(lowA, middleA, fuseS, wireS, left - 1)
}

/** Least current at which the wire reaches its limit: its steady limit, or a larger current if that is unstable; null if none. */
function leastHarmfulA(steadyA: number, highestA: number, harms: (currentA: number) => boolean): number | null {
  if (harms(Math.min(highestA, steadyA * (1 + nearSteadyShare)))) return steadyA
  if (!harms(highestA)) return null
  let low = steadyA
  let high = highestA
  for (let n = 0; n < halvings; n += 1) {
    const middle = (low + high) / 2
    if (!harms(middle)) low = middle
    else high = middle
  }
  return high
}
