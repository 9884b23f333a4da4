import { dropTestVerdict, type ProofVerdict, readingInterval, twoWireProof } from '@strandwise/core'
import type { JobFacts } from '../facts/jobFacts.ts'
import { assumed } from '../job/assumed.ts'
import type { JobReading } from '../job/repairJob.ts'
import { ampere, ohm, span, volt } from './print.ts'
import type { PlanSection } from './repairPlan.ts'
import { rule } from './rule.ts'
import { SectionDraft } from './sectionDraft.ts'

/** What one reading proves of the stretch between its two places, at the working current. */
interface Finding {
  readonly verdict: ProofVerdict
  readonly text: string
}

interface Meter {
  readonly percentOfReading: number
  readonly counts: number
  readonly resolution: number
}

function meterOf(reading: JobReading): Meter {
  const ohms = reading.kind === 'resistance' || reading.kind === 'four-wire'
  const usual = ohms ? assumed.meterOhm : assumed.meterVolt
  return {
    percentOfReading: reading.percentOfReading ?? usual.percentOfReading,
    counts: reading.counts ?? usual.counts,
    resolution: reading.resolution ?? (reading.kind === 'four-wire' ? assumed.fourWireResolutionOhm.value : usual.resolution),
  }
}

const stretch = (reading: JobReading) => `${reading.from} to ${reading.to}${reading.when === 'moved' ? ', while moved' : ''}`

function resistanceFinding(draft: SectionDraft, reading: JobReading, facts: JobFacts, limitV: number): Finding {
  const meter = meterOf(reading)
  const leadOhm = reading.leadOhm ?? assumed.leadOhm.value
  const leadUncertaintyOhm = reading.leadUncertaintyOhm ?? assumed.leadOhm.uncertainty
  const inputs = {
    readingOhm: reading.value,
    meter: { percentOfReading: meter.percentOfReading, counts: meter.counts, resolutionOhm: meter.resolution, leadOhm, leadUncertaintyOhm },
    currentA: facts.currentA,
    allowedDropV: limitV,
  }
  const proof = twoWireProof(inputs)
  draft.working('twoWireProof', inputs)
  const low = Math.max(0, proof.dropLowV)
  const range = span(low, proof.dropHighV, volt)
  const what = `${ohm(reading.value)} with two leads, ${stretch(reading)}: at ${ampere(facts.currentA)} that is a drop of ${range}, and ${volt(limitV)} is allowed there`
  return {
    verdict: proof.verdict,
    text:
      proof.verdict === 'cannot tell'
        ? `${what}. It proves neither a good nor a bad joint: the leads and the last digit are larger than the joint. Read the drop under load instead.`
        : `${what}: it ${proof.verdict}.`,
  }
}

function dropFinding(draft: SectionDraft, reading: JobReading, facts: JobFacts, limitV: number): Finding {
  const interval = readingInterval({ reading: Math.abs(reading.value), ...meterOf(reading) })
  const testA = reading.currentA ?? facts.currentA
  const inputs = {
    measuredV: Math.abs(reading.value),
    uncertaintyV: (interval.high - interval.low) / 2,
    testA,
    workingA: facts.currentA,
    allowedDropV: limitV,
  }
  const proof = dropTestVerdict(inputs)
  draft.working('dropTestVerdict', inputs)
  const what = `${volt(Math.abs(reading.value))} under load, ${stretch(reading)}: at ${ampere(facts.currentA)} a drop of ${span(Math.max(0, proof.dropLowV), proof.dropHighV, volt)}; ${volt(limitV)} is allowed there`
  return {
    verdict: proof.verdict,
    text: proof.verdict === 'cannot tell' ? `${what}. The meter's own uncertainty covers the limit: use a finer range.` : `${what}: it ${proof.verdict}.`,
  }
}

