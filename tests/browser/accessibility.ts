import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Page } from 'playwright-core'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

interface Violation {
  readonly id: string
  readonly nodes: readonly { readonly html: string; readonly failureSummary: string }[]
}

/** Accessibility violations of the page in its present state, contrast included: rule, elements, explanation. */
export async function axeFindings(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe)
  const { violations } = await page.evaluate(() => (globalThis as unknown as { axe: { run(): Promise<{ violations: Violation[] }> } }).axe.run())
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html, failureSummary }) => `${html} ${failureSummary}`).join(' ')}`.slice(0, 600))
}
