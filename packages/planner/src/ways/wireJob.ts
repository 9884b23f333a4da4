import { conductorTemperatureC, NoSteadyStateError, type SizeStandard, type WireJob, type WireVerdict, wireVerdict } from '@strandwise/core'
import { figure, type JobFacts } from '../facts/inner.ts'
import type { RepairJob } from '../job/index.ts'

/** What kind of protector guards the wire. */
type FuseKind = NonNullable<RepairJob['circuit']['fuseKind']>

export const fuseKindWords: Readonly<Record<FuseKind, string>> = {
  blade: 'blade fuse',
  'bolt-down': 'bolt-down fuse',
  cartridge: 'cartridge fuse',
  breaker: 'circuit breaker',
}

/** Standard sizes are those of the job's standard, else AWG where the job speaks AWG or inch, else IEC 60228. */
function standardOf({ job, gauge, units }: JobFacts): SizeStandard {
  return job.wire.standard ?? (gauge !== null || units === 'inch' ? 'AWG' : 'IEC 60228')
}

/** The most that the source drives into a short at its own terminals, as a resistance. */
function sourceOhm({ job: { circuit } }: JobFacts): { readonly sourceOhm?: number } {
  if (circuit.sourceResistanceOhm !== undefined && circuit.prospectiveCurrentA !== undefined)
    return { sourceOhm: Math.min(circuit.sourceResistanceOhm, circuit.supplyV / circuit.prospectiveCurrentA) }
  if (circuit.sourceResistanceOhm !== undefined) return { sourceOhm: circuit.sourceResistanceOhm }
  return circuit.prospectiveCurrentA === undefined ? {} : { sourceOhm: circuit.supplyV / circuit.prospectiveCurrentA }
}

/** The wire in its place, as core judges it. */
export function wireJob(facts: JobFacts): WireJob {
  const { circuit, load, wire } = facts.job
  const { fuseA, fuseKind, fuseSeries } = circuit
  const kind = fuseKind ?? (fuseSeries === undefined ? undefined : 'blade')
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
    fuse: { ...(fuseA === undefined ? {} : { ratedA: fuseA }), ...(kind === undefined ? {} : { kind }), ...tolerated },
    sizes: standardOf(facts),
  }
}

/** Core's verdict on the wire; where a stall is what no fuse can open, the fuse that guards the wire all the same. */
export function verdictOn(facts: JobFacts): {
  readonly job: WireJob
  readonly verdict: WireVerdict
  readonly fitA: number | null
  readonly stallPasses: boolean
} {
  const job = wireJob(facts)
  const verdict = wireVerdict(job)
  if (verdict.fuseToFitA !== null || job.stallA === undefined) return { job, verdict, fitA: verdict.fuseToFitA, stallPasses: false }
  const { stallA: _stall, ...rest } = job
  const fitA = wireVerdict(rest).fuseToFitA
  return { job, verdict, fitA, stallPasses: fitA !== null }
}

/** The steady current that warms a joint as much as the load's cycle, at its peak, warms the wire. */
export function warmingA(facts: JobFacts, { conductorC, equivalentA }: WireVerdict): number {
  if (facts.duty === null) return facts.currentA
  try {
    const base = { ...facts.wire, ambientC: facts.hottestC, currentA: facts.currentA }
    const steadyRiseK = conductorTemperatureC(base) - facts.hottestC
    if (conductorC === null || steadyRiseK <= 0) return equivalentA
    return facts.currentA * Math.sqrt(Math.min(1, Math.max(0, (conductorC.high - facts.hottestC) / steadyRiseK)))
  } catch (error) {
    if (!(error instanceof NoSteadyStateError)) throw error
    return equivalentA
  }
}

/** Whether a fuse is asked for at all: a signal's source and a thermocouple feed nothing that could burn a wire. */
export const wantsFuse = ({ job }: JobFacts): boolean => !['signal', 'thermocouple', 'data-pair'].includes(job.circuit.kind)
