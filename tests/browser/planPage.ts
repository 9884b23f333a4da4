import { fileURLToPath } from 'node:url'
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core'
import { findChromium } from '../run/chromium.mjs'
import { serve } from '../run/serve.mjs'

const built = process.env.STRANDWISE_SITE ?? fileURLToPath(new URL('../../site/dist', import.meta.url))

export interface Site {
  readonly address: string
  open(options?: BrowserContextOptions, hash?: string): Promise<PlanPage>
  /** Without script. */
  openPlain(): Promise<{ readonly page: Page }>
  close(): Promise<void>
}

export interface PlanPage {
  readonly page: Page
  /** Console messages, page errors, refused content and requests to another host: there must be none. */
  readonly faults: readonly string[]
}

async function openPlan(browser: Browser, address: string, options: BrowserContextOptions, hash: string): Promise<PlanPage> {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, ...options })
  const page = await context.newPage()
  const faults: string[] = []
  page.on('console', (message) => faults.push(`console: ${message.text()}`))
  page.on('pageerror', (error) => faults.push(`error: ${error.message}`))
  page.on('request', (request) => {
    if (!/^(?:data|blob):/.test(request.url()) && !request.url().startsWith(address)) faults.push(`request: ${request.url()}`)
  })
  // What a reload or another page cuts off did not fail.
  page.on('requestfailed', (request) => {
    if (request.failure()?.errorText !== 'net::ERR_ABORTED') faults.push(`failed: ${request.url()}`)
  })
  await page.goto(`${address}plan/${hash}`)
  await page.waitForSelector('[data-bar]:not([hidden])')
  return { page, faults }
}

/** The built site on a free port with a browser that opens its plan page. */
export async function site(): Promise<Site> {
  const server = await serve(built, 0)
  const program = findChromium()
  if (program === undefined) throw new Error('no Chromium found: set CHROMIUM_PATH to its program')
  const browser = await chromium.launch({ executablePath: program, args: ['--no-sandbox', '--disable-background-networking', '--disable-quic'] })
  return {
    address: server.address,
    open: (options = {}, hash = '') => openPlan(browser, server.address, options, hash),
    openPlain: async () => {
      const page = await (await browser.newContext({ javaScriptEnabled: false })).newPage()
      await page.goto(`${server.address}plan/`)
      return { page }
    },
    close: async () => {
      await browser.close()
      await server.close()
    },
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

export const pagesOf = (pdf: Uint8Array): number =>
  (
    Buffer.from(pdf)
      .toString('latin1')
      .match(/\/Type\s*\/Page(?![a-zA-Z])/g) ?? []
  ).length
