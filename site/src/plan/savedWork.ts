import { type Answers, askedFields, type PageGroup, textsOf, trimmed } from './answers.ts'

const key = 'strandwise.plan.1'
const longestText = 400

/** Only texts under names that the form has: whatever else stands in the store is left out. */
function known(groups: readonly PageGroup[], value: unknown): Answers {
  if (typeof value !== 'object' || value === null) return {}
  const texts = Object.fromEntries(Object.entries(value).filter(([, text]) => typeof text === 'string' && text.length <= longestText)) as Record<string, string>
  const names = new Set([
    ...groups.filter((group) => group.most !== undefined).map((group) => group.at),
    ...askedFields(groups, texts).flatMap((asked) => textsOf(asked.field, asked.path)),
  ])
  return Object.fromEntries(Object.entries(texts).filter(([name]) => names.has(name)))
}

const hasAnswers = (answers: Answers): boolean => Object.entries(trimmed(answers)).some(([name, text]) => name !== 'units' && text !== '0')

function readFrom(groups: readonly PageGroup[], store: () => Storage): Answers | null {
  try {
    const text = store().getItem(key)
    const answers = text === null ? {} : known(groups, JSON.parse(text))
    return hasAnswers(answers) ? answers : null
  } catch {
    return null
  }
}

/** False where the browser refuses to keep anything. */
function writeTo(store: () => Storage, answers: Answers): boolean {
  try {
    if (hasAnswers(answers)) store().setItem(key, JSON.stringify(trimmed(answers)))
    else store().removeItem(key)
    return true
  } catch {
    return false
  }
}

// Reading the property itself fails where storage is switched off.
const window_ = (): Storage => sessionStorage
const browser = (): Storage => localStorage

/**
 * The answers of this window survive a reload; the browser keeps those of the window that changed last, for the next visit.
 * A job that came in a link is not kept over other work until the person says so.
 */
export class SavedWork {
  readonly #groups: readonly PageGroup[]
  #borrowed = false

  constructor(groups: readonly PageGroup[]) {
    this.#groups = groups
  }

  /** Whether the form holds a job from a link while other work is kept. */
  get borrowed(): boolean {
    return this.#borrowed
  }

  /** What was left in this window, else in this browser; null where nothing was. */
  read(): Answers | null {
    return readFrom(this.#groups, window_) ?? readFrom(this.#groups, browser)
  }

  /** What the browser keeps for the next visit. */
  kept(): Answers | null {
    return readFrom(this.#groups, browser)
  }

  /** From now on the form holds a job from outside; true where that leaves other work waiting. */
  borrow(answers: Answers): boolean {
    const kept = this.kept()
    this.#borrowed = kept !== null && JSON.stringify(kept) !== JSON.stringify(trimmed(known(this.#groups, answers)))
    return this.#borrowed
  }

  /** The form's answers are the person's own again. */
  own(): void {
    this.#borrowed = false
  }

  /** False where the browser refuses to keep anything. */
  save(answers: Answers): boolean {
    const here = writeTo(window_, answers)
    return this.#borrowed ? here : writeTo(browser, answers)
  }

  forget(): void {
    this.#borrowed = false
    writeTo(window_, {})
    writeTo(browser, {})
  }
}
