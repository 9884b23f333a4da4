import { type PracticeRule, practiceRulesBySection } from '@strandwise/core/rules'

const words = (id: string): string =>
  id
    .replaceAll('-', ' ')
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()

export interface Topic {
  readonly id: string
  readonly title: string
  readonly rules: readonly PracticeRule[]
}

/** Rules of the trade by the section they decide. */
export const topics: readonly Topic[] = Object.entries(practiceRulesBySection).map(([id, rules]) => {
  const title = words(id)
  return { id: title.replaceAll(' ', '-'), title: title.charAt(0).toUpperCase() + title.slice(1), rules }
})
