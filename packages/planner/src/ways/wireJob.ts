import { conductorTemperatureC, NoSteadyStateError, type SizeStandard, type WireJob, type WireVerdict, wireVerdict } from '@strandwise/core'
import { figure, type JobFacts } from '../facts/inner.ts'

/** Standard of the sizes: the job's, else AWG for a job in AWG or inch, else IEC 60228. */
function standardOf({ job, gauge, units }: JobFacts): SizeStandard {
  return job.wire.standard ?? (gauge !== null || units === 'inch' ? 'AWG' : 'IEC 60228')
}

/** Source resistance from the largest current into a short at its terminals. */
function sourceOhm({ job: { circuit } }: JobFacts): { readonly sourceOhm?: number } {
  if (circuit.sourceResistanceOhm !== undefined && circuit.prospectiveCurrentA !== undefined)
    return { sourceOhm: Math.min(circuit.sourceResistanceOhm, circuit.supplyV / circuit.prospectiveCurrentA) }
  if (circuit.sourceResistanceOhm !== undefined) return { sourceOhm: circuit.sourceResistanceOhm }
  return circuit.prospectiveCurrentA === undefined ? {} : { sourceOhm: circuit.supplyV / circuit.prospectiveCurrentA }
}

/** Input of core's verdict on the wire. */
function wireJob(facts: JobFacts): WireJob {
  const { circuit, load, wire } = facts.job
  const { fuseA } = circuit
  const tolerated = circuit.rules?.includes('small-craft') ? { mostOverWire: figure('wp-cfr-150pct', 'maxRatioToTable') } : {}
  return {
    wire: facts.wire,
    limitC: facts.limitC,
    hottestC: facts.hottestC,
    currentA: facts.currentA,
    ...(facts.duty === null ? {} : { duty: facts.duty }),
    loadedWires: facts.loadedInBundle,
    ...(wire.bundleOutsideMm === undefined || facts.loadedInBundle === 1 ? {} : { bundleOutsideMm: wire.bundleOutsideMm }),
    run: {
      supplyV: facts.supplyV,
      outLengthM: facts.outLengthM,
      returnLengthM: facts.returnLengthM,
      allowedDropV: facts.allowedDropV,
      limitIsStated: circuit.allowedDropV !== undefined,
      ...sourceOhm(facts),
    },
    ...(load.inrushA !== undefined && load.inrushS !== undefined ? { inrush: { currentA: load.inrushA, timeS: load.inrushS } } : {}),
    ...(load.stallA === undefined ? {} : { stallA: load.stallA }),
    fuse: { ...(fuseA === undefined ? {} : { ratedA: fuseA }), ...(facts.fuseKind === null ? {} : { kind: facts.fuseKind }), ...tolerated },
    sizes: standardOf(facts),
  }
}

/** Core's verdict on a wire, with the fuse and the size that serve. */
export interface WireOffer {
  readonly job: WireJob
  readonly verdict: WireVerdict
  readonly fitA: number | null
  /** The fuse to fit does not open a stalled motor. */
  readonly stallPasses: boolean
  /** The smallest standard size that suits; null if none does. */
  readonly size: WireVerdict['size']
}

/** Where no fuse passes the inrush, opens a stall and guards the wire, the inrush is given up first, then the stall: each is told as a caution. */
export function verdictOn(facts: JobFacts): WireOffer {
  const job = wireJob(facts)
  const verdict = wireVerdict(job)
  let { fuseToFitA: fitA, size } = verdict
  let stallPasses = false
  const { inrush, stallA, ...rest } = job
  const stall = stallA === undefined ? {} : { stallA }
  const starts = inrush === undefined ? {} : { inrush }
  for (const [given, less] of [
    [inrush, { ...rest, ...stall }],
    [stallA, { ...rest, ...starts }],
    [inrush === undefined ? undefined : stallA, rest],
  ] as const) {
    if (given === undefined || (fitA !== null && size !== null)) continue
    const again = wireVerdict(less)
    if (fitA === null && again.fuseToFitA !== null) {
      fitA = again.fuseToFitA
      stallPasses = stallA !== undefined && !('stallA' in less)
    }
    size ??= again.size
  }
  return { job, verdict, fitA, stallPasses, size }
}

/** Rises below this are rounding beside the air's temperature. */
const leastRiseK = 1e-6

/** The steady current that heats a joint like the peak of the load's cycle. */
export function warmingA(facts: JobFacts, { conductorC, equivalentA }: WireVerdict): number {
  if (facts.duty === null) return facts.currentA
  try {
    const base = { ...facts.wire, ambientC: facts.hottestC, currentA: facts.currentA }
    const steadyRiseK = conductorTemperatureC(base) - facts.hottestC
    const peakRiseK = (conductorC?.high ?? 0) - facts.hottestC
    if (conductorC === null || steadyRiseK < leastRiseK || peakRiseK < leastRiseK) return equivalentA
    return facts.currentA * Math.sqrt(Math.min(1, peakRiseK / steadyRiseK))
  } catch (error) {
    if (!(error instanceof NoSteadyStateError)) throw error
    return equivalentA
  }
}

/** True if a fuse is required: signal sources and thermocouples cannot overheat a wire. */
export const wantsFuse = ({ job }: JobFacts): boolean => !['signal', 'thermocouple', 'data-pair'].includes(job.circuit.kind)
