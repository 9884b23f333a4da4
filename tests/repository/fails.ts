import { expect } from 'vitest'
import { type Finding, report, sample, type TreeFile } from './tree.ts'

/** Asserts that a check finds `found` in a bad tree, with advice. */
export function fails(check: (files: readonly TreeFile[]) => readonly Finding[], files: Readonly<Record<string, string>>, found: RegExp, lines = 1): void {
  const findings = check(sample(files))
  expect(report(findings)).toMatch(found)
  expect(findings.length).toBe(lines)
  for (const { instead } of findings) expect(instead.length).toBeGreaterThan(3)
}
