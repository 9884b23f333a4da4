import type { FusePoint } from '../tables/index.ts'
import { openingTimeS } from './fuseBand.ts'
import { scan } from './scan.ts'

/** A fuse set against its wire. */
export interface FuseOverWire {
  readonly protects: boolean
  /** The current with the smallest ratio of the wire's time to the fuse's; null is never. */
  readonly worst: { readonly currentA: number; readonly fuseLongestS: number | null; readonly wireS: number | null }
  /** Stretches of current at which the wire passes its limit first. */
  readonly unprotected: readonly { readonly lowA: number; readonly highA: number }[]
}

/** Currents so near to the wire's steady limit, as a share, that its time to the limit is as good as endless. */
const nearSteadyShare = 1e-6
/** A step off a point of the band, as a share: beyond what counts as the point itself. */
const besideShare = 1e-9
/** Halvings of a range of currents until rounding ends them. */
const halvings = 60

/** wireS is the wire's time to its limit at a current, null for never; it never grows with the current. */
export function matchBand(
  band: readonly FusePoint[],
  atAmbientA: number,
  steadyA: number,
  highestA: number,
  wireS: (currentA: number) => number | null,
): FuseOverWire {
  const fuseS = (currentA: number): number | null => openingTimeS(band, 'longestS', currentA / atAmbientA)
  const lowestA = highestA > steadyA ? leastHarmfulA(steadyA, highestA, wireS) : null
  if (lowestA === null) return { protects: true, worst: { currentA: highestA, fuseLongestS: fuseS(highestA), wireS: null }, unprotected: [] }

  let lowA = lowestA
  let highA = lowestA
  /** The current at a share of the way from lowA to highA on a logarithmic scale, exact at both ends. */
  const currentAt = (share: number): number => (share === 1 ? highA : lowA * (highA / lowA) ** share)
  /** Logarithm of the wire's time over the fuse's: below 0 the wire loses. */
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
      // The ratio is 0 throughout: the shortest time of the wire is at the upper end, beside a point that opens.
      worstA = fuseS(highA) === null ? highA : highA * (1 - besideShare)
      least = -Infinity
      continue
    }
    const found = scan(margin)
    for (const [from, to] of found.below) add(currentAt(from), currentAt(to))
    if (found.least < least) {
      worstA = currentAt(found.leastAt)
      least = found.least
    }
  }
  return { protects: unprotected.length === 0, worst: { currentA: worstA, fuseLongestS: fuseS(worstA), wireS: wireS(worstA) }, unprotected }
}

/** From which current on the wire does reach its limit: its steady limit, or where that is no stable one a larger current; null where none does. */
function leastHarmfulA(steadyA: number, highestA: number, wireS: (currentA: number) => number | null): number | null {
  if (wireS(Math.min(highestA, steadyA * (1 + nearSteadyShare))) !== null) return steadyA
  if (wireS(highestA) === null) return null
  let low = steadyA
  let high = highestA
  for (let n = 0; n < halvings; n += 1) {
    const middle = (low + high) / 2
    if (wireS(middle) === null) low = middle
    else high = middle
  }
  return high
}
