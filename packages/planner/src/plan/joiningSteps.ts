import { type MethodName, solderWireLengthMm } from '@strandwise/core'
import type { JobFacts } from '../facts/jobFacts.ts'
import { solderedJoint, solderedMethods } from '../facts/soldered.ts'
import { jointConsumesMm } from './cutBack.ts'
import { mm } from './print.ts'
import type { PlanSection, PlanStep } from './repairPlan.ts'
import { figure } from './rule.ts'

/** The solder wire that lengths are told for: a common one. */
const solderWireMm = 1

/** The joint itself, by its method. */
export function joiningSteps(facts: JobFacts, method: MethodName, inserted: boolean, sections: readonly PlanSection[]): readonly PlanStep[] {
  return solderedMethods.includes(method) ? soldering(facts, method) : crimping(method, inserted, sections)
}

function soldering(facts: JobFacts, method: MethodName): readonly PlanStep[] {
  const joint = solderedJoint(method, facts)
  const laid: PlanStep =
    method === 'soldered-lineman-splice'
      ? {
          text: `Strip ${mm(jointConsumesMm(method, facts) + facts.outsideMm)} of each end and tin both with rosin flux. Cross them, wind each round the other in at least ${figure('jg-lineman', 'minTurnsEach')} tight turns, and trim the ends flat.`,
          values: [],
          check: 'No gap between turns, nothing over the insulation; the splice holds a light pull before it is soldered.',
        }
      : {
          text: `Strip ${mm(joint.overlapMm + facts.outsideMm)} of each end, ${method === 'solder-sleeve' ? '' : 'tin both with rosin flux, '}lay them side by side over ${mm(joint.overlapMm)}, and hold them still.`,
          values: [],
          check: 'No strand stands out; nothing pulls.',
        }
  const solderMm = solderWireLengthMm({ volumeMm3: joint.solderMm3, wireDiameterMm: solderWireMm })
  return [
    laid,
    {
      text:
        method === 'solder-sleeve'
          ? 'Heat the middle until the ring has run to a fillet, then the ends.'
          : `Heat from below and feed about ${Math.ceil(solderMm)} mm of ${solderWireMm} mm ${joint.alloy} solder on the far side.`,
      values: [],
      check: 'Solder runs thin along both sides and the strands show through it; then let it set untouched.',
    },
  ]
}

function crimping(method: MethodName, inserted: boolean, sections: readonly PlanSection[]): readonly PlanStep[] {
  const terminal = method === 'new-crimped-terminal'
  const sample = (sections.find((section) => section.id === 'proof')?.values ?? []).filter((value) => value.name === 'sample holds at least')
  const steps: PlanStep[] = [
    {
      text: `Strip to the barrel's depth, untinned, and crimp ${terminal ? 'the new terminal with its own die' : 'the butt splice with the ratchet tool made for it'}. First make one sample of the same wire and pull it apart.`,
      values: sample,
      check: 'The sample holds the table force; in the repair wire shows in the inspection hole and a light tug moves nothing.',
    },
  ]
  if (terminal && inserted)
    steps.push({
      text: 'Crimp the splice of the inserted length with the ratchet tool made for it.',
      values: [],
      check: 'Wire shows in the inspection hole, a light tug moves nothing.',
    })
  return steps
}
