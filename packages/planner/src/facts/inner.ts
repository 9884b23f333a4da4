// Internal exports for the planner's other rooms.

export type { BeyondFacts } from './beyond.ts'
export { airAroundJointC, bundleBand, wireCurrent } from './bundle.ts'
export { methodContext } from './context.ts'
export {
  derived,
  type Finding,
  type PlanOption,
  type PlanPart,
  type PlanSection,
  type PlanStep,
  type PlanValue,
  type PlanVerdict,
  planValue,
  type SectionId,
  sectionIds,
  verdicts,
} from './finding.ts'
export { type FuseKind, fuseKindWords } from './fuseKind.ts'
export { type JobFacts, jobFacts } from './jobFacts.ts'
export { printed, printedValue, type Units } from './print.ts'
export { figure, rule } from './rule.ts'
export { findingOf, SectionDraft, sectionTitles } from './sectionDraft.ts'
export { clampedKinds, studKinds, type TerminalFacts, type TerminalKind } from './terminalFacts.ts'
export { bySeverity, worst } from './verdict.ts'
export { type Filling, type FindingWords, filled, firstSentence, type SectionWords } from './words.ts'
