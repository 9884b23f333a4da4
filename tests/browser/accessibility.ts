import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Page } from 'playwright-core'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

interface Violation {
  readonly id: string
  readonly nodes: readonly { readonly html: string; readonly failureSummary: string }[]
}

/** Rules whose answer depends on the colours alone. */
const ofColours = ['color-contrast', 'link-in-text-block']

/** Accessibility violations of the page in its present state, contrast included: rule, elements, explanation. `colours` runs the rules of colours alone, for a page that has met all of them in its other colours. */
export async function axeFindings(page: Page, which: 'all' | 'colours' = 'all'): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axe)
  const { violations } = await page.evaluate(
    (only) =>
      (globalThis as unknown as { axe: { run(options: object): Promise<{ violations: Violation[] }> } }).axe.run({
        resultTypes: ['violations'],
        ...(only === null ? {} : { runOnly: only }),
        preload: false,
      }),
    which === 'all' ? null : ofColours,
  )
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html, failureSummary }) => `${html} ${failureSummary}`).join(' ')}`.slice(0, 600))
}
