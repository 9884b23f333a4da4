import type { JobFacts } from '../facts/jobFacts.ts'
import type { Assume } from '../job/assume.ts'
import { coveringSection } from './coveringSection.ts'
import { cutBackSection } from './cutBackSection.ts'
import { heatingSection } from './heatingSection.ts'
import { jointSection } from './jointSection.ts'
import { chooseMethod, methodSection } from './methodSection.ts'
import { partsFor } from './parts.ts'
import { proofSection } from './proofSection.ts'
import { readingsSection } from './readingsSection.ts'
import type { PlanAssumption, PlanSection, PlanVerdict } from './repairPlan.ts'
import { sequenceFor } from './sequence.ts'
import { strainSection } from './strainSection.ts'
import { worst } from './verdict.ts'
import { wireSection } from './wireSection.ts'

/** The sections of a plan and what follows from them; also run on the job with an assumption changed. */
export function planFrom(facts: JobFacts) {
  const assumptions: PlanAssumption[] = [...facts.assumptions]
  const assume: Assume = (field, given, value, why) => {
    if (given !== undefined) return given
    if (!assumptions.some((item) => item.field === field)) assumptions.push({ field, value, why })
    return value
  }
  const choice = chooseMethod(facts)
  const { considered, recommended } = choice
  const heating = heatingSection(facts, considered, assume)
  const covering = coveringSection(facts, considered)
  const sections: readonly PlanSection[] = [
    readingsSection(facts),
    wireSection(facts),
    cutBackSection(facts, considered, recommended),
    methodSection(facts, choice),
    jointSection(facts, choice),
    heating.section,
    covering.section,
    strainSection(facts, considered),
    // What is proven is the repair that is made.
    proofSection(facts, choice),
  ]
  const same = recommended === considered
  const coveringDone = same ? covering : coveringSection(facts, recommended)
  const done = same
    ? sections
    : [cutBackSection(facts, recommended), strainSection(facts, recommended), ...sections.filter(({ id }) => id !== 'cut-back' && id !== 'strain-relief')]
  return {
    verdict: worst(...sections.map((section) => section.verdict)) as PlanVerdict,
    considered,
    recommended,
    sections,
    assumptions,
    options: [...choice.options, ...heating.options, ...covering.options],
    sequence: sequenceFor(facts, recommended, done, coveringDone),
    parts: partsFor(facts, recommended, coveringDone),
  }
}
