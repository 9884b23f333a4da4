import { entries } from './entries.ts'

/** Reads the docstrings once, before the test files that share them begin side by side. */
export function setup(): void {
  entries()
}
