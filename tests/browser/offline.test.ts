import { createServer } from 'node:http'
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
  const { page, context, faults } = await site.open('', { serviceWorkers: 'allow' })
  await page.evaluate(async () => {
    const ready = await navigator.serviceWorker.ready
    if (ready.active?.state !== 'activated')
      await new Promise<void>((resolve) => ready.active?.addEventListener('statechange', () => resolve(), { once: true }))
  })
  expect(faults).toEqual([])
  await site.stopServer()
  await context.setOffline(true)
  for (const path of [
    '',
    'plan/',
    'method/',
    'cautions/',
    'embed/',
    'audit/',
    'examples/overlap-length/',
    'examples/seven-joints/',
    'examples/dim-lamps/sheets/',
    'questions/wire-size/',
  ]) {
    await page.goto(site.address + path)
    expect((await page.locator('h1').textContent())?.length, path).toBeGreaterThan(3)
  }
  await page.goto(`${site.address}plan/`)
  await page.waitForSelector('repair-plan[data-ready]')
  await page.goto(`${site.address}audit/`)
  await page.click('[data-act="sample"]')
  await page.getByRole('heading', { name: /an invented list/ }).waitFor()
  await context.close()
})

test('another program that answers on the same address is shown as it is, for every path', async () => {
  const own = await builtSite()
  const { page, context } = await own.open('', { serviceWorkers: 'allow' })
  await page.evaluate(async () => {
    const ready = await navigator.serviceWorker.ready
    if (ready.active?.state !== 'activated')
      await new Promise<void>((resolve) => ready.active?.addEventListener('statechange', () => resolve(), { once: true }))
  })
  await own.stopServer()
  const other = createServer((request, response) => {
    const found = request.url === '/' || request.url === '/plan/'
    response.writeHead(found ? 200 : 503, { 'content-type': request.url?.endsWith('.svg') === true ? 'image/svg+xml' : 'text/html' })
    response.end(`<title>Other</title><h1>Another program at ${request.url}</h1>`)
  })
  await new Promise<void>((done) => other.listen(Number(new URL(own.address).port), '127.0.0.1', done))
  for (const path of ['', 'plan/', 'method/', 'mark.svg', 'nowhere/']) {
    const answer = await page.goto(own.address + path)
    expect(await answer?.text(), path).toContain(`Another program at /${path}`)
  }
  other.closeAllConnections()
  await new Promise<void>((done) => other.close(() => done()))
  await page.goto(`${own.address}method/`)
  expect(await page.locator('h1').textContent()).not.toContain('Another program')
  await context.close()
  await own.close()
})
