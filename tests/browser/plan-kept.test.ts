import { readFile } from 'node:fs/promises'
import { demoJobs, parseRepairJob } from '@strandwise/planner'
import type { Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { answer, answersOn, fillIn, planStands, type Site, seeAnswers, seePlan, site, verdictsOn } from './planPage.ts'

let served: Site
/** One page, refilled by each case. */
let page: Page
let faults: readonly string[]
beforeAll(async () => {
  served = await site()
  const opened = await served.open()
  page = opened.page
  faults = opened.faults
})
afterAll(() => served.close())
afterEach(() => expect(faults).toEqual([]))

describe('a job file', () => {
  it('is saved as the command reads it and opens again', async () => {
    await fillIn(page, 'bilge-pump-feed')
    await answer(page, 'damage.fromTerminationMm', '1 in')
    await planStands(page)
    await seePlan(page)
    const [download] = await Promise.all([page.waitForEvent('download'), page.click('[data-act="save"]')])
    expect(download.suggestedFilename()).toMatch(/^bilge-pump-feed.*\.json$/)
    const text = await readFile(await download.path(), 'utf8')
    const job = demoJobs['bilge-pump-feed'] as NonNullable<(typeof demoJobs)['bilge-pump-feed']>
    expect(parseRepairJob(JSON.parse(text))).toEqual({ ...job, units: 'metric', damage: { ...job.damage, fromTerminationMm: 25.4 } })
    await seeAnswers(page)
    await page.click('[data-act="forget"]')
    await page.setInputFiles('#file', { name: 'job.json', mimeType: 'application/json', buffer: Buffer.from(text) })
    await planStands(page)
    expect(await page.inputValue('[name="damage.fromTerminationMm"]')).toBe('1 in')
  })

  it.each([
    ['no JSON', 'title: pump', 'This file is no job: it is not JSON'],
    ['nothing', '', 'This file is no job: it is not JSON'],
    ['another thing', '{"name":"x"}', 'This file holds no usable job'],
    ['a list', '[1,2]', 'This file holds no usable job'],
    ['a job with a wrong field', JSON.stringify({ ...demoJobs['bilge-pump-feed'], circuit: { kind: 'motor', supplyV: -3 } }), 'circuit.supplyV: is -3'],
    ['far too much', `"${'x'.repeat(1_000_001)}"`, 'This file is larger than any job'],
  ])('of %s leaves everything as it was', async (_, text, words) => {
    await fillIn(page, 'trailer-tail-lamp')
    const before = await answersOn(page)
    const verdicts = await verdictsOn(page)
    await page.setInputFiles('#file', { name: 'job.json', mimeType: 'application/json', buffer: Buffer.from(text) })
    await page.waitForSelector('[data-said]:not([hidden])')
    expect(await page.textContent('[data-said]')).toContain(words)
    expect(await answersOn(page)).toEqual(before)
    expect(await verdictsOn(page)).toEqual(verdicts)
  })
})

describe('the browser', () => {
  it('keeps every answer, half-typed text too, and forgets on request', async () => {
    const { page } = await served.open()
    const store = () => page.evaluate(() => [...Object.keys(localStorage), ...Object.keys(sessionStorage)])
    expect(await store()).toEqual([])
    await fillIn(page, 'bilge-pump-feed')
    await page.locator('[name="circuit.supplyV"]').fill('')
    await page.locator('[name="circuit.supplyV"]').pressSequentially('13.')
    const before = await answersOn(page)
    await page.reload()
    await page.waitForSelector('repair-plan[data-ready]')
    expect(await answersOn(page)).toEqual(before)
    expect(await page.inputValue('[name="circuit.supplyV"]')).toBe('13.')
    await page.locator('[data-act="forget"]').scrollIntoViewIfNeeded()
    await page.click('[data-act="forget"]')
    expect(await store()).toEqual([])
    expect(await page.inputValue('[name="wire.size"]')).toBe('')
    await page.reload()
    await page.waitForSelector('repair-plan[data-ready]')
    expect(await page.inputValue('[name="wire.size"]')).toBe('')
    await page.context().close()
  })

  it('forgets only for good once the page is closed: undo brings the answers back', async () => {
    const { page } = await served.open()
    await fillIn(page, 'bilge-pump-feed')
    await page.click('[data-act="forget"]')
    await page.click('[data-act="undo"]')
    expect(await page.inputValue('[name="wire.size"]')).toBe('16 AWG')
    await page.context().close()
  })

  it('in two windows keeps the work of each', async () => {
    const { page } = await served.open()
    const other = await page.context().newPage()
    await fillIn(page, 'bilge-pump-feed')
    await other.goto(`${served.address}plan/`)
    await planStands(other)
    expect(await other.inputValue('[name="wire.size"]')).toBe('16 AWG')
    await answer(other, 'wire.size', '18 AWG')
    await answer(page, 'circuit.supplyV', '13')
    await other.reload()
    await page.reload()
    await Promise.all([planStands(page), planStands(other)])
    expect(await other.inputValue('[name="wire.size"]')).toBe('18 AWG')
    expect(await page.inputValue('[name="wire.size"]')).toBe('16 AWG')
    expect(await page.inputValue('[name="circuit.supplyV"]')).toBe('13')
    await page.context().close()
  })

  it('that keeps nothing says so and plans all the same', async () => {
    const { page, faults } = await served.open()
    await page.evaluate(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException('full', 'QuotaExceededError')
      }
    })
    await fillIn(page, 'bilge-pump-feed')
    expect(await page.textContent('[data-said]')).toBe('This browser keeps nothing. Save the job as a file instead.')
    await planStands(page)
    expect(faults).toEqual([])
    await page.context().close()
  })

  it('with rubbish in its store shows an empty form', async () => {
    for (const rubbish of ['{', '7', '[]', '{"readings":"999999999"}', '{"nothing":"x","circuit.supplyV":5}']) {
      const { page, faults } = await served.open()
      await page.evaluate((text) => localStorage.setItem('strandwise.plan.1', text), rubbish)
      await page.reload()
      await page.waitForSelector('repair-plan[data-ready]')
      expect(await page.inputValue('[name="circuit.supplyV"]'), rubbish).toBe('')
      expect(await page.locator('[data-list="readings"] > *').count()).toBeLessThanOrEqual(50)
      expect(faults).toEqual([])
      await page.context().close()
    }
  })
})
