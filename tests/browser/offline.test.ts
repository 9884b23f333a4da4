import { afterAll, beforeAll, expect, test } from 'vitest'
import { type BuiltSite, builtSite } from './builtSite.ts'

let site: BuiltSite
beforeAll(async () => {
  site = await builtSite()
})
afterAll(async () => {
  await site.close()
})

test('after one visit every page works without a network', async () => {
  const { page, context, faults } = await site.open('')
  await page.evaluate(async () => {
    const ready = await navigator.serviceWorker.ready
    if (ready.active?.state !== 'activated')
      await new Promise<void>((resolve) => ready.active?.addEventListener('statechange', () => resolve(), { once: true }))
  })
  expect(faults).toEqual([])
  await site.stopServer()
  await context.setOffline(true)
  for (const path of ['', 'plan/', 'method/', 'cautions/', 'embed/', 'examples/overlap-length/', 'questions/wire-size/']) {
    await page.goto(site.address + path)
    expect((await page.locator('h1').textContent())?.length, path).toBeGreaterThan(3)
  }
  await page.goto(`${site.address}plan/`)
  await page.waitForSelector('repair-plan[data-ready]')
  await context.close()
})
