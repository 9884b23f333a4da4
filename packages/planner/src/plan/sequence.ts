import type { MethodName } from '@strandwise/core'
import type { JobFacts } from '../facts/jobFacts.ts'
import { solderedJoint, solderedMethods } from '../facts/soldered.ts'
import type { Covering } from './coveringSection.ts'
import { insertedMm } from './cutBackSection.ts'
import { methodTitles } from './methodTitles.ts'
import { mm } from './print.ts'
import type { PlanPart, PlanSection, PlanStep, PlanValue } from './repairPlan.ts'

const valuesOf = (sections: readonly PlanSection[], id: string, names: readonly string[]): readonly PlanValue[] =>
  (sections.find((section) => section.id === id)?.values ?? []).filter((value) => names.includes(value.name))

/** The repair step by step, in the order of work, each with what shows that it is right. */
export function sequenceFor(facts: JobFacts, method: MethodName, sections: readonly PlanSection[], covering: Covering): readonly PlanStep[] {
  const steps: PlanStep[] = []
  const add = (text: string, check: string, values: readonly PlanValue[] = []) => steps.push({ text, check, values })
  const wet = facts.job.surroundings.location !== 'dry'
  const inserted = insertedMm(method, facts)

  add(
    'Switch off, take the source off the wire, and prove the wire dead at the place of work.',
    'The meter shows the known live point, nothing on the wire, and the known point again.',
  )
  if (method === 'replace-the-run') {
    add(
      `Draw in a new run of ${facts.sizeText} from terminal to terminal, of the same insulation or better.`,
      'No splice, no bend tighter than ten diameters, no pull.',
      valuesOf(sections, 'strain-relief', ['least bend radius']),
    )
  } else {
    add(
      'Cut back, strand by strand bright all round.',
      'Every strand is bright and bends without breaking; the insulation is soft.',
      valuesOf(sections, 'cut-back', ['cut back', 'slack left']),
    )
    if (inserted > 0) {
      add(
        `Cut ${mm(inserted)} of the same wire, or the next size up, to put in, and shorten the old wire so that the lead ends up as long as it was. ${method === 'new-crimped-terminal' ? 'Its one splice lies at the far end from the plug.' : 'Its two splices lie staggered, well back from the plug.'}`,
        'The lead reaches the plug without pull and leaves 20 mm.',
      )
    }
    if (covering.sleeve !== null)
      add(
        `${method === 'solder-sleeve' ? 'Slide the solder sleeve on' : `Cut the sleeve ${mm(covering.cutMm)} long and slide it on`} now, well away from the heat.`,
        'It passes over everything that follows.',
      )
    steps.push(...joining(facts, method, inserted > 0, sections))
    if (covering.sleeve !== null)
      add(
        'Shrink the sleeve from the middle outwards.',
        wet ? 'Adhesive shows all round at both ends.' : 'No bubble, no scorch, tight on the insulation at both ends.',
      )
  }
  add(
    'Tie the lead on both sides of the repair, so that the wire hangs free of pull.',
    'The joint does not move when the lead is moved by hand.',
    valuesOf(sections, 'strain-relief', ['least bend radius']),
  )
  if (wet) add('Leave a drip loop below the plug.', 'Water drops off at the lowest point, not into the seal.')
  add('With the load unplugged, read ohms from feed to return and to the frame.', 'No short, right polarity.')
  add('Power on through the right fuse, load on.', 'Nothing smells, smokes or grows warm in the first minutes.')
  if (method === 'replace-the-run')
    add(
      'After the settling time read the drop over the whole run, out and back, and feel the terminals at both ends.',
      'Drop within what the run is allowed, no terminal warmer than its wire.',
      valuesOf(sections, 'proof', ['load on before reading']),
    )
  else
    add(
      'After the settling time read the drop over the joint, and feel the warmth beside the wire 200 mm away.',
      'Drop within the limit, no more than 10 K warmer than the wire.',
      valuesOf(sections, 'proof', ['load on before reading', 'drop over the new joint, at most', 'make it again from']),
    )
  add(
    'Write down what was found and what was left: place, wire, cause, method, tool, readings before and after, date.',
    'Someone else could repeat the reading.',
  )
  return steps
}

