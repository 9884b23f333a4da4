import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { axeFindings } from './accessibility.ts'
import { type BuiltSite, builtSite } from './builtSite.ts'
import { sideways, textOf } from './learnPage.ts'
import { cardOf, everyLesson, pathOf, throughCards, titleOnBoard } from './lessonPages.ts'

let site: BuiltSite
beforeAll(async () => {
  site = await builtSite()
})
afterAll(() => site.close())

describe.each(everyLesson)('the board of %s', (id, lesson) => {
  it.each([
    [1280, 720],
    [1024, 768],
  ])('every card fits %i x %i without scrolling', async (width, height) => {
    const { page, context, faults } = await site.open(pathOf(id), { viewport: { width, height } })
    const count = await throughCards(page, async (at, title) => {
      const over = await page.$eval('[data-stage]', (stage) => [stage.scrollHeight - stage.clientHeight, stage.scrollWidth - stage.clientWidth])
      expect(over, `card ${at}, ${title}`).toEqual([0, 0])
    })
    // Each step, check and mistake has a question card before its answer.
    expect(count).toBeGreaterThanOrEqual(3 * lesson.steps.length + 2 * lesson.mistakes.length + 2)
    expect(faults).toEqual([])
    await context.close()
  })

  it('shows nothing of a step’s answer before its key: not in sight, not to a reader of the screen', async () => {
    const { page, context } = await site.open(pathOf(id), { viewport: { width: 1280, height: 720 } })
    await page.click('[data-open]')
    for (const step of lesson.steps) {
      while (!(await titleOnBoard(page)).endsWith(step.title)) await page.keyboard.press('ArrowRight')
      const asked = await page.locator('body').ariaSnapshot()
      expect(asked).toContain(step.ask.slice(0, 40))
      const wrong = step.options.filter(({ reply }) => reply !== undefined)
      for (const hidden of [step.see.short, ...step.why, ...wrong.map(({ reply }) => reply ?? '')]) expect(asked).not.toContain(hidden.slice(0, 30))
      await page.keyboard.press('PageDown')
      expect(await textOf(page, 'dialog .short')).toBe(step.see.short)
      expect(await page.locator('body').ariaSnapshot()).not.toContain(step.why[0]?.slice(0, 30))
      await page.keyboard.press(' ')
      expect(await textOf(page, 'dialog .card')).toContain(step.why[0])
      expect(await page.locator('dialog .replies li').count()).toBe(1 + wrong.length)
    }
    await context.close()
  })

  it('the slider moves by key and by hand on the board, and the class’s prediction is marked on its curve', async () => {
    const { page, context, faults } = await site.open(pathOf(id), { viewport: { width: 1280, height: 720 } })
    const { setting, result, at } = lesson.whatIf
    await page.click('[data-open]')
    while ((await titleOnBoard(page)) !== lesson.whatIf.title) await page.keyboard.press('ArrowRight')
    expect(await page.locator('dialog svg.drawing path.series').count()).toBe(0)
    await page.fill('dialog input[type="text"]', String(result.high))
    await page.keyboard.press('Tab')
    await page.waitForFunction((high) => document.querySelector('dialog [data-setting]')?.textContent?.startsWith(String(high)), result.high)
    await page.keyboard.press('ArrowRight')
    await page.waitForFunction(() => /the class/.test(document.querySelector('dialog [data-chart]')?.textContent ?? ''))
    const before = await textOf(page, 'dialog output')
    await page.keyboard.press('ArrowDown')
    await page.waitForFunction((old) => document.querySelector('dialog output')?.textContent !== old, before)
    for (const end of [setting.low, setting.high, at]) {
      await page.fill('dialog input[type="text"]', String(end))
      await page.keyboard.press('Enter')
      await page.waitForFunction((says) => document.querySelector('dialog output')?.textContent === says, lesson.whatIf.says(end))
    }
    await page.fill('dialog input[type="text"]', String(setting.high + 1))
    await page.keyboard.press('Enter')
    await page.waitForFunction(() => /^Read: .*Allowed: /.test(document.querySelector('dialog [data-said]')?.textContent ?? ''))
    expect(await textOf(page, 'dialog output')).toBe(lesson.whatIf.says(at))
    expect(faults).toEqual([])
    await context.close()
  })
})

