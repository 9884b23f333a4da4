import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type BuiltSite, built, builtSite } from './builtSite.ts'
import { everyLesson, pathOf } from './lessonPages.ts'

/** Ceilings in bytes, minified and gzipped, of what a page loads before interaction, each with its reason. */
const ceilings = [
  { path: '', script: 1_600, why: 'home registers the offline worker, and the key that opens the search' },
  { path: 'cautions/', script: 1_600, why: 'plain reading' },
  { path: 'method/', script: 1_600, why: 'plain reading' },
  { path: 'embed/', script: 1_600, why: 'plain reading' },
  ...everyLesson.flatMap(([id]) => [
    { path: pathOf(id), script: 6_000, why: 'the design says 30 kB; board and slider, whose models and chart are fetched when it is touched' },
    { path: pathOf(id, 'sheets/'), script: 6_000, why: 'what makes and judges a sheet; the lesson’s own numbers are fetched when a code asks for them' },
  ]),
  {
    path: 'questions/wire-size/',
    script: 3_600,
    why: 'the design says 20 kB; the slim bar and the search are a kilobyte; the answer stands in the page, models are fetched when a field is touched',
  },
  { path: 'questions/sleeve-from-stock/', script: 3_600, why: 'as the other question' },
  { path: 'handbook/wireSagMm/', script: 2_500, why: 'a form that fetches its function when it is touched' },
  { path: 'audit/', script: 6_400, why: 'measured 6.3 kB: buttons, table and markup; the models come into the worker with the first list' },
  {
    path: 'plan/',
    script: 14_000,
    why: 'measured 13.9 kB: the form alone, of it 0.1 for files that the audit page shares; its schema, the reader of quantities and the models come into the worker with the first hand on it',
  },
]
/** The same after a field is touched, with its working closed. */
const touchedCeilings = [
  {
    path: 'questions/wire-size/',
    script: 52_000,
    why: 'the design says 20 kB; since the handbook loads whole rooms their chunks, tables 13 and materials 7, come along; of it the reader of quantities is 10, heat balance and metals 8',
  },
  { path: 'questions/sleeve-from-stock/', script: 47_500, why: 'as the other question; of it the reader of quantities is 10' },
] as const
/** CSS of any page. */
const styleCeiling = 15_000
/** Until the first plan with its drawings: measured 237.6 kB. The design says 120 kB; the planner with models, tables and the trade rules' sentences (45) is 122, the form's schema and the reader of quantities 55, formulas and plan as markup 47, the form 9. */
const planCeiling = 240_000

/** Until the first list is judged: the worker with models, tables, the reader of quantities and of tables. */
const auditCeiling = 80_000

let site: BuiltSite
beforeAll(async () => {
  site = await builtSite()
})
afterAll(async () => {
  await site.close()
})

const zipped = (path: string): number => gzipSync(readFileSync(join(built, path)), { level: 9 }).length

/** Bytes fetched by a page, by kind, gzipped, inline scripts included; `use` may interact first. */
async function fetched(path: string, use?: (page: Awaited<ReturnType<BuiltSite['open']>>['page']) => Promise<void>) {
  const names = new Map<string, string>()
  // Never closed before the browser is, so that no page finds another's files in its cache.
  const { page } = await site.open('mark.svg')
  page.on('request', (request) => names.set(new URL(request.url()).pathname.slice(1), request.resourceType()))
  await page.goto(site.address + path, { waitUntil: 'networkidle' })
  await use?.(page)
  await page.waitForLoadState('networkidle')
  const written = await page.$$eval('script:not([src])', (scripts) => scripts.map((script) => script.textContent ?? ''))
  const inline = written.reduce((total, text) => total + gzipSync(text, { level: 9 }).length, 0)
  const sum = (kind: string) => [...names].filter(([, found]) => found === kind).reduce((total, [name]) => total + zipped(name), 0)
  return { script: sum('script') + inline, style: sum('stylesheet'), names: [...names.keys()] }
}

describe('what a page loads before it is touched', () => {
  test.concurrent.each(ceilings)('$path: at most $script bytes of script ($why)', async ({ path, script }) => {
    const found = await fetched(path)
    expect(found.script, found.names.join(' ')).toBeLessThanOrEqual(script)
    expect(found.script, 'no page is without the script that keeps it').toBeGreaterThan(0)
    expect(found.style).toBeLessThanOrEqual(styleCeiling)
  })
})

describe('what a question loads once a field is touched', () => {
  test.concurrent.each(touchedCeilings)('$path: at most $script bytes of script ($why)', async ({ path, script }) => {
    const untouched = await fetched(path)
    const found = await fetched(path, async (page) => {
      await page.locator('form input[type="text"]').first().focus()
    })
    expect(found.script, found.names.join(' ')).toBeLessThanOrEqual(script)
    expect(found.script, 'a touch fetches the models').toBeGreaterThan(untouched.script)
  })
})

test(`the plan page: at most ${planCeiling} bytes of script to the first plan`, async () => {
  const found = await fetched('plan/', async (page) => {
    await page.click('[data-act="example"]')
    await page.waitForSelector('[data-plan][data-verdict]', { state: 'attached' })
  })
  expect(found.script, found.names.join(' ')).toBeLessThanOrEqual(planCeiling)
  expect(found.style).toBeLessThanOrEqual(styleCeiling)
})

test(`the audit page: at most ${auditCeiling} bytes of script to the first verdicts`, async () => {
  const found = await fetched('audit/', async (page) => {
    await page.click('[data-act="sample"]')
    await page.waitForSelector('[data-result]:not([hidden])')
  })
  expect(found.script, found.names.join(' ')).toBeLessThanOrEqual(auditCeiling)
  expect(found.names.some((name) => name.includes('auditWorker'))).toBe(true)
})
