import type { PlanAssumption } from './assumption.ts'

/** Takes a default and lists it as an assumption: field path, given value, default, reason. */
export type Assume = <T>(field: string, given: T | undefined, value: T, why: string) => T

/** Takes the same defaults without listing them. */
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
