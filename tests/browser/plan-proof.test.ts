import { demoJobs, planRepair, verifyRepair } from '@strandwise/planner'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { axeFindings } from './accessibility.ts'
import { fillIn, type Site, seePlan, site } from './planPage.ts'
import { pagesOf } from './printed.ts'

let served: Site
beforeAll(async () => {
  served = await site()
})
afterAll(() => served.close())

async function enter(page: Page, texts: Readonly<Record<string, string>>): Promise<void> {
  for (const [name, text] of Object.entries(texts)) await page.fill(`[data-proof-form] [name="${name}"]`, text)
  await page.click('[data-act="prove"]')
  await page.waitForSelector('[data-proven] > *')
}

async function opened(): Promise<{ readonly page: Page; readonly faults: readonly string[] }> {
  const found = await served.open()
  await fillIn(found.page, 'bilge-pump-feed')
  await seePlan(found.page)
  await found.page.click('[data-proof] summary')
  return found
}

describe('the proof of a finished repair', () => {
  it('is the command’s, and its record prints on one page, to sign', async () => {
    const job = demoJobs['bilge-pump-feed'] as NonNullable<(typeof demoJobs)['bilge-pump-feed']>
    const { page, faults } = await opened()
    await enter(page, { joint1V: '1.2', wire1V: '1.6', wireLengthMm: '25', date: '2026-05-04', by: 'the owner' })
    const { method } = planRepair(job).decision
    const proof = verifyRepair(job, {
      date: '2026-05-04',
      readings: [],
      ratio: [{ joint: 1, jointV: { low: 0.0011, high: 0.0013 }, wireV: { low: 0.0015, high: 0.0017 }, wireLengthMm: 25 }],
      ...(method === null ? {} : { method }),
    })
    expect(proof.verdict).toBe('proven')
    expect(await page.textContent('[data-proven] .lead')).toBe('Proven.')
    expect(await page.locator('[data-proven] li').count()).toBe(proof.checks.length)
    expect(await axeFindings(page)).toEqual([])
    await page.evaluate(() => {
      window.print = () => undefined
    })
    await page.click('[data-act="print-record"]')
    await page.emulateMedia({ media: 'print' })
    expect(await page.textContent('[data-record] h1')).toContain('Repair record')
    expect(await page.locator('[data-record] .sign').isVisible()).toBe(true)
    expect(await page.locator('[data-card]').isVisible()).toBe(false)
    expect(pagesOf(await page.pdf({ preferCSSPageSize: true }))).toBe(1)
    expect(faults).toEqual([])
    await page.context().close()
  })

  it('fails a joint that drops more than its wire', async () => {
    const { page } = await opened()
    await enter(page, { joint1V: '9.5', wire1V: '1.6', wireLengthMm: '25' })
    expect(await page.textContent('[data-proven] .lead')).toBe('Failed: make it again.')
    await page.context().close()
  })

  it.each([
    [{ joint1V: 'two' }, 'Over the joint: read “two”'],
    [{ joint1V: '1.2' }, 'enter both'],
    [{ joint1V: '1.2', wire1V: '1.6' }, 'Length of that wire is missing'],
    [{ date: '' }, 'date: allowed'],
  ])('with %o says what is missing or wrong', async (texts, words) => {
    const { page } = await opened()
    await enter(page, texts)
    expect(await page.textContent('[data-proven]')).toContain(words)
    expect(await page.locator('[data-recorded]').isVisible()).toBe(false)
    await page.context().close()
  })
})