function joining(facts: JobFacts, method: MethodName, inserted: boolean, sections: readonly PlanSection[]): readonly PlanStep[] {
  if (solderedMethods.includes(method)) {
    const joint = solderedJoint(method, facts)
    return [
      {
        text: `Strip ${mm(joint.overlapMm + facts.outsideMm)}, lay the tinned ends side by side over ${mm(joint.overlapMm)}, flux with rosin, and hold them still.`,
        values: [],
        check: 'No strand stands out; nothing pulls.',
      },
      {
        text:
          method === 'solder-sleeve'
            ? 'Heat the middle until the ring has run to a fillet, then the ends.'
            : `Heat from below and feed about ${Math.ceil(joint.solderMm3)} mm³ of ${joint.alloy} on the far side.`,
        values: [],
        check: 'Solder runs thin along both sides and the strands show through it; then let it set untouched.',
      },
    ]
  }
  const steps: PlanStep[] = [
    {
      text: `Strip to the barrel's depth, untinned, and crimp ${method === 'new-crimped-terminal' ? 'the new terminal with its own die' : 'the butt splice with the ratchet tool made for it'}. First make one sample of the same wire and pull it apart.`,
      values: valuesOf(sections, 'proof', ['sample holds at least']),
      check: 'The sample holds the table force; in the repair wire shows in the inspection hole and a light tug moves nothing.',
    },
  ]
  const shrink = { text: 'Shrink the sealing sleeve of the splice from the middle outwards.', values: [], check: 'Adhesive shows all round at both ends.' }
  if (method === 'crimped-and-sealed-butt-splice') steps.push(shrink)
  if (method === 'new-crimped-terminal' && inserted)
    steps.push(
      {
        text: 'Crimp the splice of the inserted length with the ratchet tool made for it.',
        values: [],
        check: 'Wire shows in the inspection hole, a light tug moves nothing.',
      },
      shrink,
    )
  return steps
}

/** What to fetch before beginning. */
export function partsFor(facts: JobFacts, method: MethodName, covering: Covering): readonly PlanPart[] {
  const parts: PlanPart[] = []
  const inserted = insertedMm(method, facts)
  if (method === 'replace-the-run') parts.push({ name: `${facts.sizeText} ${facts.insulationName} wire`, quantity: facts.outLengthM, unit: 'm' })
  if (inserted > 0) parts.push({ name: `${facts.sizeText} ${facts.insulationName} wire to put in`, quantity: Math.ceil(inserted), unit: 'mm' })
  if (method === 'new-crimped-terminal') {
    parts.push({ name: 'terminal of the plug, for this wire', quantity: 1, unit: '' })
    if (inserted > 0) parts.push({ name: 'crimped and sealed butt splice', quantity: 1, unit: '' })
  }
  if (method === 'crimped-butt-splice' || method === 'crimped-and-sealed-butt-splice')
    parts.push({ name: methodTitles[method], quantity: inserted > 0 ? 2 : 1, unit: '' })
  if (method === 'solder-sleeve') parts.push({ name: 'solder sleeve', quantity: inserted > 0 ? 2 : 1, unit: '' })
  if (covering.sleeve !== null && method !== 'solder-sleeve')
    parts.push({ name: covering.sleeve.name ?? `${covering.sleeve.material} sleeve`, quantity: Math.ceil(covering.cutMm), unit: 'mm' })
  if (solderedMethods.includes(method) && method !== 'solder-sleeve') {
    const joint = solderedJoint(method, facts)
    parts.push({ name: `${joint.alloy} solder, rosin-cored`, quantity: Math.ceil(joint.solderMm3), unit: 'mm³' })
  }
  return parts
}
