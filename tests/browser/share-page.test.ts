import { demoJobs } from '@strandwise/planner'
import { deflateSync, strFromU8, strToU8 } from 'fflate'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { jobToFragment } from '../../site/src/plan/jobLink.ts'
import { brokenFragments } from './brokenFragments.ts'
import { answer, answersOn, fillIn, planStands, type Site, seeAnswers, seePlan, site, verdictsOn } from './planPage.ts'

let served: Site
beforeAll(async () => {
  served = await site()
})
afterAll(() => served.close())

async function linkOf(page: Page): Promise<string> {
  await seePlan(page)
  await page.click('[data-act="link"]')
  await page.waitForSelector('[data-link]:not([hidden])')
  return page.inputValue('#link')
}

/** Jobs of each kind: readings, a solder sleeve, sleeves of one's own, none of them, a refused circuit. share-link.test.ts sends every job through link and form. */
const kinds = ['bilge-pump-feed', 'telescope-mount', 'workshop-led-strip', 'float-switch-return', 'kiln-heater'] as const

describe('a link to a job', () => {
  it.each(kinds)('%s: opened elsewhere gives the same answers and the same plan', async (name) => {
    const { page } = await served.open()
    await fillIn(page, name)
    const link = await linkOf(page)
    expect(link.startsWith(`${served.address}plan/#job1.`)).toBe(true)
    expect(link.length).toBeLessThan(2000)
    const other = await served.open({}, new URL(link).hash)
    await planStands(other.page)
    expect(await answersOn(other.page)).toEqual(await answersOn(page))
    expect(await verdictsOn(other.page)).toEqual(await verdictsOn(page))
    expect(other.faults).toEqual([])
    await page.context().close()
    await other.page.context().close()
  })

  it('keeps the units typed, and can be taken back', async () => {
    const { page } = await served.open()
    await fillIn(page, 'bilge-pump-feed')
    await answer(page, 'damage.fromTerminationMm', '1 3/4 in')
    await planStands(page)
    const link = await linkOf(page)
    await fillIn(page, 'trailer-tail-lamp')
    const before = await answersOn(page)
    await page.evaluate((hash) => {
      location.hash = hash
    }, new URL(link).hash)
    await page.waitForFunction(() => (document.querySelector('[name="damage.fromTerminationMm"]') as HTMLInputElement).value === '1 3/4 in')
    await seeAnswers(page)
    await page.click('[data-act="undo"]')
    expect(await answersOn(page)).toEqual(before)
    await page.context().close()
  })

  it('leaves the address once the job is changed, and is not made of half a job', async () => {
    const fragment = jobToFragment(demoJobs['trailer-tail-lamp'])
    const { page } = await served.open({}, `#${fragment}`)
    await planStands(page)
    expect(new URL(page.url()).hash).toBe(`#${fragment}`)
    await seeAnswers(page)
    await answer(page, 'damage.fromTerminationMm', '')
    expect(new URL(page.url()).hash).toBe('')
    await seePlan(page)
    await page.click('[data-act="link"]')
    await page.waitForFunction(() => document.querySelector('[data-said]')?.textContent !== '')
    expect(await page.textContent('[data-said]')).toBe('There is no whole job yet: Distance from the plug is missing.')
    expect(await page.locator('[data-link]').isVisible()).toBe(false)
    await page.context().close()
  })

  it('never overwrites kept work without asking, and says so', async () => {
    const { page } = await served.open()
    const kept = () => page.evaluate(() => localStorage.getItem('strandwise.plan.1'))
    const current = (text: string) =>
      page.waitForFunction((wanted) => (document.querySelector('[name="load.currentA"]') as HTMLInputElement).value === wanted, text)
    const follow = () =>
      page.evaluate((hash) => {
        location.hash = hash
      }, jobToFragment(demoJobs['trailer-tail-lamp']))
    await fillIn(page, 'bilge-pump-feed')
    const before = await kept()
    expect(await page.locator('[data-borrowed]').isVisible()).toBe(false)
    await follow()
    await current('1.8')
    expect(await page.locator('[data-borrowed]').isVisible()).toBe(true)
    await seeAnswers(page)
    await answer(page, 'load.currentA', '1.9')
    expect(await kept()).toBe(before)
    await page.click('[data-act="back-to-mine"]')
    await current('4.2')
    expect(await kept()).toBe(before)
    await follow()
    await current('1.8')
    await page.click('[data-act="keep-this"]')
    expect(await page.locator('[data-borrowed]').isVisible()).toBe(false)
    expect(await kept()).toContain('"load.currentA":"1.8"')
    await page.context().close()
  })
})

/** Opens forty links and several pages anew. */
const longMs = 180_000

describe('a broken link', { timeout: longMs }, () => {
  const cases = brokenFragments(jobToFragment(demoJobs['bilge-pump-feed']), (text) => strFromU8(deflateSync(strToU8(text), { level: 9 }), true))

  it(`is refused with a sentence in each of ${cases.length} kinds, and the present work is kept`, async () => {
    const { page, faults } = await served.open()
    await page.evaluate(() => Object.assign(window, { alert: () => Object.assign(window, { alerted: true }) }))
    await fillIn(page, 'trailer-tail-lamp')
    const before = await answersOn(page)
    const verdicts = await verdictsOn(page)
    const kept = await page.evaluate(() => localStorage.getItem('strandwise.plan.1'))
    for (const { name, fragment } of cases) {
      await page.evaluate((hash) => {
        const said = document.querySelector('[data-said]')
        if (said !== null) said.textContent = ''
        location.hash = hash
      }, fragment)
      await page.waitForFunction(() => document.querySelector('[data-said]')?.textContent?.endsWith('Your answers here are as they were.'))
      expect(await page.locator('[data-said]').isVisible(), name).toBe(true)
      expect(await answersOn(page), name).toEqual(before)
      expect(await verdictsOn(page), name).toEqual(verdicts)
      expect(await page.evaluate(() => localStorage.getItem('strandwise.plan.1')), name).toBe(kept)
    }
    expect(await page.evaluate(() => 'alerted' in window)).toBe(false)
    expect(await page.locator('main script:not([type]), main img').count()).toBe(0)
    expect(faults).toEqual([])
    await page.context().close()
  })

  it('at the start leaves kept work in place, or an empty form', async () => {
    for (const { name, fragment } of cases.filter((_, index) => index % 12 === 0)) {
      const { page, faults } = await served.open({}, `#${fragment}`)
      await page.waitForSelector('[data-said]:not([hidden])')
      expect(await page.inputValue('[name="circuit.supplyV"]'), name).toBe('')
      await fillIn(page, 'bilge-pump-feed')
      await page.goto(`${served.address}#elsewhere`)
      await page.goto(`${served.address}plan/#${fragment}`)
      await page.waitForSelector('[data-said]:not([hidden])')
      expect(await page.inputValue('[name="wire.size"]'), name).toBe('16 AWG')
      expect(faults, name).toEqual([])
      await page.context().close()
    }
  })
})
