import { type JobFacts, planValue, type SectionDraft } from '../facts/inner.ts'
import type { coveringWords } from './coveringWords.ts'

type Draft = SectionDraft<typeof coveringWords>

/** The wire at its terminal: it must pass the housing's hole and suit its seal. */
export function throughHousing(draft: Draft, facts: JobFacts): void {
  const { housingHoleMm } = facts.job.terminal ?? {}
  sealRange(draft, facts, facts.outsideMm, 'wire-beyond-seal')
  if (housingHoleMm === undefined || facts.outsideMm <= housingHoleMm) return
  const values = { outside: planValue('outside', facts.outsideMm, 'mm'), hole: planValue('hole of the housing', housingHoleMm, 'mm') }
  draft.say('hole-too-small', 'caution', { values, names: { size: facts.sizeText } })
}

/** A caution if a sleeve or the wire itself is beyond the range of the housing's wire seal. */
export function sealRange(draft: Draft, facts: JobFacts, outsideMm: number, code: 'seal-range' | 'wire-beyond-seal' = 'seal-range'): void {
  const { sealInsideMm } = facts.job.terminal ?? {}
  if (sealInsideMm === undefined || (outsideMm >= sealInsideMm.low && outsideMm <= sealInsideMm.high)) return
  const values = {
    outside: planValue('outside', outsideMm, 'mm'),
    low: planValue('seal, from', sealInsideMm.low, 'mm'),
    high: planValue('seal, to', sealInsideMm.high, 'mm'),
  }
  draft.say(code, 'caution', { values, names: { size: facts.sizeText }, rule: 'co-seal-range' })
}
