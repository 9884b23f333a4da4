import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { axeFindings } from './accessibility.ts'
import { type BuiltSite, builtSite, type Opened } from './builtSite.ts'
import { textOf } from './learnPage.ts'
import { cardOf, everyLesson, goToCard, pathOf, plain, seenCards, titleOnBoard } from './lessonPages.ts'

const projector = { width: 1280, height: 720 }
let site: BuiltSite
beforeAll(async () => {
  site = await builtSite()
})
afterAll(() => site.close())

describe.each(everyLesson)('the board of %s', (id, lesson) => {
  let opened: Opened
  beforeAll(async () => {
    opened = await site.open(pathOf(id), { viewport: projector })
    await opened.page.click('[data-open]')
  })
  afterAll(() => opened.context.close())

  it.each([projector, { width: 1024, height: 768 }])('every card fits $width x $height without scrolling', async (size) => {
    await opened.page.setViewportSize(size)
    const cards = await seenCards(opened.page)
    for (const [index, { over, title }] of cards.entries()) expect(over, `card ${index + 1}, ${title}`).toEqual([0, 0])
    // Each step, check and mistake has a question card before its answer.
    expect(cards.length).toBeGreaterThanOrEqual(3 * lesson.steps.length + 2 * lesson.mistakes.length + 2)
    expect(opened.faults).toEqual([])
  })

  it('shows nothing of an answer before its key: not in sight, not to a reader of the screen', async () => {
    await opened.page.setViewportSize(projector)
    const cards = await seenCards(opened.page)
    for (const step of lesson.steps) {
      const [ask, see, why] = cards.filter(({ title }) => title.endsWith(plain(step.title)))
      const wrong = step.options.flatMap(({ reply }) => reply ?? [])
      const answer = [step.see.short, ...step.why, ...wrong].map(plain)
      expect(ask?.text).toContain(plain(step.ask))
      for (const words of answer) expect(ask?.text).not.toContain(words.slice(0, 30))
      expect(see?.text).toContain(plain(step.see.short))
      for (const words of [...step.why, ...wrong]) expect(see?.text).not.toContain(plain(words).slice(0, 30))
      for (const words of [...step.why, ...wrong]) expect(why?.text).toContain(plain(words))
    }
    for (const { title, done, costs } of lesson.mistakes) {
      const [ask, see] = cards.filter((card) => card.title.endsWith(plain(title)))
      expect(ask?.text).toContain(plain(done))
      expect(ask?.text).not.toContain(plain(costs))
      expect(see?.text).toContain(plain(costs))
    }
    // The page behind the board, which holds every answer, is not read out.
    const [step] = lesson.steps
    await opened.page.keyboard.press('Home')
    await goToCard(opened.page, step?.title ?? '')
    const read = await opened.page.locator('body').ariaSnapshot()
    expect(read).toContain(step?.ask.slice(0, 40))
    for (const { see, why } of lesson.steps) for (const words of [see.short, ...why]) expect(read).not.toContain(words.slice(0, 30))
  })

  it('tells the cautions before the class works', async () => {
    const cards = await seenCards(opened.page)
    const work = cards.findIndex(({ title }) => title === 'Measure it yourselves')
    const told = cards.slice(0, work).map(({ text }) => text)
    expect(lesson.cautions.length).toBeGreaterThan(0)
    for (const { text } of lesson.cautions) expect(told.some((card) => card.includes(plain(text)))).toBe(true)
  })

  it('the slider moves by key and by hand, its picture changes, and the class’s prediction is marked on its curve', async () => {
    const { page, faults } = opened
    const { setting, result, at } = lesson.whatIf
    await page.keyboard.press('Home')
    await goToCard(page, lesson.whatIf.title)
    expect(await page.locator('dialog svg.drawing path.series').count()).toBe(0)
    await page.fill('dialog input[type="text"]', String(result.high))
    await page.keyboard.press('Tab')
    await page.waitForFunction((high) => document.querySelector('dialog [data-setting]')?.textContent?.startsWith(String(high)), result.high)
    await page.keyboard.press('ArrowRight')
    await page.waitForFunction(() => /the class/.test(document.querySelector('dialog [data-chart]')?.textContent ?? ''))
    const before = await textOf(page, 'dialog output')
    await page.keyboard.press('ArrowDown')
    await page.waitForFunction((old) => document.querySelector('dialog output')?.textContent !== old, before)
    const pictures: string[] = []
    for (const end of [setting.low, setting.high, at]) {
      await page.fill('dialog input[type="text"]', String(end))
      await page.keyboard.press('Enter')
      await page.waitForFunction((says) => document.querySelector('dialog output')?.textContent === says, lesson.whatIf.says(end))
      // Shapes alone: a picture whose scale follows its values would only change its words.
      pictures.push(await page.$$eval('dialog [data-picture] :is(rect, circle, path)', (shapes) => shapes.map((shape) => shape.outerHTML).join('')))
      expect(await page.$eval('[data-stage]', (stage) => [stage.scrollHeight - stage.clientHeight, stage.scrollWidth - stage.clientWidth])).toEqual([0, 0])
    }
    expect(new Set(pictures).size).toBe(new Set([setting.low, setting.high, at]).size)
    for (const [past, allowed] of [
      [setting.high + setting.step, `Allowed: ${setting.low} to `],
      [setting.low - setting.step, `Allowed: ${setting.low} to `],
    ] as const) {
      await page.fill('dialog input[type="text"]', String(past))
      await page.keyboard.press('Enter')
      await page.waitForFunction((words) => document.querySelector('dialog [data-said]')?.textContent?.includes(words), allowed)
      expect(await textOf(page, 'dialog [data-said]')).toMatch(/^Read: .*Allowed: .*For example: /)
      expect(await textOf(page, 'dialog output')).toBe(lesson.whatIf.says(at))
    }
    expect(faults).toEqual([])
  })
})

