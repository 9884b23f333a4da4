import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { buildSite, servedFolder } from '../run/build.mjs'
import { serve } from '../run/serve.mjs'
import { launched } from './builtSite.ts'

const base = '/bench/strandwise/'
const folder = servedFolder(base)
let address = ''
let closeServer: () => Promise<void>
let browser: Browser

beforeAll(async () => {
  const { ok, output } = await buildSite(base)
  if (!ok) throw new Error(output)
  const server = await serve(folder, 0)
  address = server.address.replace(/\/$/, '')
  closeServer = server.close
  browser = await launched()
}, 180_000)

afterAll(async () => {
  await browser.close()
  await closeServer()
})

test('under a sub-path every file and link of a page stays below it, and nothing fails', async () => {
  const context = await browser.newContext({ serviceWorkers: 'block', bypassCSP: false })
  const page = await context.newPage()
  const faults: string[] = []
  page.on('pageerror', (error) => faults.push(error.message))
  page.on('response', (response) => {
    if (response.status() >= 400 || !new URL(response.url()).pathname.startsWith(base)) faults.push(`${response.status()} ${response.url()}`)
  })
  for (const path of [
    '',
    'plan/',
    'examples/',
    'examples/overlap-length/',
    'examples/overlap-length/sheets/',
    'questions/',
    'questions/wire-size/',
    'embed/',
    'method/',
    'cautions/',
  ]) {
    await page.goto(`${address}${base}${path}`, { waitUntil: 'networkidle' })
    const strays = await page.$$eval(
      'a[href]',
      (anchors, start) => anchors.map((anchor) => (anchor as HTMLAnchorElement).pathname).filter((to) => !to.startsWith(start)),
      base,
    )
    expect(strays, path).toEqual([])
  }
  expect(faults).toEqual([])
  await context.close()
})

test('under a sub-path the site is installable, and works without a network after one visit', async () => {
  const manifest = JSON.parse(readFileSync(join(folder, base, 'site.webmanifest'), 'utf8')) as {
    readonly start_url: string
    readonly scope: string
    readonly icons: readonly { readonly src: string }[]
  }
  expect([manifest.start_url, manifest.scope]).toEqual([base, base])
  const context = await browser.newContext()
  const page = await context.newPage()
  for (const { src } of manifest.icons) expect((await page.request.get(address + src)).status(), src).toBe(200)
  await page.goto(address + base)
  await page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready
    if (active?.state !== 'activated') await new Promise<void>((resolve) => active?.addEventListener('statechange', () => resolve(), { once: true }))
  })
  await closeServer()
  await context.setOffline(true)
  await page.goto(`${address}${base}cautions/?from=home`)
  expect(await page.locator('h1').textContent()).toBe('Cautions')
  await page.goto(`${address}${base}nowhere/`)
  expect(await page.locator('h1').textContent()).toBe('The wire ends here')
  await context.close()
})
