import type { PlanSection, RepairPlan } from '@strandwise/planner'
import { valueText } from '@strandwise/planner/report'
import fc from 'fast-check'

type Working = PlanSection['workings'][number]
type Value = PlanSection['values'][number]

/** A working of a plan, with the values of its section that it gives. */
export interface Noted {
  readonly at: string
  readonly working: Working
  readonly values: readonly Value[]
}

/** Every working of a plan, of all its ways. */
export function notedIn(name: string, { sections, ways }: Pick<RepairPlan, 'sections' | 'ways'>): readonly Noted[] {
  return [...sections, ...ways.filter(({ chosen }) => !chosen).flatMap((way) => way.sections)].flatMap((section) =>
    section.workings.map((working) => ({
      at: `${name}, ${section.id}: ${working.id}`,
      working,
      values: [...section.values, ...section.findings.flatMap(({ values }) => Object.values(values))].filter((value) => value.name === working.gives),
    })),
  )
}

/** A seeded choice of so many. */
export function someOf<T>(all: readonly T[], count: number): readonly T[] {
  const [found = []] = fc.sample(fc.shuffledSubarray([...all], { minLength: Math.min(count, all.length), maxLength: count }), { numRuns: 1 })
  return found
}

/** Inputs as the command takes them: name=value, with dots into objects and lists. */
export function asArguments(inputs: unknown, path = ''): readonly string[] {
  if (typeof inputs !== 'object' || inputs === null) return [`${path}=${String(inputs)}`]
  return Object.entries(inputs).flatMap(([key, value]) => asArguments(value, path === '' ? key : `${path}.${key}`))
}

/** True if the value, or an end of its band, is printed with the same digits as one of the numbers. */
export function printsOneOf(value: Value, numbers: readonly number[]): boolean {
  const printed = (number: number) => valueText({ name: value.name, value: number, unit: value.unit, provenance: value.provenance })
  return [value.value, value.low, value.high].some((end) => end !== undefined && numbers.some((number) => printed(number) === printed(end)))
}
