import type { BrowserContextOptions, Page } from 'playwright-core'
import { builtSite } from './builtSite.ts'

interface PlanPage {
  readonly page: Page
  /** Console messages, page errors, blocked content, requests to other hosts: must stay empty. */
  readonly faults: readonly string[]
}

export interface Site {
  readonly address: string
  /** Opens the plan page and loads its models; the fragment begins with "#". */
  open(options?: BrowserContextOptions, fragment?: string): Promise<PlanPage>
  /** Opens it with scripts disabled. */
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

/** Waits for the effects of the last event: the page answers at once, its worker a little later. */
export async function settled(page: Page): Promise<void> {
  await page.evaluate(() => new Promise<void>((done) => setTimeout(() => setTimeout(done, 5), 5)))
  await page.waitForSelector('repair-plan:not([data-asking])')
}

/** Types an answer and leaves the field. */
export async function answer(page: Page, name: string, text: string): Promise<void> {
  await page.fill(`[name="${name}"]`, text)
  await page.locator(`[name="${name}"]`).blur()
  await settled(page)
}

export const status = async (page: Page): Promise<string> => ((await page.textContent('[data-status]')) ?? '').trim()

/** Waits until the plan of the form's answers is shown. */
export async function planStands(page: Page): Promise<void> {
  await page.waitForFunction(
    () =>
      document.querySelector('[data-plan][data-verdict]:not([data-old])') !== null &&
      /^(?:Mend|Replace the run|Leave it|Measure first|Refused)\b/.test(document.querySelector('[data-status]')?.textContent ?? ''),
  )
}

/** Shows the answers on a phone; a wide window shows them already. */
export async function seeAnswers(page: Page): Promise<void> {
  if (await page.isVisible('[data-act="see-answers"]')) await page.click('[data-act="see-answers"]')
}

export async function fillIn(page: Page, example: string): Promise<void> {
  await seeAnswers(page)
  await page.selectOption('#example', example)
  await page.click('[data-act="example"]')
  const title = await page.$eval('#example', (node) => (node as HTMLSelectElement).selectedOptions[0]?.textContent ?? '')
  await page.waitForFunction((wanted) => document.querySelector('[data-plan] .job-title')?.textContent === wanted, title)
  await planStands(page)
}

/** Shows the whole plan with everything expanded. */
export async function seePlan(page: Page): Promise<void> {
  if (await page.isVisible('[data-act="see-plan"]')) await page.click('[data-act="see-plan"]')
}

/** All answers in the form. */
export const answersOn = (page: Page): Promise<Record<string, string>> =>
  page.evaluate(() => {
    const form = document.querySelector('repair-plan form') as HTMLFormElement
    return Object.fromEntries([...new FormData(form)].map(([name, value]) => [name, String(value)]))
  })

export const verdictsOn = (page: Page): Promise<string[]> =>
  page.$$eval('[data-plan] [data-section]', (sections) => sections.map((section) => (section as HTMLElement).dataset.verdict ?? ''))
