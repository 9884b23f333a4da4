import type { PlanSection, PlanStep, PlanValue, SectionId } from './repairPlan.ts'

/** One step with what shows that it is right. */
export const step = (text: string, check: string, values: readonly PlanValue[] = []): PlanStep => ({ text, check, values })

/** Values of a section by their names, for the step that measures them. */
export const valuesOf = (sections: readonly PlanSection[], id: SectionId, names: readonly string[]): readonly PlanValue[] =>
  (sections.find((section) => section.id === id)?.values ?? []).filter((value) => names.includes(value.name))
