import { type Answers, askedFields, type PageGroup, textsOf, trimmed } from './answers.ts'

const key = 'strandwise.plan.1'
const longestText = 400

/** Keeps only texts of known form fields from the stored data. */
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

/** False if the browser refuses to store. */
function writeTo(store: () => Storage, answers: Answers): boolean {
  try {
    if (hasAnswers(answers)) store().setItem(key, JSON.stringify(trimmed(answers)))
    else store().removeItem(key)
    return true
  } catch {
    return false
  }
}

// Even reading the property throws if storage is disabled.
const window_ = (): Storage => sessionStorage
const browser = (): Storage => localStorage

/** Stores the answers: per window for a reload, and of the window changed last for the next visit. A job from a link does not replace stored work until the person agrees. */
export class SavedWork {
  readonly #groups: readonly PageGroup[]
  #borrowed = false

  constructor(groups: readonly PageGroup[]) {
    this.#groups = groups
  }

  /** True while the form shows a job from a link and other work is stored. */
  get borrowed(): boolean {
    return this.#borrowed
  }

  /** Answers stored for this window, else for this browser; null if none. */
  read(): Answers | null {
    return readFrom(this.#groups, window_) ?? readFrom(this.#groups, browser)
  }

  /** Answers stored for the next visit. */
  kept(): Answers | null {
    return readFrom(this.#groups, browser)
  }

  /** The form now shows a job from outside; true if other work is stored. */
  borrow(answers: Answers): boolean {
    const kept = this.kept()
    this.#borrowed = kept !== null && JSON.stringify(kept) !== JSON.stringify(trimmed(known(this.#groups, answers)))
    return this.#borrowed
  }

  /** The form's answers belong to the person again. */
  own(): void {
    this.#borrowed = false
  }

  /** False if the browser refuses to store. */
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
