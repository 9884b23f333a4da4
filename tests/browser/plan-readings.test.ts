import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { neededAnswers } from './neededAnswers.ts'
import { answer, fillIn, planStands, type Site, seeAnswers, seePlan, settled, site } from './planPage.ts'

let served: Site
beforeAll(async () => {
  served = await site()
})
afterAll(() => served.close())

async function firstPlan(page: Page): Promise<void> {
  for (const [name, text] of Object.entries(neededAnswers)) {
    const kind = await page
      .locator(`[name="${name}"]`)
      .first()
      .evaluate((node) => (node instanceof HTMLSelectElement ? 'list' : (node as HTMLInputElement).type))
    if (kind === 'list') await page.selectOption(`[name="${name}"]`, text)
    else if (kind === 'radio') await page.check(`[name="${name}"][value="${text}"]`)
    else await answer(page, name, text)
  }
  await planStands(page)
}

const readingOf = (page: Page, name: string): Promise<string> =>
  page.$eval(
    `[name="readings.0.${name}"]`,
    (node, key) => {
      const root = node.closest('form') as HTMLFormElement
      return String(new FormData(root).get(`readings.0.${key}`) ?? '')
    },
    name,
  )

describe('a reading on the drawn wire', () => {
  it('is two taps and the value: the two places are marked, and the plan takes it in', async () => {
    const { page, faults } = await served.open({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } })
    await firstPlan(page)
    await page.locator('[data-place="joint-out"]').tap()
    expect(await page.getAttribute('[data-place="joint-out"]', 'aria-pressed')).toBe('true')
    expect(await page.textContent('[data-probing]')).toContain('other place')
    await page.locator('[data-place="joint-in"]').tap()
    expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).name)).toBe('readings.0.value')
    await answer(page, 'readings.0.value', '1.9')
    await planStands(page)
    // Places tapped against the current are stored along it.
    expect([await readingOf(page, 'from'), await readingOf(page, 'to'), await readingOf(page, 'kind'), await readingOf(page, 'load')]).toEqual([
      'joint-in',
      'joint-out',
      'drop',
      'on',
    ])
    expect(await page.locator('[data-marks] .mark').count()).toBe(2)
    expect(await page.textContent('[data-marks]')).toContain('1.9 V')
    await seePlan(page)
    const drawn = await page.getAttribute('[data-block="diagnosis"] svg', 'aria-label')
    expect(drawn).toMatch(/joint, source side to joint, load side: expected .+, measured .*1\.9/)
    expect(await page.locator('[data-block="diagnosis"] .answered li').count()).toBe(1)
    expect(faults).toEqual([])
    await page.context().close()
  })

  it.each([
    ['0.4 ohm', 'resistance', 'unplugged'],
    ['350 mV', 'drop', 'on'],
    ['4.1 A', 'current', 'on'],
    ['61 °C', 'temperature', 'on'],
  ])('of %s is known by its unit', async (text, kind, load) => {
    const { page } = await served.open()
    await firstPlan(page)
    await page.click('[data-place="fuse-out"]')
    await page.click('[data-place="joint-in"]')
    await answer(page, 'readings.0.value', text)
    expect([await readingOf(page, 'kind'), await readingOf(page, 'load')]).toEqual([kind, load])
    expect(await page.textContent('[id="ask-readings.0.value-problem"]')).toBe('')
    await page.context().close()
  })

  it('goes by keys alone, and Escape lets go of the first place', async () => {
    const { page } = await served.open()
    await firstPlan(page)
    await page.focus('[data-place="load+"]')
    await page.keyboard.press('Enter')
    await page.keyboard.press('Escape')
    expect(await page.locator('[data-place][aria-pressed="true"]').count()).toBe(0)
    await page.keyboard.press('Enter')
    await page.keyboard.press('Tab')
    await page.keyboard.press('Enter')
    await page.keyboard.type('9.8')
    await page.keyboard.press('Enter')
    await settled(page)
    expect([await readingOf(page, 'from'), await readingOf(page, 'to'), await readingOf(page, 'value')]).toEqual(['load+', 'load-', '9.8'])
    await page.context().close()
  })

  it('that the plan asks for next is entered from the plan', async () => {
    const { page } = await served.open()
    await fillIn(page, 'orchard-gate')
    await seePlan(page)
    const button = page.locator('[data-read-next]')
    expect(await button.count()).toBe(1)
    const count = await page.locator('[data-list="readings"] > *').count()
    await button.click()
    expect(await page.locator('[data-list="readings"] > *').count()).toBe(count + 1)
    expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).name)).toBe(`readings.${count}.value`)
    await seeAnswers(page)
    await page.context().close()
  })
})
