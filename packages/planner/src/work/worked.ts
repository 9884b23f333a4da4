import type { Decided, Deciding } from '../decision/inner.ts'
import type { Diagnosis } from '../diagnosis/index.ts'
import type { Finding, JobFacts } from '../facts/inner.ts'
import type { JudgedWay, WireChoice } from '../ways/inner.ts'

/** Input of steps and parts. */
export interface Work {
  /** Facts of the job as found. */
  readonly facts: JobFacts
  readonly diagnosis: Diagnosis
  readonly wire: WireChoice
  readonly decided: Decided
  readonly decision: Deciding['decision']
}

/** The same with a way to mend. */
export interface Mending extends Work {
  readonly way: JudgedWay
  /** Facts of the wire that the way uses. */
  readonly to: JobFacts
}

export const fuseChangeOf = ({ wire, decided }: Work): Finding | null => (decided.way?.method === 'replace-the-run' ? wire.judged : wire.found).fuseChange
