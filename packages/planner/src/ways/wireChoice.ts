import type { SizeFound } from '@strandwise/core'
import { type Finding, findingOf, firstSentence, type JobFacts, jobFacts, type PlanOption } from '../facts/inner.ts'
import type { RepairJob } from '../job/index.ts'
import { quietly, wireShape, wireSize } from '../job/inner.ts'
import { verdictOn } from './wireJob.ts'
import { judgeWire, type WireJudged } from './wireSection.ts'
import { wireWords } from './wireWords.ts'

/** The wire after the repair. */
export interface WireChoice {
  /** Judgement of the wire as found. */
  readonly found: WireJudged
  /** True if the wire as found suits. */
  readonly suits: boolean
  /** Facts and judgement of the wire to use: the one found if it suits (or no size does), else the new one. */
  readonly facts: JobFacts
  readonly judged: WireJudged
  /** The new wire's size; null if the wire found suits, or no size does. */
  readonly size: string | null
  readonly options: readonly PlanOption[]
}

/** Area of a bundle over that of its wires, at least: round wires leave gaps. */
const bundleRoom = 1.1

/** The job with another wire: its own strands and diameters are unknown, and a bundle grows. */
function withWire(facts: JobFacts, { size, standard, areaMm2 }: Pick<SizeFound, 'size' | 'standard' | 'areaMm2'>): RepairJob {
  const { job } = facts
  const { strandCount: _count, strandDiameterMm: _strand, insulationThicknessMm: _wall, outsideDiameterMm: _outside, areaMm2: _area, ...kept } = job.wire
  const { wireBeyond: _beyond, ...rest } = job
  const named = standard === 'AWG' || standard === 'SAE J1128' ? { size: `${sold(size)} AWG` } : { size: `${areaMm2} mm²` }
  // A new run gets copper instead of copper-clad aluminium.
  const material = facts.material === 'copper-clad-aluminium' ? ({ material: 'annealed-copper' } as const) : {}
  const wire = { ...kept, ...material, standard, ...named }
  return { ...rest, wire: { ...wire, ...growBundle(facts, wire) } }
}

/** A gauge in the trade: odd ones are rarely sold, so the next thicker is taken. */
function sold(size: string): string {
  const gauge = size.replace(/ ?AWG$/, '')
  const number = Number(gauge)
  return Number.isInteger(number) && number > 1 && number % 2 === 1 ? String(number - 1) : gauge
}

/** Widens the bundle for thicker wires. */
function growBundle(facts: JobFacts, wire: RepairJob['wire']): { readonly bundleOutsideMm?: number } {
  const { bundleOutsideMm } = facts.job.wire
  if (bundleOutsideMm === undefined) return {}
  const thickerMm = wireShape(wire, wireSize(wire), quietly).outsideMm
  const grown = bundleOutsideMm ** 2 + facts.loadedInBundle * (thickerMm ** 2 - facts.outsideMm ** 2)
  return { bundleOutsideMm: Math.sqrt(Math.max(grown, bundleRoom * facts.loadedInBundle * thickerMm ** 2)) }
}

/** Keeps a wire that suits in current, drop and fuse; else takes the smallest standard size that does. */
export function chooseWire(facts: JobFacts): WireChoice {
  const found = judgeWire(facts)
  if (found.against === null) return { found, suits: true, facts, judged: found, size: null, options: [] }
  const { against } = found
  const clad = facts.material === 'copper-clad-aluminium'
  const inCopper = () => verdictOn(jobFacts({ ...facts.job, wire: { ...facts.job.wire, material: 'annealed-copper' } })).size
  const wanted = clad ? inCopper() : found.size
  if (wanted === null) return { found, suits: false, facts, judged: found, size: null, options: [] }
  const other = jobFacts(withWire(facts, wanted))
  const judged = judgeWire(other, replacedBy(against, other))
  const options: readonly PlanOption[] = [
    { of: 'wire', name: facts.sizeText, verdict: 'unsound', reasons: [against.text] },
    { of: 'wire', name: other.sizeText, verdict: judged.section.verdict, reasons: ['the smallest standard size that suits'] },
  ]
  return { found, suits: false, facts: other, judged, size: other.sizeText, options }
}

/** The old wire's fault as the reason for the new one. */
function replacedBy(against: Finding, other: JobFacts): Finding {
  return findingOf(wireWords, other.units, 'wire-replaced', 'caution', {
    values: against.values,
    names: { ...against.names, wire: other.sizeText, why: firstSentence(against.text) },
    sources: against.sources,
    ...(against.rule === undefined ? {} : { rule: against.rule }),
  })
}
