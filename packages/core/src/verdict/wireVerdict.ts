import { DomainError, requireBetween, requireChoice, requireFinite, requireNotNegative, requirePositive, UnknownEntryError } from '../errors/index.ts'
import { chooseFuse, ratingsFor } from './fuseChoice.ts'
import { smallestSize } from './sizeChoice.ts'
import { continuousA, equivalentA, judgeCurrent } from './wireCurrent.ts'
import { judgeDrop } from './wireDrop.ts'
import { judgeFuse } from './wireFuse.ts'
import type { Verdict, WireFinding, WireJob, WireVerdict } from './wireJob.ts'

const order: readonly Verdict[] = ['unsound', 'cannot tell', 'caution', 'sound']
const fuseKinds = ['blade', 'cartridge', 'bolt-down', 'breaker'] as const
const standards = ['AWG', 'SAE J1128', 'ISO 6722-1', 'IEC 60228'] as const

const noFuse = { largestFuseA: null, smallestFuseA: null, fuseToFitA: null }

/** Lower end of the linear resistance law, in degC. */
const coldestC = -60
const hottestC = 300
/** The job's name for a field that a model names otherwise; all others are inside "wire". */
const ownNames: Readonly<Record<string, string>> = {
  ambientC: 'hottestC',
  bundleOutsideMm: 'bundleOutsideMm',
  currentA: 'currentA',
  limitC: 'limitC',
  loadedWires: 'loadedWires',
}

/** Renames a model's parameter in an error to the job's field. */
function named<T>(run: () => T): T {
  try {
    return run()
  } catch (error) {
    if (error instanceof UnknownEntryError) throw new UnknownEntryError(`wire.${error.parameter}`, error.value, error.known)
    if (!(error instanceof DomainError)) throw error
    const { parameter, value, allowed, source, code } = error
    throw new DomainError(ownNames[parameter] ?? `wire.${parameter}`, value, allowed, source, code)
  }
}

function requireJob(i: WireJob): void {
  requireFinite('limitC', i.limitC)
  requireBetween('hottestC', i.hottestC, coldestC, hottestC)
  requireNotNegative('currentA', i.currentA)
  const { duty, run, inrush, stallA, fuse } = i
  if (duty !== undefined) {
    requirePositive('duty.onS', duty.onS)
    requireNotNegative('duty.offS', duty.offS)
  }
  if (run !== undefined) {
    requirePositive('run.supplyV', run.supplyV)
    requireNotNegative('run.outLengthM', run.outLengthM)
    requireNotNegative('run.returnLengthM', run.returnLengthM)
    requirePositive('run.allowedDropV', run.allowedDropV)
    if (run.sourceOhm !== undefined) requireNotNegative('run.sourceOhm', run.sourceOhm)
  }
  if (inrush !== undefined) {
    requireNotNegative('inrush.currentA', inrush.currentA)
    requireNotNegative('inrush.timeS', inrush.timeS)
  }
  if (stallA !== undefined) requireNotNegative('stallA', stallA)
  if (i.sizes !== undefined) requireChoice('sizes', i.sizes, standards)
  if (fuse?.ratedA !== undefined) requirePositive('fuse.ratedA', fuse.ratedA)
  if (fuse?.kind !== undefined) requireChoice('fuse.kind', fuse.kind, fuseKinds)
  if (fuse?.ambientC !== undefined) requireBetween('fuse.ambientC', fuse.ambientC, coldestC, hottestC)
  if (fuse?.mostOverWire !== undefined) requirePositive('fuse.mostOverWire', fuse.mostOverWire)
}

