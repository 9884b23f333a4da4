import type { Provenance } from '../materials/index.ts'
import type { MethodName } from './methodContext.ts'

/** The sections of a repair plan, in the order in which they are read. */
export type SectionId = 'readings' | 'wire-and-protection' | 'cut-back' | 'method' | 'joint' | 'heating' | 'covering' | 'strain-relief' | 'proof'

/** One fact that a rule asks for; several values mean any of them, the value `any` that the fact is given at all. */
export interface RuleCondition {
  readonly field: string
  readonly op: '=' | '!=' | '<' | '<=' | '>' | '>='
  readonly values: readonly (string | number | boolean)[]
}

/**
 * One rule of the trade as data. All conditions must hold, none means always.
 * A stricter rule wins over a looser one, and what forbids over what favours.
 * A rule with `conflictsWith` records sources that disagree, and states the default.
 */
export interface PracticeRule {
  readonly id: string
  readonly decides: SectionId | 'cautions'
  readonly statement: string
  readonly conditions: readonly RuleCondition[]
  /** `limits` sets a bound on a number, a place or a validity; `favours` ranks first among allowed ways; `informs` decides nothing. */
  readonly effect: 'forbids' | 'requires' | 'favours' | 'limits' | 'informs'
  /** With `forbids` the ones ruled out, with `favours` the ones put first, else the ones to which it applies; empty: no method of the seven in particular. */
  readonly methods: readonly MethodName[]
  /** Figures in SI units named by the end of the key; `printed...` keeps a figure as its source prints it, `notRead` lists keys that are ours or recalled. */
  readonly values: Readonly<Record<string, unknown>>
  readonly source: Provenance
  readonly conflictsWith?: readonly string[]
}
