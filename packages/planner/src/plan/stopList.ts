import type { Provenance } from '@strandwise/core'
import type { RepairJob } from '../job/repairJob.ts'
import type { PlanVerdict } from './repairPlan.ts'
import { figure, rule } from './rule.ts'

export interface Stop {
  readonly verdict: PlanVerdict
  readonly text: string
  readonly source: Provenance
}

/** Above these a circuit is no longer extra-low voltage in the sense of this plan. */
const mostDcV = figure('ca-voltage-limit', 'maxDcV')
const mostAcRmsV = figure('ca-voltage-limit', 'maxAcRmsV')

const byKind: Readonly<Partial<Record<RepairJob['circuit']['kind'], Stop>>> = {
  airbag: {
    verdict: 'refused',
    text: 'Airbag and belt-tensioner wiring: no probing, no ohmmeter, no splice, no heat. Leave it alone; have the maker’s workshop fit a new harness part.',
    source: rule('ca-srs-off-limits').source,
  },
  'high-voltage': {
    verdict: 'refused',
    text: 'High-voltage circuit: off limits. It may stay live for minutes after shut-off and its battery never switches off. Hand it to people trained for that vehicle.',
    source: rule('ca-hv-orange').source,
  },
  mains: {
    verdict: 'refused',
    text: 'Mains, shore power and inverter outputs: licensed people only. This plan ends at the low-voltage side.',
    source: rule('ca-mains').source,
  },
  safety: {
    verdict: 'refused',
    text: 'Braking, steering, throttle and other safety circuits: the maker’s own procedure only, or a new part. A general plan does not release them.',
    source: rule('ca-safety-circuits').source,
  },
  'fuel-or-explosive': {
    verdict: 'refused',
    text: 'Wiring in or on a fuel tank, pump or sender, in a gas locker or any explosive atmosphere: no repair by this plan. Replace the part, or have it done.',
    source: rule('ca-fuel-tank').source,
  },
  'data-pair': {
    verdict: 'caution',
    text: 'A data pair is no power wire: only by the maker’s own procedure, and where it allows a splice, keep the twist right up to the joint.',
    source: rule('me-databus').source,
  },
}

/** What ends the plan before it begins, or never lets it be more than caution. */
export function stopList(job: RepairJob): readonly Stop[] {
  const stops: Stop[] = []
  const kind = byKind[job.circuit.kind]
  if (kind !== undefined) stops.push(kind)
  const ac = job.circuit.waveform === 'ac'
  const most = ac ? mostAcRmsV : mostDcV
  if (job.circuit.supplyV > most) {
    stops.push({
      verdict: 'refused',
      text: `${job.circuit.supplyV} V ${ac ? 'AC' : 'DC'} is above the ${most} V ${ac ? 'AC rms' : 'DC'} up to which this plan goes: the shock itself is the danger. Licensed people only.`,
      source: rule('ca-voltage-limit').source,
    })
  }
  return stops
}
