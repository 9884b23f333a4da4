import { fuseBandOf, fuseOpeningS } from '../protection/index.ts'
import { type FusePoint, type FuseSeries, fuseBands } from '../tables/index.ts'
import { fuseHottestC, roundingShare } from './verdictDefaults.ts'
import type { FuseKind, WireJob } from './wireJob.ts'

/** One rating with its band. */
export interface FuseRating {
  readonly ratedA: number
  readonly name: keyof typeof fuseBands
  readonly series: FuseSeries
  readonly band: readonly FusePoint[]
}

function ratingsOf(name: keyof typeof fuseBands, aboveA = 0): readonly FuseRating[] {
  const series: FuseSeries = fuseBands[name]
  return series.ratingsA.filter((ratedA) => ratedA > aboveA).map((ratedA) => ({ ratedA, name, series, band: fuseBandOf({ series: name, ratedA }) }))
}

/** Largest rating of common blade fuses; above it large blades are used. */
const largestBladeA = 40
const blades = [...ratingsOf('ISO 8820-3'), ...ratingsOf('ISO 8820-3 type E', largestBladeA)]
const ratingsByKind: Readonly<Record<FuseKind, readonly FuseRating[]>> = { blade: blades, cartridge: ratingsOf('IEC 60127-2 F'), 'bolt-down': [], breaker: [] }

/** The ratings of a kind of fuse, smallest first; without a kind, the first one with the fitted rating. Empty without a known band. */
export function ratingsFor(kind: FuseKind | undefined, ratedA: number | undefined): readonly FuseRating[] {
  if (kind !== undefined) return ratingsByKind[kind]
  if (ratedA === undefined) return blades
  return Object.values(ratingsByKind).find((ratings) => ratings.some((rating) => rating.ratedA === ratedA)) ?? []
}

/** Multiple of the rating from which a fuse is sure to open. */
export function sureMultiple(band: readonly FusePoint[]): number {
  return Math.min(...band.filter(({ longestS }) => longestS !== null).map(({ multiple }) => multiple))
}

/** Fraction of its rating that a fuse keeps at an ambient, over the spread of makers; null beyond the data. */
export function keptShare(series: FuseSeries, ambientC: number): { readonly low: number; readonly high: number } | null {
  if (ambientC > fuseHottestC) return null
  const { low, high } = series.ambientFactorPerK
  const rise = ambientC - series.referenceC
  const shares = [1 - low * rise, 1 - high * rise]
  return { low: Math.min(...shares), high: Math.max(...shares) }
}

/** Fuses for a load and a wire. */
export interface FuseChoice {
  readonly largestFuseA: number | null
  readonly smallestFuseA: number | null
  readonly fuseToFitA: number | null
}

/** Load on the fuse: a duty heats it by its root mean square, and its current must pass for the on-time. */
export function fuseLoad(
  job: WireJob,
  equivalentA: number,
): { readonly loadA: number; readonly passes: readonly { readonly currentA: number; readonly timeS: number }[] } {
  const passes = job.inrush === undefined ? [] : [job.inrush]
  if (job.duty === undefined || job.duty.offS === 0) return { loadA: job.currentA, passes }
  return { loadA: equivalentA, passes: [...passes, { currentA: job.currentA, timeS: job.duty.onS }] }
}

/** Judges every rating for a wire of that continuous current. The wire is not derated for the fuse's ambient, as the fuse may sit in cooler air. */
export function chooseFuse(job: WireJob, ratings: readonly FuseRating[], wireA: number, equivalentA: number): FuseChoice {
  const bears = ({ ratedA, band }: FuseRating): boolean => sureMultiple(band) * ratedA <= wireA * (1 + roundingShare)
  const { loadA, passes } = fuseLoad(job, equivalentA)
  const ambientC = job.fuse?.ambientC ?? job.hottestC
  const carries = ({ ratedA, band, series }: FuseRating, share: number): boolean => {
    const kept = keptShare(series, ambientC)
    if (kept === null) return false
    const atAmbientA = ratedA * kept.low
    if (loadA > atAmbientA * share * (1 + roundingShare)) return false
    return passes.every(({ currentA, timeS }) => {
      const { shortestS } = fuseOpeningS({ ratedA: atAmbientA, band, currentA })
      return shortestS === null || timeS <= shortestS
    })
  }
  const { stallA } = job
  const opensStall = ({ ratedA, band }: FuseRating): boolean => stallA === undefined || fuseOpeningS({ ratedA, band, currentA: stallA }).longestS !== null
  const usual = ({ series }: FuseRating): number => series.continuousLoadShare.nominal
  const serves = (share: (rating: FuseRating) => number): number | null =>
    ratings.find((rating) => carries(rating, share(rating)) && bears(rating) && opensStall(rating))?.ratedA ?? null
  return {
    largestFuseA: ratings.filter(bears).at(-1)?.ratedA ?? null,
    smallestFuseA: ratings.find((rating) => carries(rating, usual(rating)))?.ratedA ?? null,
    fuseToFitA: serves(usual) ?? serves(() => 1),
  }
}
