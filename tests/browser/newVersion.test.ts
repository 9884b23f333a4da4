import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { serve } from '../run/serve.mjs'
import { built, launched } from './builtSite.ts'

const folder = mkdtempSync(join(tmpdir(), 'strandwise-new-version-'))
let browser: Browser
let server: Awaited<ReturnType<typeof serve>>

beforeAll(async () => {
  cpSync(built, folder, { recursive: true })
  server = await serve(folder, 0)
  browser = await launched()
})
afterAll(async () => {
  await browser.close()
  await server.close()
  rmSync(folder, { recursive: true, force: true })
})

const mark = (): string => /data-build="([0-9a-f]{12})"/.exec(readFileSync(join(folder, 'index.html'), 'utf8'))?.[1] ?? 'no mark'

/** Simulates a later build: a marked page, and a worker with its new revision. */
function publishNewVersion(): void {
  const old = mark()
  const page = join(folder, 'cautions', 'index.html')
  writeFileSync(page, readFileSync(page, 'utf8').replace('<h1>Cautions</h1>', '<h1>Cautions, second edition</h1>').replace(old, 'second'))
  const worker = join(folder, 'offline-worker.js')
  const text = readFileSync(worker, 'utf8')
  const renewed = text.replace(/("url":"cautions\/index\.html","revision":")[0-9a-f]+/, '$1second').replace(old, 'second')
  expect(renewed).not.toBe(text)
  writeFileSync(worker, renewed)
}

const active = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready
    if (active?.state !== 'activated') await new Promise<void>((resolve) => active?.addEventListener('statechange', () => resolve(), { once: true }))
  })

test('a new version is shown at once; a page that was left open says so, and takes it when asked', async () => {
  const context = await browser.newContext()
  const open = await context.newPage()
  await open.goto(`${server.address}cautions/`)
  await active(open)
  expect(await open.locator('[data-new-version]').isVisible()).toBe(false)
  publishNewVersion()
  const fresh = await context.newPage()
  await fresh.goto(`${server.address}cautions/`)
  expect(await fresh.locator('h1').textContent()).toBe('Cautions, second edition')
  await open.locator('[data-new-version]').waitFor({ state: 'visible' })
  expect(await open.locator('h1').textContent()).toBe('Cautions')
  expect(await fresh.locator('[data-new-version]').isVisible()).toBe(false)
  await Promise.all([open.waitForEvent('load'), open.locator('[data-new-version] button').click()])
  expect(await open.locator('h1').textContent()).toBe('Cautions, second edition')
  expect(await open.locator('[data-new-version]').isVisible()).toBe(false)
  await server.close()
  await context.setOffline(true)
  await fresh.reload()
  expect(await fresh.locator('h1').textContent()).toBe('Cautions, second edition')
  await context.close()
})
