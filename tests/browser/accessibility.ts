import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Page } from 'playwright-core'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

interface Violation {
  readonly id: string
  readonly nodes: readonly { readonly html: string; readonly failureSummary: string }[]
}

/** What the accessibility rules find on the page as it stands now, contrast included: the rule, the places, what is wrong there. */
export async function axeFindings(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe)
  const { violations } = await page.evaluate(() => (globalThis as unknown as { axe: { run(): Promise<{ violations: Violation[] }> } }).axe.run())
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html, failureSummary }) => `${html} ${failureSummary}`).join(' ')}`.slice(0, 600))
}
