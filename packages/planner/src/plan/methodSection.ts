import { assessMethods, galvanicDifferenceV, type MethodName, UnknownEntryError } from '@strandwise/core'
import { methodContext } from '../facts/context.ts'
import type { JobFacts } from '../facts/jobFacts.ts'
import { solderedMethods } from '../facts/soldered.ts'
import { cutBackFor, insertedMm, spliceRoom } from './cutBack.ts'
import { isSplice, methodTitles } from './methodTitles.ts'
import type { PlanOption, PlanSection, PlanVerdict } from './repairPlan.ts'
import { rule } from './rule.ts'
import { SectionDraft } from './sectionDraft.ts'

/** From here a difference of the anodic index wants plating or sealing in the wet: common practice, 0.15 V in harsh places. */
const galvanicLimitV = 0.15

const verdictOf: Readonly<Record<'suitable' | 'conditional' | 'unsuitable', PlanVerdict>> = { suitable: 'sound', conditional: 'caution', unsuitable: 'unsound' }

export interface MethodChoice {
  /** What the person means to do, or else what the plan recommends: the sections speak of it. */
  readonly considered: MethodName
  /** What the plan would do; its steps are for this one. */
  readonly recommended: MethodName
  readonly options: readonly PlanOption[]
  readonly assessed: ReturnType<typeof assessMethods>
}

/** Each method with its verdict in this place, and the one that the plan takes. */
export function chooseMethod(facts: JobFacts): MethodChoice {
  const assessed = assessMethods(methodContext(facts)).filter((item) => facts.job.methods?.includes(item.method) ?? true)
  const nearPlug = facts.job.damage.fromTerminationMm < spliceRoom(facts).needsMm
  const options = assessed.map(
    (item): PlanOption => ({
      of: 'method',
      name: item.method,
      verdict: verdictOf[item.verdict],
      reasons: item.reasons.map((reason) => reason.text),
    }),
  )
  // Near a plug a splice gives way to the terminal, away from it the terminal to a splice; a new run always works, and comes after what can be done on conditions,
  // save where the wire bends at work: there no joint beats it.
  const order = ['suitable', 'conditional', 'unsuitable'] as const
  const verdictOfSealed = assessed.find((item) => item.method === 'crimped-and-sealed-butt-splice')?.verdict ?? 'suitable'
  // A terminal on an inserted length is no better than the sealed splice that the length hangs on.
  const terminalAtBest = insertedMm('new-crimped-terminal', facts) > 0 ? order.indexOf(verdictOfSealed) : 0
  const rank = ({ method, verdict }: (typeof assessed)[number]) => {
    const lateness = order.indexOf(verdict)
    if (method === 'replace-the-run') return 10 * Math.max(lateness, 1) + (facts.flexes ? 0 : 9)
    const meant = method === facts.job.intendedMethod ? 0 : 1
    if (isSplice(method)) return 10 * lateness + (nearPlug ? 4 : 0) + meant
    // To fit a terminal far from the plug gives away all the wire between.
    return 10 * Math.max(lateness, terminalAtBest, nearPlug ? 0 : 1) + (nearPlug ? 0 : 8) + meant
  }
  const best = [...assessed].sort((a, b) => rank(a) - rank(b))[0]
  const recommended = best?.method ?? 'replace-the-run'
  return { considered: facts.job.intendedMethod ?? recommended, recommended, options, assessed }
}

/** Crimp, hand solder, solder sleeve or a new terminal, for that vibration, damp and insulation. */
export function methodSection(facts: JobFacts, choice: MethodChoice): PlanSection {
  const draft = new SectionDraft('method')
  const { considered, recommended } = choice
  const found = choice.assessed.find((item) => item.method === considered)
  const intended = facts.job.intendedMethod !== undefined
  if (found === undefined) draft.say('unsound', `A ${methodTitles[considered]} is not among the methods at hand.`)
  else {
    const word = { suitable: 'suits this place', conditional: 'suits this place on conditions', unsuitable: 'is the wrong joint here' }[found.verdict]
    draft.say(verdictOf[found.verdict], `${intended ? 'You mean to make' : 'The plan takes'} a ${methodTitles[considered]}: it ${word}.`)
    const order = ['forbids', 'requires', 'favours']
    // What the trade thinks of solder is no matter of a crimp.
    const telling = found.reasons.filter((reason) => reason.rule !== 'me-conflict-solder' || solderedMethods.includes(considered))
    for (const reason of [...telling].sort((a, b) => order.indexOf(a.effect) - order.indexOf(b.effect)).slice(0, 8)) {
      draft.say('sound', `${reason.text}${reason.changesIf === undefined ? '' : ` (${reason.changesIf})`}`, reason.source)
    }
  }
  if (recommended !== considered) {
    const cut = cutBackFor(recommended, facts)
    const insert = cut.insertMm > 0 && recommended === 'new-crimped-terminal' ? ', on an inserted length of the same wire with one sealed splice well back' : ''
    draft.say('sound', `Do instead: ${methodTitles[recommended]}${insert}.`)
  }
  metals(draft, facts)
  if (facts.job.circuit.rules === undefined && facts.wet) {
    draft.say(
      'sound',
      `No body of rules is named. If small-craft rules bind you, say so: ${rule('me-boat-lap-and-sleeve').statement}`,
      rule('me-boat-lap-and-sleeve').source,
    )
  }
  return draft.done()
}

function metals(draft: SectionDraft, facts: JobFacts): void {
  const { metal, matingMetal } = facts.job.terminal ?? {}
  if (metal === undefined) return
  try {
    const pairs = [
      ['wire and terminal', galvanicDifferenceV(facts.material, metal)],
      ['terminal and its mate', matingMetal === undefined ? 0 : galvanicDifferenceV(metal, matingMetal)],
    ] as const
    for (const [name, differenceV] of pairs) {
      if (differenceV <= galvanicLimitV) continue
      draft.say(
        facts.wet ? 'caution' : 'sound',
        `${name}: the metals stand ${differenceV.toFixed(2)} V apart on the anodic index; above ${galvanicLimitV} V the baser one is eaten in the wet. Use like platings, or seal.`,
      )
    }
  } catch (error) {
    if (!(error instanceof UnknownEntryError)) throw error
    draft.say('caution', `Whether ${facts.material} may touch ${metal} in the damp is not known here: ask the terminal's maker.`)
  }
}
