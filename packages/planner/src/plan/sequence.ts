import type { MethodName } from '@strandwise/core'
import type { JobFacts } from '../facts/jobFacts.ts'
import type { Covering } from './coveringSection.ts'
import { insertedMm } from './cutBack.ts'
import { joiningSteps } from './joiningSteps.ts'
import { mm, volt } from './print.ts'
import { jointShareOfDropV } from './readingsSection.ts'
import type { PlanSection, PlanStep } from './repairPlan.ts'
import { step, valuesOf } from './step.ts'

const switchedOff = step(
  'Switch off, take the source off the wire, and prove the wire dead at the place of work.',
  'The meter shows the known live point, nothing on the wire, and the known point again.',
)

/** The repair step by step, in the order of work, each with what shows that it is right. */
export function sequenceFor(facts: JobFacts, method: MethodName, sections: readonly PlanSection[], covering: Covering): readonly PlanStep[] {
  if (facts.job.circuit.kind === 'data-pair')
    return [
      switchedOff,
      step(
        'Look up the maker’s procedure for this pair: whether it may be spliced at all, where, and how close to the joint the twist must run.',
        'You have it before you. Without it the pair is replaced from plug to plug.',
      ),
    ]
  return [
    ...beforeCutting(facts, sections),
    switchedOff,
    ...(method === 'replace-the-run' ? newRun(facts, sections) : cutAndJoin(facts, method, sections, covering)),
    ...afterwards(facts, method, sections),
  ]
}

function beforeCutting(facts: JobFacts, sections: readonly PlanSection[]): readonly PlanStep[] {
  const steps: PlanStep[] = []
  if (facts.flammableVapour)
    steps.push(step('Air the space and check it with a detector, before anything is switched or unplugged.', 'The detector finds nothing, low down as well.'))
  if (facts.job.damage.kind === 'unknown' && sections.some((section) => section.id === 'readings' && section.verdict === 'cannot tell'))
    steps.push(
      step(
        `Cut nothing yet: read volts from joint-in to joint-out with the load on. More than ${volt(jointShareOfDropV(facts))} proves the fault there: go on. Less: stop, and read over the next stretch.`,
        'The reading proves the fault where you mean to cut.',
        valuesOf(sections, 'readings', ['drop allowed over the joint']),
      ),
    )
  return steps
}

function newRun(facts: JobFacts, sections: readonly PlanSection[]): readonly PlanStep[] {
  return [
    step(
      `Draw in a new run of ${facts.sizeText} from terminal to terminal, of the same insulation or better.`,
      'No splice, no bend tighter than ten diameters, no pull.',
      valuesOf(sections, 'strain-relief', ['least bend radius']),
    ),
  ]
}

function cutAndJoin(facts: JobFacts, method: MethodName, sections: readonly PlanSection[], covering: Covering): readonly PlanStep[] {
  const steps: PlanStep[] = []
  const inserted = insertedMm(method, facts)
  if (method === 'new-crimped-terminal')
    steps.push(step('Release the old terminal from its housing with the tool made for it, and note its place.', 'The housing and its lock are whole.'))
  steps.push(
    step(
      'Cut back, strand by strand bright all round.',
      'Every strand is bright and bends without breaking; the insulation is soft.',
      valuesOf(sections, 'cut-back', ['cut back', 'slack left']),
    ),
  )
  if (inserted > 0) {
    const splices =
      method === 'new-crimped-terminal' ? 'Its one splice lies at the far end from the plug.' : 'Its two splices lie staggered, well back from the plug.'
    steps.push(
      step(
        `Cut ${mm(inserted)} of the same wire, or the next size up, to put in, and shorten the old wire so that the lead ends up as long as it was. ${splices}`,
        'The lead reaches the plug without pull and leaves 20 mm.',
      ),
    )
  }
  steps.push(...slideOn(facts, method, covering), ...joiningSteps(facts, method, inserted > 0, sections), ...shrink(facts, method, covering))
  return steps
}

