import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { afterAll, beforeAll, describe, expect, it, test } from 'vitest'
import { finder } from '../../site/src/search/find.ts'
import { entries } from '../docs/entries.ts'
import { axeFindings } from './accessibility.ts'
import { type BuiltSite, built, builtSite, pages } from './builtSite.ts'
import { searchWords } from './searchWords.ts'

const json = readFileSync(join(built, 'search.json'), 'utf8')
const find = finder(json)
const indexCeiling = 60_000

test('the index is small', () => {
  expect(gzipSync(json, { level: 9 }).length).toBeLessThanOrEqual(indexCeiling)
})

describe('what people type', () => {
  const missedOf = (name: string, words: readonly string[]) => words.filter((one) => !find(one).some(({ path }) => path === `handbook/${name}/`))

  test('three queries are listed for every public function', () => {
    const functions = entries().flatMap(({ kind, name }) => (kind === 'function' ? [name] : []))
    expect(Object.keys(searchWords).sort()).toEqual(functions.sort())
  })

  test('every function is shown for at least two of its three, and of all queries at most one in thirty misses', () => {
    const missed = Object.entries(searchWords).map(([name, words]) => ({ name, words: missedOf(name, words) }))
    expect(missed.filter(({ words }) => words.length > 1)).toEqual([])
    const all = missed.flatMap(({ name, words }) => words.map((one) => `${name}: ${one}`))
    expect(all.length, all.join('\n')).toBeLessThanOrEqual((3 * missed.length) / 30)
  })

  test.each([
    ['ampacity', 'questions/current-here/'],
    ['voltage drop', 'questions/run-drop/'],
    ['18 gauge', 'handbook/tables/awgTable/'],
    ['butt connector', 'questions/crimp/'],
    ['PVC', 'handbook/tables/insulations/'],
    ['Sn63Pb37', 'handbook/tables/solders/'],
    ['airbag', 'handbook/rules/cautions/'],
    ['mend a broken wire', 'plan/'],
    ['7/0.2', 'handbook/parseStrands/'],
    ['IEC 60228', 'handbook/tables/iec60228/'],
  ])('"%s" finds %s', (words, path) => {
    expect(find(words).map((found) => found.path.replace(/#.*$/, ''))).toContain(path)
  })

  test('every path that is found is a page', () => {
    const known = new Set(pages())
    const found = ['wire', 'solder', 'current', 'rule', 'table', 'fuse'].flatMap((words) => find(words))
    expect(found.length).toBeGreaterThan(40)
    for (const { path } of found) expect(known.has(path.replace(/#.*$/, '')), path).toBe(true)
  })
})

describe('in the browser', () => {
  let site: BuiltSite
  beforeAll(async () => {
    site = await builtSite()
  })
  afterAll(() => site.close())

  it('opens by its key, is led by arrows, and Enter goes there', async () => {
    const { page, context, faults } = await site.open('')
    await page.keyboard.press('/')
    await page.waitForFunction(() => document.querySelector('dialog.search [role="status"]')?.textContent?.startsWith('Words'))
    await page.keyboard.type('voltage drop')
    await page.waitForSelector('dialog.search [aria-selected="true"]')
    await page.keyboard.press('ArrowDown')
    const wanted = await page.getAttribute('dialog.search [aria-selected="true"]', 'data-path')
    await page.keyboard.press('Enter')
    await page.waitForURL(`**${wanted}`)
    // The browser reports a view transition aborted by leaving the page.
    expect(faults.filter((fault) => !fault.startsWith('error: Transition was aborted'))).toEqual([])
    await context.close()
  })

  it('axe finds nothing in it, open at 390 px', async () => {
    const { page, context } = await site.open('', { bypassCSP: true })
    await page.click('[data-search]')
    await page.fill('#search-words', 'fuse')
    await page.waitForSelector('dialog.search [role="option"]')
    expect(await axeFindings(page)).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390)
    await context.close()
  })

  it('without script its door leads to the contents', async () => {
    const { page, context } = await site.open('', { javaScriptEnabled: false })
    await page.click('[data-search]')
    expect(page.url()).toBe(`${site.address}handbook/`)
    await context.close()
  })
})
