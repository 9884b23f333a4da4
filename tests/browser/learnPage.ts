import type { Page } from 'playwright-core'
import { pagesOf } from './printed.ts'

/** Horizontal overflow of the page in px. */
export const sideways = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth - innerWidth)

/** Values of a definition list on the page, by term. */
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

/** Number of A4 pages when printed. */
export async function printedPages(page: Page): Promise<number> {
  return pagesOf(await page.pdf({ format: 'A4' }))
}

/** Smallest type of the words on the page, in points. */
export function smallestPrintedPt(page: Page): Promise<number> {
  return page.evaluate(() => {
    const pxPerPt = 96 / 72
    let least = Number.POSITIVE_INFINITY
    const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    while (words.nextNode()) {
      const box = words.currentNode.parentElement
      if (box === null || words.currentNode.textContent?.trim() === '' || box.closest('svg') !== null || !box.checkVisibility()) continue
      least = Math.min(least, Number.parseFloat(getComputedStyle(box).fontSize))
    }
    return least / pxPerPt
  })
}