/** Whatever goes over the joint goes on the wire before it. */
function slideOn(facts: JobFacts, method: MethodName, { sleeve, needed, cutMm }: Covering): readonly PlanStep[] {
  const check = 'It passes over everything that follows.'
  if (method === 'solder-sleeve') return [step('Slide the solder sleeve on now, well away from the heat.', check)]
  if (sleeve !== null) return [step(`Cut the sleeve ${mm(cutMm)} long and slide it on now, well away from the heat.`, check)]
  if (needed !== null) return [step(`Slide on now ${mm(cutMm)} of ${needed.words}, well away from the heat.`, check)]
  const seal = facts.job.terminal?.sealInsideMm
  return method === 'new-crimped-terminal' && seal !== undefined
    ? [step('Slide the wire seal on now: it does not pass over a crimped terminal.', 'It grips the insulation all round.')]
    : []
}

function shrink(facts: JobFacts, method: MethodName, { sleeve, needed }: Covering): readonly PlanStep[] {
  const sealed = method === 'crimped-and-sealed-butt-splice' || (method === 'new-crimped-terminal' && insertedMm(method, facts) > 0)
  const own = sleeve !== null || needed !== null
  if (!own && !sealed) return []
  if (facts.flammableVapour)
    return [step('Leave the sleeve unshrunk until the space is vented and checked, or shrink it outside.', 'The detector finds nothing while heat is in use.')]
  const lined = sealed || sleeve?.material === 'polyolefin-adhesive-lined' || needed?.lined === true
  return [
    step(
      `Shrink the ${own ? 'sleeve' : 'sealing sleeve of the splice'} from the middle outwards.`,
      lined ? 'Adhesive shows all round at both ends.' : 'No bubble, no scorch, tight on the insulation at both ends.',
    ),
  ]
}

function afterwards(facts: JobFacts, method: MethodName, sections: readonly PlanSection[]): readonly PlanStep[] {
  const wire = sections.find((section) => section.id === 'wire-and-protection')
  const [unmended] = wire?.verdict === 'unsound' ? wire.reasons : []
  const steps: PlanStep[] = []
  if (method === 'new-crimped-terminal')
    steps.push(step('Push the terminal home in its housing.', 'It clicks, and a light tug on the wire does not bring it back.'))
  steps.push(
    step(
      'Tie the lead on both sides of the repair, so that the wire hangs free of pull.',
      'The joint does not move when the lead is moved by hand.',
      valuesOf(sections, 'strain-relief', ['least bend radius']),
    ),
  )
  if (facts.wet) steps.push(step('Leave a drip loop below the plug.', 'Water drops off at the lowest point, not into the seal.'))
  steps.push(step('With the load unplugged, read ohms from feed to return and to the frame.', 'No short, right polarity.'))
  if (unmended !== undefined)
    steps.push(
      step(`Before power goes on, mend what the repair does not: ${unmended}`, 'Wire, terminal and fuse suit the current; plan again with what you fitted.'),
    )
  steps.push(
    step('Power on through the right fuse, load on.', 'Nothing smells, smokes or grows warm in the first minutes.'),
    lastReading(method, sections),
    step(
      'Write down what was found and what was left: place, wire, cause, method, tool, readings before and after, date.',
      'Someone else could repeat the reading.',
    ),
  )
  return steps
}

/** The joint is covered by now, and insulation is not pierced: the reading is taken between open metal on both sides. */
function lastReading(method: MethodName, sections: readonly PlanSection[]): PlanStep {
  if (method === 'replace-the-run')
    return step(
      'After the settling time read the drop over the whole run, out and back, and feel the terminals at both ends.',
      'Drop within what the run is allowed, no terminal warmer than its wire.',
      valuesOf(sections, 'proof', ['load on before reading']),
    )
  return step(
    'After the settling time read the drop between the nearest open metal on both sides, take off what the plain wire between drops, and feel the warmth beside the wire 200 mm away. Pierce nothing.',
    'Drop within the limit, no more than 10 K warmer than the wire.',
    valuesOf(sections, 'proof', ['load on before reading', 'drop over the new joint, at most', 'make it again from', 'plain wire drops, each metre']),
  )
}
