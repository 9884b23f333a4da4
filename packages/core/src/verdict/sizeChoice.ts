import { wireSizes } from '../conductor/index.ts'
import { commonWallMm } from '../tables/index.ts'
import { chooseFuse, type FuseRating, sureMultiple } from './fuseChoice.ts'
import { roundingShare, verdictDefaults } from './verdictDefaults.ts'
import { continuousA, equivalentA, judgeCurrent } from './wireCurrent.ts'
import { judgeDrop } from './wireDrop.ts'
import type { SizeFound, SizeStandard, WireJob } from './wireJob.ts'

interface Size {
  readonly size: string
  readonly areaMm2: number
}

/** The same job with another size: conductor diameter in proportion, at least the common wall, the bundle widened by the thicker wires. */
function withArea(job: WireJob, areaMm2: number): WireJob {
  const { wire, loadedWires = verdictDefaults.loadedWires, bundleOutsideMm } = job
  const ratio = Math.sqrt(areaMm2 / wire.areaMm2)
  const solidMm = (mm2: number): number => Math.sqrt((4 * mm2) / Math.PI)
  const beforeMm = wire.conductorDiameterMm ?? solidMm(wire.areaMm2)
  const conductorDiameterMm = beforeMm * ratio
  const insulationThicknessMm = wire.insulationThicknessMm === 0 ? 0 : Math.max(wire.insulationThicknessMm, commonWallMm(areaMm2))
  const changed = { ...job, wire: { ...wire, areaMm2, conductorDiameterMm, insulationThicknessMm } }
  if (bundleOutsideMm === undefined) return changed
  const outsideMm2 = (conductorMm: number, wallMm: number): number => (conductorMm + 2 * wallMm) ** 2
  const more = loadedWires * (outsideMm2(conductorDiameterMm, insulationThicknessMm) - outsideMm2(beforeMm, wire.insulationThicknessMm))
  return { ...changed, bundleOutsideMm: Math.sqrt(Math.max(bundleOutsideMm ** 2 + more, loadedWires * outsideMm2(conductorDiameterMm, insulationThicknessMm))) }
}

function sizesOf(standard: SizeStandard): readonly Size[] {
  return wireSizes()
    .filter((size) => size.standard === standard)
    .sort((a, b) => a.areaMm2 - b.areaMm2)
}

/** Checks another size; with ratedA, for the fuse as fitted. */
function suited(job: WireJob, ratings: readonly FuseRating[], standard: SizeStandard, { size, areaMm2 }: Size, ratedA: number | undefined): SizeFound | null {
  const changed = withArea(job, areaMm2)
  const allowed = continuousA(changed)
  if (allowed === null) return null
  const { dropV } = judgeDrop(changed)
  if (dropV !== null && dropV > (job.run?.allowedDropV ?? Infinity) * (1 + roundingShare)) return null
  const steadyEnough = changed.currentA <= allowed.low * (1 + roundingShare)
  if (!steadyEnough && (changed.duty === undefined || judgeCurrent(changed, allowed).finding.verdict === 'unsound')) return null
  const found = { standard, size, areaMm2, continuousA: allowed.low, dropV }
  const kept = ratings.find((rating) => rating.ratedA === ratedA)
  if (ratings.length === 0 || (ratedA !== undefined && kept === undefined)) return { ...found, fuseToFitA: null }
  const { fuseToFitA } = chooseFuse(changed, ratings, allowed.low, equivalentA(changed))
  if (ratedA === undefined || kept === undefined) return fuseToFitA === null ? null : { ...found, fuseToFitA }
  return sureMultiple(kept.band) * ratedA <= allowed.low * (1 + roundingShare) ? { ...found, fuseToFitA: ratedA } : null
}

/** Smallest standard size that suits in current, drop and fuse; null if none. */
export function smallestSize(job: WireJob, ratings: readonly FuseRating[], ratedA?: number): SizeFound | null {
  const standard = job.sizes ?? verdictDefaults.sizes
  const sizes = sizesOf(standard)
  // A thicker wire carries more, drops less and bears a larger fuse: halve the list.
  let found: SizeFound | null = null
  let low = 0
  let high = sizes.length
  while (low < high) {
    const middle = (low + high) >> 1
    const size = suited(job, ratings, standard, sizes[middle] as Size, ratedA)
    if (size === null) low = middle + 1
    else {
      found = size
      high = middle
    }
  }
  return found
}
