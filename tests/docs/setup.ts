import { entries } from './entries.ts'

/** Reads the docstrings once, before test files that share them start in parallel. */
export function setup(): void {
  entries()
}
