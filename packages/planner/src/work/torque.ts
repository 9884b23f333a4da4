import { studTorque } from '@strandwise/core'
import { type JobFacts, printed } from '../facts/inner.ts'

/** Relative tolerance in matching a stud to the table. */
const sameStudShare = 0.02

/** " to at least 15.3 N m" if a published table has the stud, else " as its maker prints". */
export function torqueWords(facts: JobFacts): string {
  const { studMm } = facts.terminal
  const row = studMm === null ? undefined : studTorque.rows.find(({ diameterMm }) => Math.abs(diameterMm / studMm - 1) <= sameStudShare)
  return row === undefined ? ' as its maker prints' : ` to at least ${printed(row.leastTorqueNm, 'N m', facts.units)}`
}
