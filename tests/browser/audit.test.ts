import { readFileSync } from 'node:fs'
import { auditCsv, auditList } from '@strandwise/planner/audit'
import type { BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { fleet } from '../../site/src/audit/fleet.ts'
import { axeFindings } from './accessibility.ts'
import { type BuiltSite, builtSite } from './builtSite.ts'

let site: BuiltSite
beforeAll(async () => {
  site = await builtSite()
})
afterAll(async () => {
  await site.close()
})

const head = 'name,size,insulation,outLengthM,currentA,supplyV,ambientC'
const open = async (options: BrowserContextOptions = {}) => {
  const opened = await site.open('audit/', options)
  await opened.page.waitForSelector('audit-list[data-ready]')
  return opened
}
const choose = async (page: Page, name: string, text: string | Buffer) =>
  page.setInputFiles('#file', { name, mimeType: 'text/csv', buffer: typeof text === 'string' ? Buffer.from(text) : text })
const judged = (page: Page, title: RegExp | string) => page.getByRole('heading', { name: title }).waitFor()
const names = (page: Page) => page.$$eval('audit-list [aria-label="Verdicts"] tbody th', (cells) => cells.map((cell) => cell.textContent ?? ''))
const saved = async (page: Page, act: string) => {
  const [download] = await Promise.all([page.waitForEvent('download'), page.click(`[data-act="${act}"]`)])
  return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') }
}
const resultsOf = async (text: string) => {
  const found = []
  for await (const result of auditList(text)) found.push(result)
  return found
}

describe('the invented list', () => {
  test('its table says what auditList says, a bad row by line and field; filter, order and file follow', async () => {
    const results = await resultsOf(fleet)
    const { page, context, faults } = await open({ acceptDownloads: true })
    await page.click('[data-act="sample"]')
    await judged(page, `${results.length} rows of sample-fleet.csv, an invented list`)
    const rows = await page.$$eval('audit-list [aria-label="Verdicts"] tbody tr', (all) =>
      all.map((row) => [...(row as HTMLTableRowElement).cells].map((cell) => (cell.textContent ?? '').trim())),
    )
    expect(rows.map(([line, , verdict]) => [Number(line), verdict])).toEqual(
      results.map((result) => [result.line, 'error' in result ? 'not usable' : result.verdict]),
    )
    expect(rows.find(([line]) => line === '19')?.[3]).toBe('currentA: “1.5 V”; allowed: from 0.000001 to 2000 A')
    expect(await saved(page, 'save')).toEqual({ name: 'sample-fleet-judged.csv', text: auditCsv(results) })

    await page.getByRole('radio', { name: /^unsound/ }).check()
    const unsound = results.flatMap((result) => ('error' in result || result.verdict !== 'unsound' ? [] : [result]))
    expect(unsound.length).toBeGreaterThan(1)
    await page.waitForFunction((wanted) => document.querySelectorAll('[aria-label="Verdicts"] tbody tr').length === wanted, unsound.length)
    expect(await names(page)).toEqual(unsound.map(({ name }) => name))
    await page.getByRole('button', { name: /^Hottest/ }).click()
    await page.getByRole('button', { name: /^Hottest/ }).click()
    await page.waitForSelector('th[data-by="conductorHighC"][aria-sort="descending"]')
    const hottestFirst = unsound.toSorted((a, b) => (b.conductorHighC ?? 0) - (a.conductorHighC ?? 0))
    expect(await names(page)).toEqual(hottestFirst.map(({ name }) => name))
    expect((await saved(page, 'save-shown')).text).toBe(auditCsv(hottestFirst))

    await page.getByRole('radio', { name: /^all/ }).check()
    await page.fill('#words', 'lamp trailer')
    await page.waitForFunction(() => document.querySelectorAll('[aria-label="Verdicts"] tbody tr').length === 3)
    await page.fill('#words', 'no such wire')
    await page.getByText('No row is like that.').waitFor()
    expect(faults).toEqual([])
    await context.close()
  })

  test('the same list stands on the page as a file', async () => {
    expect(await (await fetch(`${site.address}audit/sample-fleet.csv`)).text()).toBe(fleet)
  })
})

describe('a list of one’s own', () => {
  test('pasted, and dropped on the page', async () => {
    const { page, context, faults } = await open()
    await page.click('summary')
    await page.fill('#paste', `${head}\nlamp,18 AWG,PVC,3,2,12,40`)
    await page.click('[data-act="paste"]')
    await judged(page, '1 row of pasted rows')
    const data = await page.evaluateHandle((text) => {
      const transfer = new DataTransfer()
      transfer.items.add(new File([text], 'dropped.csv', { type: 'text/csv' }))
      return transfer
    }, `${head},colour\na,18 AWG,PVC,3,2,12,40,red\nb,18 AWG,PVC,3,2,12,40,red\n`)
    await page.dispatchEvent('h1', 'dragover', { dataTransfer: data })
    await page.waitForSelector('audit-list[data-over]')
    await page.dispatchEvent('h1', 'drop', { dataTransfer: data })
    await judged(page, '2 rows of dropped.csv')
    expect(await page.textContent('[data-unused]')).toBe('Not used, for no row has them: colour.')
    expect(faults).toEqual([])
    await context.close()
  })

  test.each<readonly [string, string | Buffer, RegExp]>([
    ['empty', '', /^wires\.csv: is empty/],
    ['binary', Buffer.from([0xff, 0xfe, 0, 1, 10]), /^wires\.csv: is not text \(UTF-8\)/],
    ['a misspelt column', `${head.replace('currentA', 'curentA')}\n`, /^wires\.csv: line 1: currentA: missing.*"curentA" is close to it/],
    ['a head alone', `${head}\n`, /^wires\.csv: no row/],
    ['a quotation mark left open', `${head}\n"${'a,b\n'.repeat(300_000)}`, /^wires\.csv: line 2: more than 1000000 bytes/],
  ])('refused in words, the present table stays: %s', async (_title, text, words) => {
    const { page, context, faults } = await open()
    await choose(page, 'good.csv', `${head}\nlamp,18 AWG,PVC,3,2,12,40\n`)
    await judged(page, '1 row of good.csv')
    await choose(page, 'wires.csv', text)
    await page.waitForSelector('[data-said]:not([hidden])')
    expect(await page.$$eval('[data-said] li', (lines) => lines[0]?.textContent)).toMatch(words)
    expect(await page.textContent('[data-said]')).toContain('The table below is still that of good.csv.')
    expect(await names(page)).toEqual(['lamp'])
    expect(faults).toEqual([])
    await context.close()
  })

  test('a name cannot bring markup', async () => {
    const { page, context, faults } = await open()
    await choose(page, 'wires.csv', `${head}\n<img src=x onerror=alert(1)>,18 AWG,PVC,3,2,12,40\n`)
    await judged(page, '1 row of wires.csv')
    expect(await names(page)).toEqual(['<img src=x onerror=alert(1)>'])
    expect(await page.locator('audit-list img').count()).toBe(0)
    expect(faults).toEqual([])
    await context.close()
  })

  test('a long list: the page answers meanwhile, shows it by pages, and a stop leaves the present one', async () => {
    const rows = 60_000
    const text = `${head}\n${Array.from({ length: rows }, (_, n) => `wire ${n},1.5 mm²,PVC,${1 + (n % 50)},${1 + (n % 9)},12,40`).join('\n')}\n`
    const { page, context } = await open()
    await choose(page, 'long.csv', text)
    await page.locator('[data-progress]').waitFor()
    // The main thread is free while the worker judges: a frame comes at once.
    expect(await page.evaluate(() => new Promise<number>((done) => requestAnimationFrame(() => done(1))))).toBe(1)
    await judged(page, '60,000 rows of long.csv')
    expect(await names(page)).toHaveLength(50)
    await page.getByRole('button', { name: 'Last' }).click()
    await page.getByText('Rows 59,951 to 60,000 of 60,000').waitFor()
    expect((await names(page)).at(-1)).toBe(`wire ${rows - 1}`)
    expect(await page.getByRole('button', { name: 'Later' }).getAttribute('aria-disabled')).toBe('true')
    await choose(page, 'longer.csv', text.repeat(1) + text.slice(head.length + 1).repeat(4))
    await page.click('[data-act="stop"]')
    await page.locator('[data-progress]').waitFor({ state: 'hidden' })
    expect(await page.textContent('#result')).toBe('60,000 rows of long.csv')
    expect((await names(page)).at(-1)).toBe(`wire ${rows - 1}`)
    await context.close()
  })
})

describe('with every hand', () => {
  test('by keys alone: list, order, filter, next page', async () => {
    const { page, context } = await open()
    const press = async (name: string) => {
      for (let n = 0; n < 60; n += 1) {
        await page.keyboard.press('Tab')
        if ((await page.evaluate(() => document.activeElement?.textContent?.replace(/\s+/g, ' ').trim())) === name) return page.keyboard.press('Enter')
      }
      throw new Error(`no Tab leads to "${name}"`)
    }
    await press('Take the invented list')
    await judged(page, /an invented list/)
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('result')
    await page.keyboard.press('Tab')
    await page.keyboard.press('ArrowDown')
    expect(await page.isChecked('[value="not sound"]')).toBe(true)
    await press('Verdict')
    await page.waitForSelector('th[data-by="verdict"][aria-sort="ascending"]')
    expect(await page.$eval('[aria-label="Verdicts"] tbody tr', (row) => (row as HTMLElement).dataset.kind)).toBe('unsound')
    await context.close()
  })

  test('by touch at 390 px: nothing to scroll sideways, targets large enough', async () => {
    const { page, context } = await open({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } })
    await page.locator('[data-act="sample"]').tap()
    await judged(page, /an invented list/)
    await page.locator('label:has([value="unsound"])').tap()
    await page.waitForFunction(() => document.querySelectorAll('[aria-label="Verdicts"] tbody tr:not([data-kind="unsound"])').length === 0)
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390)
    const small = await page.$$eval('audit-list :is(button, label:has([type="radio"]))', (all) =>
      all.flatMap((one) => {
        const { height, width } = one.getBoundingClientRect()
        return width > 0 && height < 43.5 ? [`${one.textContent?.trim()} ${height}`] : []
      }),
    )
    expect(small).toEqual([])
    await context.close()
  })

  test('with a table and a refusal shown: no finding of the accessibility rules, in light and in dark', async () => {
    const { page, context } = await open({ reducedMotion: 'reduce', bypassCSP: true })
    await page.click('[data-act="sample"]')
    await judged(page, /an invented list/)
    await choose(page, 'wires.csv', 'a,b\n')
    await page.waitForSelector('[data-said]:not([hidden])')
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme })
      expect(await axeFindings(page), colorScheme).toEqual([])
    }
    await context.close()
  })
})
