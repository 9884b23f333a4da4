import type { Provenance } from '../materials/index.ts'
import type { MethodName } from './methodContext.ts'

/** The sections of a repair plan, in reading order. */
export type SectionId = 'readings' | 'wire-and-protection' | 'cut-back' | 'method' | 'joint' | 'heating' | 'covering' | 'strain-relief' | 'proof'

/** A condition on one fact; several values mean any of them, the value `any` that the fact is given at all. */
export interface RuleCondition {
  readonly field: string
  readonly op: '=' | '!=' | '<' | '<=' | '>' | '>='
  readonly values: readonly (string | number | boolean)[]
}

/** One rule of the trade as data. All conditions must hold; without conditions it always applies. A stricter rule wins over a looser one, a prohibition over a preference. A rule with `conflictsWith` records disagreeing sources, and states the default. */
export interface PracticeRule {
  readonly id: string
  readonly decides: SectionId | 'cautions'
  readonly statement: string
  readonly conditions: readonly RuleCondition[]
  /** `limits` bounds a number, a place or a validity; `favours` ranks a method first among allowed ones; `informs` decides nothing. */
  readonly effect: 'forbids' | 'requires' | 'favours' | 'limits' | 'informs'
  /** For `forbids` the methods excluded, for `favours` those preferred, else those to which it applies; empty: no method in particular. */
  readonly methods: readonly MethodName[]
  /** Figures in the SI unit that ends the key; `printed...` keeps a figure as its source prints it, `notRead` lists keys that are ours or from memory. */
  readonly values: Readonly<Record<string, unknown>>
  readonly source: Provenance
  readonly conflictsWith?: readonly string[]
}
