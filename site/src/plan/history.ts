import { type Answers, trimmed } from './answers.ts'

const mostSteps = 200
const same = (a: Answers, b: Answers): boolean => JSON.stringify(trimmed(a)) === JSON.stringify(trimmed(b))

/** Undo history of the form; a new change drops the undone states. */
export class History {
  #states: Answers[]
  #at = 0

  constructor(first: Answers) {
    this.#states = [first]
  }

  get now(): Answers {
    return this.#states[this.#at] ?? {}
  }

  get canUndo(): boolean {
    return this.#at > 0
  }

  get canRedo(): boolean {
    return this.#at < this.#states.length - 1
  }

  /** False if nothing changed. */
  add(answers: Answers): boolean {
    if (same(answers, this.now)) return false
    this.#states = [...this.#states.slice(0, this.#at + 1), answers].slice(-mostSteps)
    this.#at = this.#states.length - 1
    return true
  }

  undo(): Answers {
    this.#at = Math.max(0, this.#at - 1)
    return this.now
  }

  redo(): Answers {
    this.#at = Math.min(this.#states.length - 1, this.#at + 1)
    return this.now
  }
}
