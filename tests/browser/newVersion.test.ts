import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Browser, chromium } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { findChromium } from '../run/chromium.mjs'
import { serve } from '../run/serve.mjs'
import { built } from './builtSite.ts'

const folder = mkdtempSync(join(tmpdir(), 'strandwise-new-version-'))
let browser: Browser
let server: Awaited<ReturnType<typeof serve>>

beforeAll(async () => {
  cpSync(built, folder, { recursive: true })
  server = await serve(folder, 0)
  browser = await chromium.launch({ executablePath: findChromium() ?? '', args: ['--no-sandbox', '--disable-background-networking', '--disable-quic'] })
})
afterAll(async () => {
  await browser.close()
  await server.close()
  rmSync(folder, { recursive: true, force: true })
})

/** As a later build would: another page, and a worker that knows it under another revision. */
function publishNewVersion(): void {
  const page = join(folder, 'cautions', 'index.html')
  writeFileSync(page, readFileSync(page, 'utf8').replace('<h1>Cautions</h1>', '<h1>Cautions, second edition</h1>'))
  const worker = join(folder, 'offline-worker.js')
  const text = readFileSync(worker, 'utf8')
  const renewed = text.replace(/("?url"?:"cautions\/index\.html",revision:")[0-9a-f]+/, '$1second')
  expect(renewed).not.toBe(text)
  writeFileSync(worker, renewed)
}

test('a new version waits, is told in a sentence, and is taken when asked for', async () => {
  const context = await browser.newContext()
  const page = await context.newPage()
  await page.goto(server.address)
  await page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready
    if (active?.state !== 'activated') await new Promise<void>((resolve) => active?.addEventListener('statechange', () => resolve(), { once: true }))
  })
  expect(await page.locator('[data-new-version]').isVisible()).toBe(false)
  publishNewVersion()
  await page.goto(`${server.address}cautions/`)
  await page.locator('[data-new-version]').waitFor({ state: 'visible' })
  expect(await page.locator('h1').textContent()).toBe('Cautions')
  await Promise.all([page.waitForEvent('load'), page.locator('[data-new-version] button').click()])
  expect(await page.locator('h1').textContent()).toBe('Cautions, second edition')
  expect(await page.locator('[data-new-version]').isVisible()).toBe(false)
  await context.close()
})
