import { requireFiniteResult } from '../errors/index.ts'
import { fuseOpeningS } from '../protection/index.ts'
import { fuseGaps } from '../protection/inner.ts'
import { type FuseChoice, type FuseRating, fuseLoad, keptShare, sureMultiple } from './fuseChoice.ts'
import { fuseHottestC, roundingShare, verdictDefaults } from './verdictDefaults.ts'
import { aloneInBundleAir } from './wireCurrent.ts'
import { loopOhm } from './wireDrop.ts'
import type { WireCode, WireFinding, WireJob } from './wireJob.ts'

type Found = (code: WireCode, verdict: WireFinding['verdict'], values: WireFinding['values']) => void

/** Without a band: points that the maker's curve would have to show. */
function withoutBand(job: WireJob, wireA: number, equivalentA: number, found: Found): void {
  const inrush = job.inrush === undefined ? {} : { inrushA: job.inrush.currentA, inrushS: job.inrush.timeS }
  const stall = job.stallA === undefined ? {} : { stallA: job.stallA }
  found('fuse-no-band', 'cannot tell', { mustOpenA: wireA, mustHoldA: equivalentA, ...inrush, ...stall })
  // Any fuse carries its rating, and opens sooner or later above it.
  const { ratedA } = job.fuse ?? {}
  if (ratedA === undefined) return
  const { loadA } = fuseLoad(job, equivalentA)
  if (ratedA > wireA * (1 + roundingShare)) found('fuse-over-wire', 'unsound', { ratedA, opensForSureA: ratedA, wireA })
  if (loadA > ratedA * (1 + roundingShare))
    found('fuse-below-load', 'unsound', { ratedA, atAmbientA: ratedA, loadA, share: requireFiniteResult('fuse.ratedA', ratedA, loadA / ratedA) })
}

function guard(job: WireJob, { ratedA, band }: FuseRating, wireA: number, choice: FuseChoice, equivalentA: number, found: Found): void {
  const opensForSureA = sureMultiple(band) * ratedA
  const values = { ratedA, opensForSureA, wireA }
  const { mostOverWire } = job.fuse ?? {}
  if (opensForSureA <= wireA * (1 + roundingShare)) {
    found('fuse-guards-wire', 'sound', values)
    const { limitC } = job
    const [gap] = fuseGaps({ ratedA, band, wire: aloneInBundleAir(job, Math.min(equivalentA, wireA)), limitC })
    if (gap !== undefined) found('fuse-slower-than-wire', 'caution', { ...gap, limitC })
  } else if (mostOverWire !== undefined && ratedA <= mostOverWire * wireA && job.stallA === undefined)
    found('fuse-within-rule', 'caution', { ...values, mostOverWire })
  else found('fuse-over-wire', 'unsound', choice.largestFuseA === null ? values : { ...values, largestFuseA: choice.largestFuseA })
}

function carry(job: WireJob, { ratedA, band, series }: FuseRating, equivalentA: number, found: Found): void {
  const ambientC = job.fuse?.ambientC ?? job.hottestC
  const kept = keptShare(series, ambientC)
  if (kept === null) {
    found('fuse-air-beyond-data', 'cannot tell', { ambientC, highestC: fuseHottestC })
    return
  }
  const { loadA, passes } = fuseLoad(job, equivalentA)
  const usualShare = series.continuousLoadShare.nominal
  const atAmbientA = ratedA * kept.low
  const share = loadA / atAmbientA
  const values = { ratedA, atAmbientA, loadA, share, usualShare }
  if (loadA > ratedA * kept.high * (1 + roundingShare)) found('fuse-below-load', 'unsound', values)
  else if (share > usualShare * (1 + roundingShare)) found('fuse-near-load', 'caution', values)
  for (const { currentA: inrushA, timeS: inrushS } of passes) {
    const { shortestS } = fuseOpeningS({ ratedA: atAmbientA, band, currentA: inrushA })
    if (shortestS !== null && inrushS > shortestS) found('fuse-may-open-on-inrush', 'caution', { ratedA, inrushA, inrushS, shortestS })
  }
}

