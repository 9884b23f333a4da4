import type { Provenance } from '@strandwise/core'
import type { RepairJob } from '../job/repairJob.ts'
import type { PlanVerdict } from './repairPlan.ts'

export interface Stop {
  readonly verdict: PlanVerdict
  readonly text: string
  readonly source: Provenance
}

/** Above these a circuit is no longer extra-low voltage in the sense of this plan. */
const mostDcV = 60
const mostAcRmsV = 30

const published = (source: string): Provenance => ({ status: 'published', source })
const practice: Provenance = { status: 'common practice', source: 'common practice, no published source' }

const byKind: Readonly<Partial<Record<RepairJob['circuit']['kind'], Stop>>> = {
  airbag: {
    verdict: 'refused',
    text: 'Airbag and belt-tensioner wiring: no probing, no ohmmeter, no splice, no heat. Leave it alone; have the maker’s workshop fit a new harness part.',
    source: published('vehicle makers’ and rescue guides on restraint systems'),
  },
  'high-voltage': {
    verdict: 'refused',
    text: 'High-voltage circuit: off limits. It may stay live for minutes after shut-off and its battery never switches off. Hand it to people trained for that vehicle.',
    source: published('rescue guides on high-voltage vehicles'),
  },
  mains: {
    verdict: 'refused',
    text: 'Mains, shore power and inverter outputs: licensed people only. This plan ends at the low-voltage side.',
    source: published('scope limits of 60 V DC and 30 V AC rms'),
  },
  safety: {
    verdict: 'refused',
    text: 'Braking, steering, throttle and other safety circuits: the maker’s own procedure only, or a new part. A general plan does not release them.',
    source: practice,
  },
  'fuel-or-explosive': {
    verdict: 'refused',
    text: 'Wiring in or on a fuel tank, pump or sender, in a gas locker or any explosive atmosphere: no repair by this plan. Replace the part, or have it done.',
    source: practice,
  },
  'data-pair': {
    verdict: 'caution',
    text: 'A data pair is no power wire: only by the maker’s own procedure, and where it allows a splice, keep the twist right up to the joint.',
    source: { status: 'from memory', source: 'vehicle network wiring guides' },
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
      source: published('extra-low voltage limits of 60 V DC and 30 V AC rms'),
    })
  }
  return stops
}
