import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Page } from 'playwright-core'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

/** What the accessibility rules find on the page as it stands now. */
export async function axeFindings(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe)
  const { violations } = await page.evaluate(() =>
    (globalThis as unknown as { axe: { run(): Promise<{ violations: { id: string; nodes: { target: unknown }[] }[] }> } }).axe.run(),
  )
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => String(target)).join(' | ')}`)
}

/** How far the page runs past its window, in px. */
export const sideways = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth - innerWidth)

/** The values of a list on the page, by name. */
export async function valuesIn(page: Page, selector: string): Promise<Readonly<Record<string, string>>> {
  const pairs = await page.$$eval(`${selector} dt`, (terms) =>
    terms.map((term) => [term.textContent?.trim() ?? '', term.nextElementSibling?.textContent?.trim() ?? '']),
  )
  return Object.fromEntries(pairs)
}

/** A page's text with every run of white space as one space. */
export async function textOf(page: Page, selector: string): Promise<string> {
  return ((await page.locator(selector).first().textContent()) ?? '').replace(/\s+/g, ' ').trim()
}

/** Pages of the document as it prints on A4. */
export async function printedPages(page: Page): Promise<number> {
  const pdf = await page.pdf({ format: 'A4' })
  return (pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g) ?? []).length
}