function faults(job: WireJob, { ratedA, band, series }: FuseRating, found: Found): void {
  const { stallA, run } = job
  if (stallA !== undefined) {
    const { longestS } = fuseOpeningS({ ratedA, band, currentA: stallA })
    if (longestS === null) found('fuse-passes-stall', 'unsound', { ratedA, stallA, opensForSureA: sureMultiple(band) * ratedA })
    else found('fuse-opens-stall', 'sound', { ratedA, stallA, longestS })
  }
  if (run === undefined) return
  const { currentA: breakingA, voltageV: ratedV } = series.breakingCapacity
  if (run.supplyV > ratedV) found('fuse-supply-voltage', 'caution', { supplyV: run.supplyV, ratedV })
  const { sourceOhm } = run
  if (sourceOhm === undefined) return
  const atSourceA = sourceOhm === 0 ? 0 : requireFiniteResult('run.sourceOhm', sourceOhm, run.supplyV / sourceOhm)
  if (atSourceA > breakingA) found('fuse-breaking-capacity', 'caution', { faultA: atSourceA, breakingA })
  const wholeOhm = sourceOhm + loopOhm(job)
  if (wholeOhm === 0) return
  const faultA = run.supplyV / wholeOhm
  const { longestS } = fuseOpeningS({ ratedA, band, currentA: faultA })
  const withinS = verdictDefaults.farFaultWithinS
  if (longestS !== null && longestS <= withinS) found('fuse-opens-far-fault', 'sound', { ratedA, faultA, longestS })
  else found('fuse-slow-on-far-fault', 'caution', longestS === null ? { ratedA, faultA, withinS } : { ratedA, faultA, longestS, withinS })
}

/** The fitted fuse among its kind's ratings; undefined if unknown, or without a band. */
function fitted(job: WireJob, ratings: readonly FuseRating[]): FuseRating | undefined {
  return ratings.find(({ ratedA }) => ratedA === job.fuse?.ratedA)
}

function missing(
  job: WireJob,
  ratings: readonly FuseRating[],
  { smallestFuseA, largestFuseA, fuseToFitA }: FuseChoice,
  equivalentA: number,
  found: Found,
): void {
  found('fuse-missing', 'caution', fuseToFitA === null ? {} : { fuseToFitA })
  if (fuseToFitA !== null) return
  const ambientC = job.fuse?.ambientC ?? job.hottestC
  if (smallestFuseA !== null) found('fuse-none-serves', 'unsound', largestFuseA === null ? { smallestFuseA } : { smallestFuseA, largestFuseA })
  else if (ratings.every(({ series }) => keptShare(series, ambientC) === null))
    found('fuse-air-beyond-data', 'cannot tell', { ambientC, highestC: fuseHottestC })
  else found('fuse-load-beyond-series', 'cannot tell', { loadA: fuseLoad(job, equivalentA).loadA })
}

/** Findings on the fuse of a wire with that continuous current, and the band used. */
export function judgeFuse(
  job: WireJob,
  ratings: readonly FuseRating[],
  wireA: number,
  choice: FuseChoice,
  equivalentA: number,
): { readonly findings: readonly WireFinding[]; readonly fuseSeries: string | null } {
  const findings: WireFinding[] = []
  const rating = fitted(job, ratings)
  const judgedBy = rating ?? ratings.find(({ ratedA }) => ratedA === choice.fuseToFitA) ?? ratings[0]
  const sources = judgedBy === undefined ? [] : [judgedBy.series.provenance]
  const found: Found = (code, verdict, values) => {
    findings.push({ code, topic: 'fuse', verdict, values, sources })
  }
  if (rating !== undefined) {
    guard(job, rating, wireA, choice, equivalentA, found)
    carry(job, rating, equivalentA, found)
    faults(job, rating, found)
  } else if (job.fuse?.ratedA !== undefined || ratings.length === 0) withoutBand(job, wireA, equivalentA, found)
  else missing(job, ratings, choice, equivalentA, found)
  const banded = rating !== undefined || (job.fuse?.ratedA === undefined && ratings.length > 0)
  return { findings, fuseSeries: banded ? (judgedBy?.name ?? null) : null }
}
