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
  /** Opens a page of the site. Closing its context keeps the window, emptied, for the next page with the same options. */
  open(path: string, options?: BrowserContextOptions): Promise<Opened>
  /** Stops the server for good; the browser stays open. */
  stopServer(): Promise<void>
  close(): Promise<void>
}

/** What Playwright writes in place of a registration. */
const blockedWorker = 'Service Worker registration blocked by Playwright'

/** Chromium without sandbox, graphics process or traffic of its own. */
export function launched(): Promise<Browser> {
  const program = findChromium()
  if (program === undefined) throw new Error('no Chromium found: set CHROMIUM_PATH to its program')
  return chromium.launch({ executablePath: program, args: ['--no-sandbox', '--disable-background-networking', '--disable-quic', '--disable-gpu'] })
}

/** Empties a used window of everything a new one would not have: documents, stored work, size, media, pointer. */
async function emptied({ page, context }: Opened, address: string, { viewport, colorScheme, reducedMotion }: BrowserContextOptions): Promise<void> {
  for (const other of context.pages()) if (other !== page) await other.close()
  for (const event of ['console', 'pageerror', 'request'] as const) page.removeAllListeners(event)
  // Stored work is reached from its own origin alone; this file runs no script that could write it again.
  await page.goto(`${address}mark.svg`)
  await page.evaluate(() => {
    localStorage.clear()
    sessionStorage.clear()
  })
  await page.mouse.move(0, 0)
  await page.emulateMedia({ media: null, colorScheme: colorScheme ?? 'light', reducedMotion: reducedMotion ?? 'no-preference' })
  if (viewport !== null && viewport !== undefined) await page.setViewportSize(viewport)
}

/** Notes what a page may not do, from now on. */
function faultsOf(page: Page, address: string): readonly string[] {
  const faults: string[] = []
  page.on('console', (message) => {
    // The drawing that empties a window names no icon, so Chromium asks for the default one, at times after the next page has begun.
    const isIcon = message.location().url.endsWith('/favicon.ico')
    if (message.text() !== blockedWorker && !isIcon) faults.push(`console: ${message.text()}`)
  })
  page.on('pageerror', (error) => faults.push(`error: ${error.message}`))
  page.on('request', (request) => {
    if (!/^(?:data|blob):/.test(request.url()) && !request.url().startsWith(address)) faults.push(`request to another host: ${request.url()}`)
  })
  return faults
}

/** The built site on a free port of the loopback, and a browser that opens its pages. */
export async function builtSite(): Promise<BuiltSite> {
  const server = await serve(built, 0)
  const { address } = server
  const browser = await launched()
  /** Windows at rest, by their options: a new one costs four times the page that it shows. */
  const atRest = new Map<string, Opened[]>()

  async function windowFor(given: BrowserContextOptions): Promise<Opened> {
    // An offline worker keeps the whole site with each new context, which costs more than the page under test; tests of it pass 'allow'.
    const options: BrowserContextOptions = { viewport: { width: 390, height: 844 }, serviceWorkers: 'block', ...given }
    const kind = JSON.stringify(options)
    const used = atRest.get(kind)?.pop()
    if (used !== undefined) {
      await emptied(used, address, options)
      return used
    }
    const context = await browser.newContext(options)
    const opened: Opened = { context, page: await context.newPage(), faults: [] }
    if (options.serviceWorkers !== 'allow')
      context.close = async () => {
        if (!opened.page.isClosed()) atRest.set(kind, [...(atRest.get(kind) ?? []), opened])
      }
    return opened
  }

  return {
    address,
    open: async (path, options = {}) => {
      const { page, context } = await windowFor(options)
      const faults = faultsOf(page, address)
      await page.goto(address + path, { waitUntil: 'load' })
      return { page, context, faults }
    },
    stopServer: () => server.close(),
    close: async () => {
      await browser.close()
      await server.close()
    },
  }
}