/**
 * Judges one wire in its place: the current in its heat and bundle, the drop over its run, and the fuse before it; and finds a size and fuse that suit.
 *
 * The unfavourable still-air correlation decides. A duty is judged by its peak; in a bundle, in the effective ambient of its mean heat. Against the wire the slow edge of the fuse's band counts; against the load its fast edge and the largest derating of its makers. For a kind of fuse without a band the answer is "cannot tell", with the points that a maker's curve would have to show.
 *
 * @equation verdict = worst of current, drop and fuse
 * @symbol I - currentA - A - current while the load is on
 * @symbol Tm - limitC - C - continuous limit of insulation, plating or metal
 * @symbol Ta - hottestC - C - hottest air
 * @symbol verdict - result - 1 - verdict, its findings, and the wire and fuse that would suit
 * @domain currentA: at least 0
 * @domain limitC: at least -173.15
 * @domain hottestC: from -60 to 300
 * @domain optional loadedWires: whole at least 1
 * @domain optional bundleOutsideMm: above 0
 * @domain optional stallA: at least 0
 * @domain optional inrush.currentA: at least 0
 * @domain optional inrush.timeS: at least 0
 * @domain optional duty.onS: above 0
 * @domain optional duty.offS: at least 0
 * @domain optional run.supplyV: above 0
 * @domain optional run.outLengthM: at least 0
 * @domain optional run.returnLengthM: at least 0
 * @domain optional run.allowedDropV: above 0
 * @domain optional run.sourceOhm: at least 0
 * @domain optional fuse.ratedA: above 0
 * @domain optional fuse.ambientC: from -60 to 300
 * @domain optional fuse.mostOverWire: above 0
 * @domain wire.areaMm2: above 0
 * @domain wire.insulationThicknessMm: at least 0
 * @domain wire.insulationConductivityWPerMK: above 0
 * @domain optional wire.conductorDiameterMm: above 0
 * @domain optional wire.layFactor: at least 1
 * @domain optional wire.resistivity20OhmM: above 0
 * @domain optional wire.temperatureCoefficient20PerK: at least 0
 * @domain optional wire.emissivity: from 0 to 1
 * @domain optional wire.airSpeedMPerS: at least 0
 * @domain optional wire.pressurePa: at least 1000
 * @domain optional wire.solarAbsorbedWPerM: at least 0
 * @domain optional wire.filmWPerM2K: above 0
 * @throws DomainError outside the domain, for a bundle too thin to hold its wires, and for a limit above the metal's melting point
 * @throws UnknownEntryError for a metal that the table does not hold
 * @example
 * wireVerdict({ wire: { areaMm2: 1.5, insulationThicknessMm: 0.7, insulationConductivityWPerMK: 0.17 }, limitC: 70, hottestC: 40, currentA: 20, duty: { onS: 30, offS: 600 }, loadedWires: 2, bundleOutsideMm: 9, run: { supplyV: 12, outLengthM: 2, returnLengthM: 2, allowedDropV: 1, sourceOhm: 0.02 }, inrush: { currentA: 50, timeS: 0.05 }, stallA: 60, fuse: { ratedA: 20, ambientC: 30, mostOverWire: 1.5 } }) // { verdict: 'unsound', largestFuseA: 10 }
 * @example
 * wireVerdict({ wire: { areaMm2: 1.5, insulationThicknessMm: 0.7, insulationConductivityWPerMK: 0.17 }, limitC: 70, hottestC: 40, currentA: 8, fuse: { ratedA: 10 }, sizes: 'IEC 60228' }) // { verdict: 'caution', fuseToFitA: 10 }
 * @source the rooms ampacity, circuit and protection
 */
export function wireVerdict(i: WireJob): WireVerdict {
  requireJob(i)
  const allowed = named(() => continuousA(i))
  const { conductorC, finding: current } = named(() => judgeCurrent(i, allowed))
  const { dropV, finding: drop } = judgeDrop(i)
  const meanA = equivalentA(i)
  const wireA = allowed?.low ?? 0
  const ratedA = i.fuse?.ratedA
  const offers = i.offers ?? true
  const judgesFuse = offers || ratedA !== undefined
  const ratings = judgesFuse ? ratingsFor(i.fuse?.kind, ratedA) : []
  const choice = offers ? chooseFuse(i, ratings, wireA, meanA) : noFuse
  const { findings: fuse, fuseSeries } = judgesFuse ? named(() => judgeFuse(i, ratings, wireA, choice, meanA)) : { findings: [], fuseSeries: null }
  const findings: WireFinding[] = [current, ...(drop === null ? [] : [drop]), ...fuse]
  findings.sort((a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict))
  return {
    verdict: findings[0]?.verdict ?? 'sound',
    findings,
    continuousA: allowed,
    conductorC,
    equivalentA: meanA,
    dropV,
    fuseSeries,
    ...choice,
    size: offers ? smallestSize(i, ratings) : null,
    sizeForFuse: !offers || ratedA === undefined ? null : smallestSize(i, ratings, ratedA),
  }
}