describe('keys and taps', () => {
  const [[id, lesson] = ['', undefined]] = everyLesson

  it('each key of a remote goes one card, to either end and no further; a tap too', async () => {
    const { page, context } = await site.open(pathOf(id), { viewport: { width: 1024, height: 768 }, hasTouch: true })
    await page.tap('[data-open]')
    const { count } = await cardOf(page)
    let at = 1
    for (const [key, step] of [
      ['ArrowRight', 1],
      [' ', 1],
      ['PageDown', 1],
      ['ArrowLeft', -1],
      ['PageUp', -1],
      ['PageDown', 1],
    ] as const) {
      await page.keyboard.press(key)
      at += step
      expect((await cardOf(page)).at, key).toBe(at)
    }
    await page.touchscreen.tap(700, 600)
    await expect.poll(async () => (await cardOf(page)).at).toBe(at + 1)
    await page.touchscreen.tap(40, 600)
    await expect.poll(async () => (await cardOf(page)).at).toBe(at)
    await page.keyboard.press('End')
    expect(await page.isDisabled('[data-go="1"]')).toBe(true)
    await page.keyboard.press('PageDown')
    expect((await cardOf(page)).at).toBe(count)
    await page.keyboard.press('Home')
    await page.keyboard.press('ArrowLeft')
    expect((await cardOf(page)).at).toBe(1)
    expect(await page.isDisabled('[data-go="-1"]')).toBe(true)
    expect(await page.$eval('[data-go="-1"]', (button) => getComputedStyle(button).borderStyle)).toBe('dashed')
    await context.close()
  })

  it('a key goes one card while the slider has the focus', async () => {
    const { page, context } = await site.open(pathOf(id), { viewport: { width: 1280, height: 720 } })
    await page.click('[data-open]')
    while ((await page.locator('dialog what-if input[type="range"]').count()) === 0) await page.keyboard.press('ArrowRight')
    const { at } = await cardOf(page)
    await page.focus('dialog input[type="range"]')
    const value = await page.inputValue('dialog input[type="range"]')
    await page.keyboard.press('PageDown')
    expect((await cardOf(page)).at).toBe(at + 1)
    await page.keyboard.press('ArrowLeft')
    expect(await page.inputValue('dialog input[type="range"]')).toBe(value)
    await context.close()
  })

  it('notes what the class votes for and says it with the result', async () => {
    const { page, context } = await site.open(pathOf(id), { viewport: { width: 1280, height: 720 } })
    await page.click('[data-open]')
    while (!(await titleOnBoard(page)).endsWith(lesson?.steps[0]?.title ?? '')) await page.keyboard.press('ArrowRight')
    await page.keyboard.press('b')
    expect(await page.getAttribute('dialog [data-vote="B"]', 'aria-pressed')).toBe('true')
    await page.click('dialog [data-vote="A"]')
    await page.keyboard.press('ArrowRight')
    expect(await textOf(page, 'dialog .voted')).toBe('The class said A.')
    await context.close()
  })

  it('fills the screen by button, and Escape leaves the page at the card', async () => {
    const { page, context } = await site.open(pathOf(id), { viewport: { width: 1280, height: 720 } })
    await page.click('[data-open]')
    await page.keyboard.press('End')
    const last = await titleOnBoard(page)
    await page.click('[data-go="fill"]')
    await page.waitForFunction(() => document.fullscreenElement?.querySelector('[data-stage]') !== undefined)
    await page.click('[data-go="leave"]')
    await page.waitForFunction(() => document.fullscreenElement === null)
    const top = await page.locator('.turn-item h2', { hasText: last }).evaluate((node) => node.getBoundingClientRect().top)
    expect(top).toBeLessThan(720)
    await context.close()
  })

  it('a link opens its card; one to a card that is not there is told, and the lesson stays usable', async () => {
    const good = await site.open(`${pathOf(id)}#card=3`)
    expect((await cardOf(good.page)).at).toBe(3)
    await good.context.close()
    for (const wrong of ['999', '0', 'x']) {
      const { page, context, faults } = await site.open(`${pathOf(id)}#card=${wrong}`)
      expect(await textOf(page, 'board-view [data-said]')).toMatch(/^There is no card .* this lesson has cards 1 to \d+\.$/)
      await page.click('[data-open]')
      expect((await cardOf(page)).at).toBe(1)
      expect(faults).toEqual([])
      await context.close()
    }
  })

  it.each([320, 390, 1920])('at %i px: nothing to the side, targets large enough, axe finds nothing', async (width) => {
    const { page, context } = await site.open(pathOf(id), { viewport: { width, height: 844 }, bypassCSP: true })
    await throughCards(page, async (at) => {
      expect(await sideways(page), String(at)).toBeLessThanOrEqual(0)
      expect(await page.$eval('[data-stage]', (stage) => stage.scrollWidth - stage.clientWidth), String(at)).toBeLessThanOrEqual(0)
    })
    const low = await page.$$eval('dialog button', (buttons) => buttons.map((button) => button.getBoundingClientRect().height))
    expect(Math.min(...low)).toBeGreaterThanOrEqual(44)
    for (const key of ['Home', 'End', 'ArrowLeft']) {
      await page.keyboard.press(key)
      expect(await axeFindings(page)).toEqual([])
    }
    await context.close()
  })
})
