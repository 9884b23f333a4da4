import { fuseOpeningS } from '../protection/index.ts'
import { type FuseSeries, fuseBands } from '../tables/index.ts'
import { fuseHottestC, roundingShare } from './verdictDefaults.ts'
import type { FuseKind, WireJob } from './wireJob.ts'

/** A band with the name that fuseBands holds it under. */
export interface NamedSeries {
  readonly name: string
  readonly series: FuseSeries
}

/** The band for a kind of fuse and its rating; null where none is held. */
export function seriesOf(kind: FuseKind | undefined, ratedA: number | undefined): NamedSeries | null {
  if (kind !== undefined && kind !== 'blade') return null
  const series: FuseSeries = fuseBands['ISO 8820-3']
  return ratedA === undefined || series.ratingsA.includes(ratedA) ? { name: 'ISO 8820-3', series } : null
}

/** Multiple of its rating from which a fuse of the series is sure to open. */
export function sureMultiple({ band }: FuseSeries): number {
  return Math.min(...band.filter(({ longestS }) => longestS !== null).map(({ multiple }) => multiple))
}

/** Share of its rating that a fuse keeps in its air, from the largest loss of its makers to the smallest; null beyond the data. */
export function keptShare(series: FuseSeries, ambientC: number): { readonly low: number; readonly high: number } | null {
  if (ambientC > fuseHottestC) return null
  const { low, high } = series.ambientFactorPerK
  const rise = ambientC - series.referenceC
  const shares = [1 - low * rise, 1 - high * rise]
  return { low: Math.min(...shares), high: Math.max(...shares) }
}

/** What the ratings of a series do for a load and a wire. */
export interface FuseChoice {
  readonly largestFuseA: number | null
  readonly smallestFuseA: number | null
  readonly fuseToFitA: number | null
}

/** Load in the fuse: a duty heats it as its root mean square does, and its current must pass for the time that it is on. */
export function fuseLoad(
  job: WireJob,
  equivalentA: number,
): { readonly loadA: number; readonly passes: readonly { readonly currentA: number; readonly timeS: number }[] } {
  const passes = job.inrush === undefined ? [] : [job.inrush]
  if (job.duty === undefined || job.duty.offS === 0) return { loadA: job.currentA, passes }
  return { loadA: equivalentA, passes: [...passes, { currentA: job.currentA, timeS: job.duty.onS }] }
}

/** Judges every rating of the series for a wire of that continuous current; the fuse may sit in cooler air than the wire, so the wire counts no loss. */
export function chooseFuse(job: WireJob, { series }: NamedSeries, wireA: number, equivalentA: number): FuseChoice {
  const sure = sureMultiple(series)
  const bears = (ratedA: number): boolean => sure * ratedA <= wireA * (1 + roundingShare)
  const largestFuseA = series.ratingsA.filter(bears).at(-1) ?? null
  const kept = keptShare(series, job.fuse?.ambientC ?? job.hottestC)
  if (kept === null) return { largestFuseA, smallestFuseA: null, fuseToFitA: null }
  const { loadA, passes } = fuseLoad(job, equivalentA)
  const carries = (ratedA: number, share: number): boolean => {
    const atAmbientA = ratedA * kept.low
    if (loadA > atAmbientA * share * (1 + roundingShare)) return false
    return passes.every(({ currentA, timeS }) => {
      const { shortestS } = fuseOpeningS({ ratedA: atAmbientA, band: series.band, currentA })
      return shortestS === null || timeS <= shortestS
    })
  }
  const opensStall = (ratedA: number): boolean =>
    job.stallA === undefined || fuseOpeningS({ ratedA, band: series.band, currentA: job.stallA }).longestS !== null
  const usual = series.continuousLoadShare.nominal
  const serves = (share: number): number | null => series.ratingsA.find((ratedA) => carries(ratedA, share) && bears(ratedA) && opensStall(ratedA)) ?? null
  return {
    largestFuseA,
    smallestFuseA: series.ratingsA.find((ratedA) => carries(ratedA, usual)) ?? null,
    fuseToFitA: serves(usual) ?? serves(1),
  }
}
