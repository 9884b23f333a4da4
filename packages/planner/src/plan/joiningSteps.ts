import type { MethodName } from '@strandwise/core'
import type { JobFacts } from '../facts/jobFacts.ts'
import { solderedJoint, solderedMethods, solderWireMm } from '../facts/soldered.ts'
import { jointConsumesMm } from './cutBack.ts'
import { mm } from './print.ts'
import type { PlanSection, PlanStep } from './repairPlan.ts'
import { figure } from './rule.ts'
import { step, valuesOf } from './step.ts'

/** The joint itself, by its method. */
export function joiningSteps(facts: JobFacts, method: MethodName, inserted: boolean, sections: readonly PlanSection[]): readonly PlanStep[] {
  return solderedMethods.includes(method) ? soldering(facts, method) : crimping(method, inserted, sections)
}

function soldering(facts: JobFacts, method: MethodName): readonly PlanStep[] {
  const joint = solderedJoint(method, facts)
  const laid =
    method === 'soldered-lineman-splice'
      ? step(
          `Strip ${mm(jointConsumesMm(method, facts) + facts.outsideMm)} of each end and tin both with rosin flux. Cross them, wind each round the other in at least ${figure('jg-lineman', 'minTurnsEach')} tight turns, and trim the ends flat.`,
          'No gap between turns, nothing over the insulation; the splice holds a light pull before it is soldered.',
        )
      : step(
          `Strip ${mm(joint.overlapMm + facts.outsideMm)} of each end, ${method === 'solder-sleeve' ? '' : 'tin both with rosin flux, '}lay them side by side over ${mm(joint.overlapMm)}, and hold them still.`,
          'No strand stands out; nothing pulls.',
        )
  const heated =
    method === 'solder-sleeve'
      ? 'Heat the middle until the ring has run to a fillet, then the ends.'
      : `Heat from below and feed about ${joint.solderLengthMm} mm of ${solderWireMm} mm ${joint.alloy} solder on the far side.`
  return [laid, step(heated, 'Solder runs thin along both sides and the strands show through it; then let it set untouched.')]
}

function crimping(method: MethodName, inserted: boolean, sections: readonly PlanSection[]): readonly PlanStep[] {
  const terminal = method === 'new-crimped-terminal'
  const crimped = step(
    `Strip to the barrel's depth, untinned, and crimp ${terminal ? 'the new terminal with its own die' : 'the butt splice with the ratchet tool made for it'}. First make one sample of the same wire and pull it apart.`,
    'The sample holds the table force; in the repair wire shows in the inspection hole and a light tug moves nothing.',
    valuesOf(sections, 'proof', ['sample holds at least']),
  )
  const spliced = step(
    'Crimp the splice of the inserted length with the ratchet tool made for it.',
    'Wire shows in the inspection hole, a light tug moves nothing.',
  )
  return terminal && inserted ? [crimped, spliced] : [crimped]
}
