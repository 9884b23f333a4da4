import { jobForm } from '@strandwise/planner/job'
import { type Answers, askedFields, textsOf } from './answers.ts'

const key = 'strandwise.plan.1'
const longestText = 400

/** Only texts under names that the form has: whatever else stands in the store is left out. */
function known(value: unknown): Answers {
  if (typeof value !== 'object' || value === null) return {}
  const texts = Object.fromEntries(Object.entries(value).filter(([, text]) => typeof text === 'string' && text.length <= longestText)) as Record<string, string>
  const names = new Set([
    ...jobForm.filter((group) => group.most !== undefined).map((group) => group.at),
    ...askedFields(texts).flatMap((asked) => textsOf(asked.field, asked.path)),
  ])
  return Object.fromEntries(Object.entries(texts).filter(([name]) => names.has(name)))
}

/** What was kept in this browser; null where nothing was, or the browser keeps nothing. */
export function keptAnswers(): Answers | null {
  try {
    const text = localStorage.getItem(key)
    return text === null ? null : known(JSON.parse(text))
  } catch {
    return null
  }
}

/** False where the browser refuses to keep anything. */
export function keep(answers: Answers): boolean {
  try {
    localStorage.setItem(key, JSON.stringify(answers))
    return true
  } catch {
    return false
  }
}

export function forget(): void {
  try {
    localStorage.removeItem(key)
  } catch {
    // A browser that keeps nothing has nothing to forget.
  }
}
