import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type BuiltSite, builtSite } from './builtSite.ts'
import { textOf } from './learnPage.ts'

const path = 'examples/overlap-length/'
let site: BuiltSite
beforeAll(async () => {
  site = await builtSite()
})
afterAll(() => site.close())

const heading = (page: Page): Promise<string> => textOf(page, 'dialog h2')
const count = (page: Page): Promise<string> => textOf(page, 'dialog [data-count]')

describe('the board view', () => {
  it('shows one card at a time by key, forward and back to either end, and Escape leaves it there', async () => {
    const { page, context, faults } = await site.open(path)
    const cards = await page.locator('[data-card] h2').allTextContents()
    expect(cards).toHaveLength(8)
    await page.click('[data-open]')
    expect(await heading(page)).toBe('The question')
    for (const [index, title] of cards.entries()) {
      expect((await heading(page)).replace(/\s+/g, ' ')).toBe(title.replace(/\s+/g, ' ').trim())
      expect(await count(page)).toBe(`${index + 1} of ${cards.length}`)
      expect(await page.locator('dialog h2').count()).toBe(1)
      await page.keyboard.press(index % 2 === 0 ? 'ArrowRight' : ' ')
    }
    expect(await heading(page)).toBe('The answer')
    await page.keyboard.press('PageUp')
    expect(await heading(page)).toMatch(/^Step 6/)
    await page.keyboard.press('Home')
    await page.keyboard.press('ArrowLeft')
    expect(await heading(page)).toBe('The question')
    await page.keyboard.press('End')
    expect(await heading(page)).toBe('The answer')
    await page.keyboard.press('ArrowLeft')
    await page.keyboard.press('Escape')
    expect(await page.locator('dialog').isVisible()).toBe(false)
    await expect.poll(() => page.evaluate(() => Math.abs(document.querySelector('#strength')?.getBoundingClientRect().top ?? 999))).toBeLessThan(60)
    expect(faults).toEqual([])
    await context.close()
  })

  it('by tap: the right of the board goes on, its left goes back, the buttons do as they say', async () => {
    const { page, context } = await site.open(path, { viewport: { width: 1024, height: 768 }, hasTouch: true })
    await page.tap('[data-open]')
    await page.touchscreen.tap(900, 300)
    await expect.poll(() => heading(page)).toMatch(/^Step 1/)
    await page.touchscreen.tap(60, 300)
    await expect.poll(() => heading(page)).toBe('The question')
    expect(await page.locator('[data-go="-1"]').isDisabled()).toBe(true)
    await page.tap('[data-go="1"]')
    await page.tap('[data-go="1"]')
    expect(await heading(page)).toMatch(/^Step 2/)
    await page.tap('[data-go="leave"]')
    expect(await page.locator('dialog').isVisible()).toBe(false)
    await context.close()
  })

  it.each([
    [1280, 800, ['wire', 'solder', 'transfer', 'enough', 'strength']],
    [390, 844, []],
  ] as const)('at %i px its buttons stand in one row, and a step’s result above them', async (width, height, steps) => {
    const { page, context } = await site.open(path, { viewport: { width, height } })
    await page.click('[data-open]')
    const tops = await page.$$eval('dialog button', (buttons) => buttons.map((button) => button.getBoundingClientRect().top))
    expect(new Set(tops).size).toBe(1)
    const cards = await page.$$eval('[data-card]', (nodes) => nodes.map((node) => node.id))
    for (const id of cards) {
      const below = await page.$eval('[data-stage]', (stage) => {
        const result = stage.querySelector('dl.strong')?.getBoundingClientRect().bottom ?? 0
        return result - stage.getBoundingClientRect().bottom
      })
      if ((steps as readonly string[]).includes(id)) expect(below, id).toBeLessThan(0)
      await page.keyboard.press('ArrowRight')
    }
    await context.close()
  })

  it('is in large type, and holds no id a second time', async () => {
    const { page, context } = await site.open(path, { viewport: { width: 1280, height: 800 } })
    await page.click('[data-open]')
    await page.keyboard.press('ArrowRight')
    const size = (selector: string) => page.$eval(selector, (node) => Number.parseFloat(getComputedStyle(node).fontSize))
    expect(await size('dialog .asks')).toBeGreaterThan(1.5 * (await size('.lesson .asks')))
    const ids = await page.$$eval('[id]', (nodes) => nodes.map((node) => node.id))
    expect(new Set(ids).size).toBe(ids.length)
    const low = await page.$$eval('dialog button', (buttons) => buttons.map((button) => button.getBoundingClientRect().height))
    expect(Math.min(...low)).toBeGreaterThanOrEqual(44)
    await context.close()
  })
})

describe('the worksheet', () => {
  const sheetText = (page: Page): Promise<string> => textOf(page, 'work-sheet')

  it('the same number gives the same sheet, another number another, and the link carries it', async () => {
    const { page, context, faults } = await site.open(`${path}#sheet=7`)
    await page.waitForFunction(() => document.querySelector('[data-sheet="tasks"] h3')?.textContent?.endsWith('worksheet 7'))
    const seven = await sheetText(page)
    await page.click('[data-next]')
    await page.waitForFunction(() => document.querySelector('[data-sheet="tasks"] h3')?.textContent?.endsWith('worksheet 8'))
    expect(page.url()).toMatch(/#sheet=8$/)
    expect(await sheetText(page)).not.toBe(seven)
    await page.fill('#seed', '7')
    await page.keyboard.press('Enter')
    await page.waitForFunction(() => document.querySelector('[data-sheet="tasks"] h3')?.textContent?.endsWith('worksheet 7'))
    expect(await sheetText(page)).toBe(seven)
    expect(faults).toEqual([])
    await context.close()
  })

  it('sheet 1 made on the page is the sheet that was built in', async () => {
    const plain = await site.open(path, { javaScriptEnabled: false })
    const built = await textOf(plain.page, '[data-sheet="tasks"]')
    const builtAnswers = await textOf(plain.page, '[data-sheet="answers"]')
    await plain.context.close()
    const { page, context } = await site.open(`${path}#sheet=2`)
    await page.waitForFunction(() => document.querySelector('[data-sheet="tasks"] h3')?.textContent?.endsWith('worksheet 2'))
    await page.fill('#seed', '1')
    await page.keyboard.press('Enter')
    await page.waitForFunction(() => document.querySelector('[data-sheet="tasks"] h3')?.textContent?.endsWith('worksheet 1'))
    expect(await textOf(page, '[data-sheet="tasks"]')).toBe(built)
    expect(await textOf(page, '[data-sheet="answers"]')).toBe(builtAnswers)
    await context.close()
  })

  it.each(['0', '10000', '1.5', 'seven', ''])('“%s” is no sheet: what was read, what is allowed, an example, and the sheet stays', async (typed) => {
    const { page, context } = await site.open(path)
    const before = await textOf(page, '[data-sheet="tasks"]')
    await page.fill('#seed', typed)
    await page.click('.choose button[type="submit"]')
    expect(await textOf(page, '#seed-said')).toBe(`Read: ${typed === '' ? 'nothing' : `“${typed}”`}. Allowed: a whole number from 1 to 9999. For example: 2.`)
    expect(await page.getAttribute('#seed', 'aria-invalid')).toBe('true')
    expect(await textOf(page, '[data-sheet="tasks"]')).toBe(before)
    await context.close()
  })
})