function fourWireFinding(draft: SectionDraft, reading: JobReading, facts: JobFacts, limitV: number): Finding {
  const interval = readingInterval({ reading: reading.value, ...meterOf(reading) })
  const limitOhm = limitV / facts.currentA
  draft.working('readingInterval', { reading: reading.value, ...meterOf(reading) })
  const verdict: ProofVerdict = interval.high <= limitOhm ? 'passes' : interval.low > limitOhm ? 'fails' : 'cannot tell'
  return {
    verdict,
    text: `${ohm(reading.value)} with four wires, ${stretch(reading)}: ${span(Math.max(0, interval.low), interval.high, ohm)}; ${ohm(limitOhm)} is allowed there: ${verdict === 'cannot tell' ? 'too near the limit to tell' : `it ${verdict}`}.`,
  }
}

/** Readings that lie across the joint or the lead with the fault; the others are only listed. */
function across(reading: JobReading): boolean {
  const places = [reading.from, reading.to]
  return (
    places.includes('joint-in') || places.includes('joint-out') || places.includes('terminal-wire') || (places.includes('fuse-out') && places.includes('load+'))
  )
}

/** What each reading proves at the working current and what it can't; a drop under load beats ohms. */
export function readingsSection(facts: JobFacts): PlanSection {
  const draft = new SectionDraft('readings')
  const { readings = [], damage } = facts.job
  const limitV = jointShareOfDropV(facts)
  const findings: Finding[] = []
  for (const reading of readings.filter(across)) {
    if (reading.kind === 'resistance') findings.push(resistanceFinding(draft, reading, facts, limitV))
    else if (reading.kind === 'drop') findings.push(dropFinding(draft, reading, facts, limitV))
    else if (reading.kind === 'four-wire') findings.push(fourWireFinding(draft, reading, facts, limitV))
  }
  const seen = damage.kind !== 'unknown'
  const fails = findings.filter((finding) => finding.verdict === 'fails')
  const passes = findings.filter((finding) => finding.verdict === 'passes')
  draft.value('drop allowed over the joint', limitV, 'V', assumed.ours)
  if (fails.length > 0 && passes.length === 0) draft.say('sound', 'The readings prove the fault where you looked: repair it.')
  else if (fails.length > 0)
    draft.say(
      'caution',
      'Some readings fail and some pass: the fault comes and goes. Read the drop under load while you move the lead every few centimetres.',
      rule('rd-wiggle').source,
    )
  else if (passes.length > 0 && !seen) {
    draft.say(
      'cannot tell',
      'What you read is in order: this joint is not shown to be the fault. Read the drop over the next stretch of the circuit, with the load on, before you cut anything.',
    )
  } else if (passes.length > 0)
    draft.say(
      'caution',
      'The readings pass although the damage is in sight: it conducts now and will not stay so. Repair it, and keep looking for a second fault.',
    )
  else if (findings.length > 0)
    draft.say(
      'cannot tell',
      `No reading here can tell a good joint from a bad one. The reading that would: volts from joint-in to joint-out with the load on; more than ${volt(limitV)} proves the fault.${seen ? ' What you see is reason enough to repair all the same.' : ''}`,
    )
  else if (seen)
    draft.say(
      'caution',
      `No reading across the fault was given. What you see is reason enough to repair; volts from joint-in to joint-out with the load on would show what it costs (${volt(limitV)} is allowed).`,
    )
  else
    draft.say(
      'cannot tell',
      `Nothing is seen and nothing was read across the fault. Read volts from joint-in to joint-out with the load on; more than ${volt(limitV)} proves the fault there.`,
    )
  for (const finding of findings) draft.say('sound', finding.text)
  if (readings.some((reading) => reading.kind === 'resistance')) draft.say('sound', rule('rd-continuity-cannot').statement, rule('rd-continuity-cannot').source)
  return draft.done()
}

/** The outer limit of one joint: a tenth of the drop budget. */
export function jointShareOfDropV(facts: JobFacts): number {
  return facts.allowedDropV * assumed.jointShareOfDrop.value
}
