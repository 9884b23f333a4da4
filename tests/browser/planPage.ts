import type { BrowserContextOptions, Page } from 'playwright-core'
import { builtSite } from './builtSite.ts'

interface PlanPage {
  readonly page: Page
  /** Console messages, page errors, refused content, requests to another host: there must be none. */
  readonly faults: readonly string[]
}

export interface Site {
  readonly address: string
  /** The plan page with its models loaded; the fragment begins with "#". */
  open(options?: BrowserContextOptions, fragment?: string): Promise<PlanPage>
  /** Without script. */
  openPlain(): Promise<PlanPage>
  close(): Promise<void>
}

/** The built site, opened at its plan page. */
export async function site(): Promise<Site> {
  const built = await builtSite()
  return {
    address: built.address,
    open: async (options = {}, fragment = '') => {
      const opened = await built.open(`plan/${fragment}`, options)
      await opened.page.waitForSelector('repair-plan[data-ready]')
      return opened
    },
    openPlain: () => built.open('plan/', { javaScriptEnabled: false }),
    close: () => built.close(),
  }
}

/** After whatever the last event set going: the page answers a tap once the tap is done. */
export const settled = (page: Page): Promise<void> => page.evaluate(() => new Promise<void>((done) => setTimeout(() => setTimeout(done, 5), 5)))

/** Types an answer and leaves the field. */
export async function answer(page: Page, name: string, text: string): Promise<void> {
  await page.fill(`[name="${name}"]`, text)
  await page.locator(`[name="${name}"]`).blur()
  await settled(page)
}

export const status = async (page: Page): Promise<string> => ((await page.textContent('[data-status]')) ?? '').trim()

export async function fillIn(page: Page, example: string): Promise<void> {
  await page.selectOption('#example', example)
  await page.click('[data-act="example"]')
  await page.waitForFunction(() => document.querySelector('[data-status]')?.textContent?.startsWith('Verdict'))
}

/** Every answer in the form, as it stands there. */
export const answersOn = (page: Page): Promise<Record<string, string>> =>
  page.evaluate(() => {
    const form = document.querySelector('repair-plan form') as HTMLFormElement
    return Object.fromEntries([...new FormData(form)].map(([name, value]) => [name, String(value)]))
  })

export const verdictsOn = (page: Page): Promise<string[]> =>
  page.$$eval('[data-section]:not([hidden])', (stretches) => stretches.map((stretch) => (stretch as HTMLElement).dataset.verdict ?? ''))