describe('keys and taps', () => {
  const [[id, lesson] = ['', undefined]] = everyLesson
  let opened: Opened
  beforeAll(async () => {
    opened = await site.open(pathOf(id), { viewport: projector, hasTouch: true, bypassCSP: true })
  })
  afterAll(() => opened.context.close())

  it('each key of a remote goes one card, to either end and no further; a tap too', async () => {
    const { page } = opened
    await page.setViewportSize({ width: 1024, height: 768 })
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
  })

  it('a key goes one card while the slider has the focus', async () => {
    const { page } = opened
    await page.keyboard.press('Home')
    await goToCard(page, lesson?.whatIf.title ?? '')
    const { at } = await cardOf(page)
    await page.focus('dialog input[type="range"]')
    const value = await page.inputValue('dialog input[type="range"]')
    await page.keyboard.press('PageDown')
    expect((await cardOf(page)).at).toBe(at + 1)
    await page.keyboard.press('ArrowLeft')
    expect(await page.inputValue('dialog input[type="range"]')).toBe(value)
  })

  it('notes what the class votes for and says it with the result', async () => {
    const { page } = opened
    await page.keyboard.press('Home')
    await goToCard(page, lesson?.steps[0]?.title ?? '')
    await page.keyboard.press('b')
    expect(await page.getAttribute('dialog [data-vote="B"]', 'aria-pressed')).toBe('true')
    await page.click('dialog [data-vote="A"]')
    await page.keyboard.press('ArrowRight')
    expect(await textOf(page, 'dialog .voted')).toBe('The class said A.')
  })

  it('a short card is enlarged, and again when the board grows', async () => {
    const { page } = opened
    const typeOf = (): Promise<number> => page.$eval('[data-stage]', (stage) => Number.parseFloat(getComputedStyle(stage).fontSize))
    await page.setViewportSize(projector)
    await page.keyboard.press('Home')
    await goToCard(page, 'What is known')
    const small = await typeOf()
    expect(small).toBeGreaterThan(40)
    await page.setViewportSize({ width: 1920, height: 1080 })
    await expect.poll(typeOf).toBeGreaterThan(small)
  })

  it('at 320, 390 and 1920 px: nothing to the side, targets large enough, axe finds nothing in light and dark', async () => {
    const { page } = opened
    for (const [width, height, colorScheme] of [
      [320, 844, null],
      [390, 844, 'light'],
      [1920, 1080, 'dark'],
    ] as const) {
      await page.setViewportSize({ width, height })
      for (const card of await seenCards(page)) expect([card.sideways, card.over[1]], `${width} px, ${card.title}`).toEqual([0, 0])
      const low = await page.$$eval('dialog button', (buttons) => buttons.map((button) => button.getBoundingClientRect().height))
      expect(Math.min(...low), `${width} px`).toBeGreaterThanOrEqual(44)
      if (colorScheme === null) continue
      await page.emulateMedia({ colorScheme })
      for (const key of ['Home', 'End', 'ArrowLeft']) {
        await page.keyboard.press(key)
        expect(await axeFindings(page, colorScheme === 'dark' ? 'colours' : 'all'), `${width} px, ${key}`).toEqual([])
      }
    }
  })

  it('fills the screen by button, and leaving shows the page at the card', async () => {
    const { page } = opened
    await page.setViewportSize(projector)
    await page.keyboard.press('End')
    const last = await titleOnBoard(page)
    await page.click('[data-go="fill"]')
    await page.waitForFunction(() => document.fullscreenElement?.querySelector('[data-stage]') !== undefined)
    await page.click('[data-go="leave"]')
    await page.waitForFunction(() => document.fullscreenElement === null)
    const top = await page.locator('.turn-item h2', { hasText: last }).evaluate((node) => node.getBoundingClientRect().top)
    expect(top).toBeLessThan(720)
  })

  it('a link opens its card; one to a card that is not there is told, and the lesson stays usable', async () => {
    const { page, faults } = opened
    await page.goto(`${site.address}${pathOf(id)}#card=3`)
    await expect.poll(async () => (await cardOf(page)).at).toBe(3)
    const leave = async (): Promise<void> => {
      await page.click('[data-go="leave"]')
      await page.waitForFunction(() => location.hash === '')
    }
    await leave()
    for (const wrong of ['999', '0', 'x']) {
      await page.evaluate((fragment) => {
        location.hash = fragment
      }, `#card=${wrong}`)
      await expect.poll(() => textOf(page, 'board-view [data-said]')).toMatch(new RegExp(`^There is no card “${wrong}”: this lesson has cards 1 to \\d+\\.$`))
      await page.click('[data-open]')
      expect((await cardOf(page)).at).toBe(1)
      await leave()
    }
    const fresh = await site.open(`${pathOf(id)}#card=999`)
    expect(await textOf(fresh.page, 'board-view [data-said]')).toMatch(/^There is no card “999”/)
    expect([...faults, ...fresh.faults]).toEqual([])
    await fresh.context.close()
  })
})
