import { demoJobs } from '@strandwise/planner'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { jobToFragment } from '../../site/src/plan/jobLink.ts'
import { answer, answersOn, fillIn, planStands, type Site, seeAnswers, seePlan, site } from './planPage.ts'

let served: Site
beforeAll(async () => {
  served = await site()
})
afterAll(() => served.close())

const view = (page: Page) => page.getAttribute('repair-plan', 'data-view')
const isIn = (page: Page, wanted: string) => page.waitForSelector(`repair-plan[data-view="${wanted}"]`)

describe('the browser’s back button on a phone', () => {
  it('leads from the plan to the answers where they were, forward to the plan again, then to the page before', async () => {
    // Without motion: a transition between two pages may be cut off on a busy machine.
    const { page, faults } = await served.open({ reducedMotion: 'reduce' })
    await page.goto(served.address)
    await page.click('nav.doors a[href$="plan/"]')
    await page.waitForSelector('repair-plan[data-ready]')
    await fillIn(page, 'bilge-pump-feed')
    await page.evaluate(() => scrollTo(0, 900))
    // A click by coordinates may scroll first.
    await page.locator('[data-act="see-plan"]').dispatchEvent('click')
    await page.goBack()
    await isIn(page, 'answers')
    await page.waitForFunction(() => Math.abs(scrollY - 900) < 5)
    await page.goForward()
    await isIn(page, 'plan')
    // The button on the page is the same step back.
    await seeAnswers(page)
    await page.waitForFunction(() => (history.state as { view?: string } | null)?.view === 'answers')
    expect(faults).toEqual([])
    await page.goBack()
    await page.waitForSelector('nav.doors')
    await page.context().close()
  })

  it('and a reload show the plan that stood there', async () => {
    const { page } = await served.open()
    await fillIn(page, 'trailer-tail-lamp')
    await seePlan(page)
    await page.reload()
    await planStands(page)
    expect(await view(page)).toBe('plan')
    await page.goBack()
    await isIn(page, 'answers')
    await page.context().close()
  })

  it('from a shared link leaves the page at once, and going forward opens no link over changed answers', async () => {
    const job = demoJobs['bilge-pump-feed']
    const { page } = await served.open()
    await page.goto(`${served.address}plan/?again#${jobToFragment(job)}`)
    await planStands(page)
    expect(await view(page)).toBe('plan')
    await seeAnswers(page)
    await seePlan(page)
    await page.goBack()
    await isIn(page, 'answers')
    await answer(page, 'damage.fromTerminationMm', '31')
    await page.goForward()
    await isIn(page, 'plan')
    await planStands(page)
    expect((await answersOn(page))['damage.fromTerminationMm']).toBe('31')
    await page.context().close()
  })

  it('has no step to undo where plan and answers stand side by side', async () => {
    const { page } = await served.open({ viewport: { width: 1280, height: 900 } })
    await fillIn(page, 'trailer-tail-lamp')
    const before = await page.evaluate(() => history.length)
    await page.locator('.assumed [data-goto]').first().click()
    expect(await page.evaluate(() => history.length)).toBe(before)
    await page.context().close()
  })
})

describe('a section of the plan', () => {
  it('brings its chart and the trade’s rules when it is opened, and those of the newer plan after a change', async () => {
    const { page, faults } = await served.open({ viewport: { width: 1280, height: 900 } })
    await fillIn(page, 'bilge-pump-feed')
    const wire = page.locator('[data-section="wire-and-protection"]')
    expect(await wire.locator('.more, .chart').count()).toBe(0)
    await wire.locator('> summary').click()
    await wire.locator('.chart svg').waitFor()
    expect(await wire.locator('.more li').count()).toBeGreaterThan(5)
    expect(await wire.locator('figcaption').textContent()).toContain('you draw 4.20 A')
    await answer(page, 'load.currentA', '4.6')
    await planStands(page)
    await page.waitForFunction(() => document.querySelector('[data-section="wire-and-protection"] figcaption')?.textContent?.includes('you draw 4.60 A'))
    await wire.locator('.chart').click()
    await wire.locator('canvas').waitFor()
    expect(faults).toEqual([])
    await page.context().close()
  })
})
