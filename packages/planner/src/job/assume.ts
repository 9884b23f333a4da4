import type { PlanAssumption } from './assumption.ts'

/** A note of what was assumed: the field as a path, the value, and why. */
export type Assume = <T>(field: string, given: T | undefined, value: T, why: string) => T

/** Takes the same values and lists nothing. */
export const quietly: Assume = (_field, given, value) => given ?? value

export function assumptionList(): { readonly list: PlanAssumption[]; readonly assume: Assume } {
  const list: PlanAssumption[] = []
  return {
    list,
    assume: (field, given, value, why) => {
      if (given !== undefined) return given
      list.push({ field, value, why })
      return value
    },
  }
}
