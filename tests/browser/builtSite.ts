import { readdirSync, statSync } from 'node:fs'
import { join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type Browser, type BrowserContext, type BrowserContextOptions, chromium, type Page } from 'playwright-core'
import { findChromium } from '../run/chromium.mjs'
import { serve } from '../run/serve.mjs'

export const built = process.env.STRANDWISE_SITE ?? fileURLToPath(new URL('../../site/dist', import.meta.url))

const filesIn = (folder: string): readonly string[] =>
  readdirSync(folder).flatMap((name) => {
    const path = join(folder, name)
    return statSync(path).isDirectory() ? filesIn(path) : [path]
  })

/** Path of every page of the built site: '' for home, 'plan/' and so on. */
export const pages = (): readonly string[] =>
  filesIn(built)
    .map((path) => relative(built, path).replaceAll('\\', '/'))
    .filter((path) => path.endsWith('.html'))
    .map((path) => path.replace(/(^|\/)index\.html$/, '$1'))
    .sort()

export interface Opened {
  readonly page: Page
  readonly context: BrowserContext
  /** Console messages, page errors, blocked content, requests to other hosts: must stay empty. */
  readonly faults: readonly string[]
}

export interface BuiltSite {
  readonly address: string
  open(path: string, options?: BrowserContextOptions): Promise<Opened>
  /** Stops the server for good; the browser stays open. */
  stopServer(): Promise<void>
  close(): Promise<void>
}

/** What Playwright writes in place of a registration. */
const blockedWorker = 'Service Worker registration blocked by Playwright'

async function openPage(browser: Browser, address: string, path: string, options: BrowserContextOptions): Promise<Opened> {
  // An offline worker keeps the whole site with each new context, which costs more than the page under test; tests of it pass 'allow'.
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, serviceWorkers: 'block', ...options })
  const page = await context.newPage()
  const faults: string[] = []
  page.on('console', (message) => {
    if (message.text() !== blockedWorker) faults.push(`console: ${message.text()}`)
  })
  page.on('pageerror', (error) => faults.push(`error: ${error.message}`))
  page.on('request', (request) => {
    if (!/^(?:data|blob):/.test(request.url()) && !request.url().startsWith(address)) faults.push(`request to another host: ${request.url()}`)
  })
  await page.goto(address + path, { waitUntil: 'load' })
  return { page, context, faults }
}

/** The built site on a free port of the loopback, and a browser that opens its pages. */
export async function builtSite(): Promise<BuiltSite> {
  const program = findChromium()
  if (program === undefined) throw new Error('no Chromium found: set CHROMIUM_PATH to its program')
  const server = await serve(built, 0)
  const browser = await chromium.launch({
    executablePath: program,
    args: ['--no-sandbox', '--disable-background-networking', '--disable-quic', '--disable-gpu'],
  })
  return {
    address: server.address,
    open: (path, options = {}) => openPage(browser, server.address, path, options),
    stopServer: () => server.close(),
    close: async () => {
      await browser.close()
      await server.close()
    },
  }
}
