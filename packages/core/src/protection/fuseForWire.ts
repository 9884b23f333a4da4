import { type Reason, requireAboveUpTo, requireBetween, requireNotNegative, UnknownEntryError } from '../errors/index.ts'
import { type FuseSeries, fuseBands } from '../tables/index.ts'
import { bandOfRating, openingTimeS, sameCurrentShare, sureMultiple } from './fuseBand.ts'
import { protectionDefaults } from './protectionDefaults.ts'

/** Range of ambient at a fuse holder in which the linear loss per kelvin is used, in degC. */
const coldestC = -60
const hottestC = 150

/** One fuse of the series, with its verdict. */
export interface FuseCandidate {
  readonly ratedA: number
  /** Its rating at the ambient. */
  readonly atAmbientA: number
  readonly carriesLoad: boolean
  /** null without a known inrush. */
  readonly carriesInrush: boolean | null
  readonly protectsWire: boolean
  /** Empty for a suitable fuse. Codes: load-over-share, inrush-may-open, stall-may-not-open, wire-in-overload-zone. */
  readonly reasons: readonly Reason[]
}
interface FuseJob {
  readonly loadA: number
  readonly wireA: number
  readonly inrush?: { readonly currentA: number; readonly timeS: number }
  readonly stallA?: number
}

const atMost = (value: number, limit: number): boolean => value <= limit * (1 + sameCurrentShare)

/**
 * The smallest fuse that carries the load and its inrush, opens when the motor stalls, and protects the wire from overload.
 *
 * Between the first point of the band and the multiple at which it is sure to open, a fuse may carry a current for minutes or continuously: the wire must stand that current.
 *
 * @equation F = I_r (1 - c (T_a - 23)); F f >= I; m_s F <= I_w; t_inrush <= shortest time of the inrush; longest time of the stall not null
 * @symbol I - loadA - A - continuous load
 * @symbol I_w - wireA - A - what the wire carries continuously, in its place and bundle
 * @symbol f - loadFraction - 1 - share of a rating that a continuous load may use
 * @symbol T_a - ambientC - C - air round the fuse
 * @symbol c - ambientLossPerK - 1/K - share of the rating lost per kelvin above the reference of the series
 * @symbol F - result - A - rating at the ambient of each candidate; the smallest that serves is ratedA, null where none does
 * @domain loadA: at least 0
 * @domain wireA: at least 0
 * @domain optional inrush.currentA: at least 0
 * @domain optional inrush.timeS: at least 0
 * @domain optional stallA: at least 0
 * @domain ambientC: from -60 to 150
 * @domain optional loadFraction: above 0 up to 1
 * @domain optional ambientLossPerK: from 0 to 0.005
 * @throws DomainError outside the domain
 * @throws UnknownEntryError for a series that the table does not hold
 * @example
 * fuseForWire({ loadA: 4.2, wireA: 16, inrush: { currentA: 15, timeS: 0.1 }, stallA: 18, ambientC: 40, series: 'ISO 8820-3', loadFraction: 0.75, ambientLossPerK: 0.0012 }) // { ratedA: 7.5 }
 * @source ISO 8820-3, operating times (from memory); three quarters of the rating for a continuous load (common practice)
 */
export function fuseForWire(i: {
  readonly loadA: number
  readonly wireA: number
  readonly inrush?: { readonly currentA: number; readonly timeS: number }
  readonly stallA?: number
  readonly ambientC: number
  readonly series: keyof typeof fuseBands
  readonly loadFraction?: number
  readonly ambientLossPerK?: number
}): { readonly ratedA: number | null; readonly candidates: readonly FuseCandidate[] } {
  const { loadFraction = protectionDefaults.loadFraction, ambientLossPerK = protectionDefaults.ambientLossPerK } = i
  const series: FuseSeries | undefined = Object.hasOwn(fuseBands, i.series) ? fuseBands[i.series] : undefined
  if (series === undefined) throw new UnknownEntryError('series', i.series, Object.keys(fuseBands))
  requireNotNegative('loadA', i.loadA)
  requireNotNegative('wireA', i.wireA)
  if (i.inrush !== undefined) {
    requireNotNegative('inrush.currentA', i.inrush?.currentA)
    requireNotNegative('inrush.timeS', i.inrush.timeS)
  }
  if (i.stallA !== undefined) requireNotNegative('stallA', i.stallA)
  requireBetween('ambientC', i.ambientC, coldestC, hottestC, 'the loss per kelvin is linear near room temperature only')
  requireAboveUpTo('loadFraction', loadFraction, 0, 1)
  // At 0.005 per kelvin a fuse keeps a third of its rating at the hottest ambient.
  requireBetween('ambientLossPerK', ambientLossPerK, 0, 0.005)
  const factor = 1 - ambientLossPerK * (i.ambientC - series.referenceC)
  const candidates = series.ratingsA.map((ratedA) => judge(i, bandOfRating(series, ratedA), ratedA, ratedA * factor, loadFraction))
  return { ratedA: candidates.find(({ reasons }) => reasons.length === 0)?.ratedA ?? null, candidates }
}

function judge(job: FuseJob, band: FuseSeries['band'], ratedA: number, atAmbientA: number, loadFraction: number): FuseCandidate {
  const { loadA, wireA, inrush, stallA } = job
  const reasons: Reason[] = []
  const largestLoadA = atAmbientA * loadFraction
  const carriesLoad = atMost(loadA, largestLoadA)
  if (!carriesLoad) reasons.push({ code: 'load-over-share', parameter: 'loadA', value: loadA, limit: largestLoadA })

  let carriesInrush: boolean | null = null
  if (inrush !== undefined) {
    const soonestS = openingTimeS(band, 'shortestS', inrush.currentA / atAmbientA)
    carriesInrush = soonestS === null || atMost(inrush.timeS, soonestS)
    if (soonestS !== null && !carriesInrush) reasons.push({ code: 'inrush-may-open', parameter: 'inrush.timeS', value: inrush.timeS, limit: soonestS })
  }

  const surelyOpensA = sureMultiple(band) * atAmbientA
  if (stallA !== undefined && openingTimeS(band, 'longestS', stallA / atAmbientA) === null) {
    reasons.push({ code: 'stall-may-not-open', parameter: 'stallA', value: stallA, limit: surelyOpensA })
  }

  const protectsWire = atMost(surelyOpensA, wireA)
  if (!protectsWire) reasons.push({ code: 'wire-in-overload-zone', parameter: 'wireA', value: wireA, limit: surelyOpensA })
  return { ratedA, atAmbientA, carriesLoad, carriesInrush, protectsWire, reasons }
}
