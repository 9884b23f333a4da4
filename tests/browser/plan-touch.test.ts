import { demoJobs, planRepair } from '@strandwise/planner'
import type { Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Answers } from '../../site/src/plan/answers.ts'
import { answersFrom } from '../../site/src/plan/answersFrom.ts'
import { neededAnswers } from './neededAnswers.ts'
import { planStands, type Site, site, verdictsOn } from './planPage.ts'

let served: Site
beforeAll(async () => {
  served = await site()
})
afterAll(() => served.close())

/** True if the two tapped places and the default options give this value without a tap. */
const standsAlready = (page: Page, name: string, text: string): Promise<boolean> =>
  page.evaluate(
    ([key, wanted]) =>
      [...document.querySelectorAll<HTMLInputElement>(`[name="${key}"]`)].some((node) => node.value === wanted && (node.type !== 'radio' || node.checked)),
    [name, text] as const,
  )

interface Touched {
  readonly taps: number
  readonly letters: number
}

/** Fills the form by touch, field by field; opening a list takes two taps. */
async function fillByTouch(page: Page, wanted: Answers): Promise<Touched> {
  let taps = 0
  let letters = 0
  const tap = async (target: Locator) => {
    await target.tap()
    taps += 1
  }
  const open = async (inside: string) => {
    for (const details of await page.locator(`form details:has(${inside})`).all())
      if ((await details.getAttribute('open')) === null) await tap(details.locator('> summary'))
  }
  for (const list of ['tools', 'sleeves']) {
    for (let count = Number(wanted[list] ?? 0); count > 0; count -= 1) {
      await open(`[data-add="${list}"]`)
      await tap(page.locator(`[data-add="${list}"]`))
    }
  }
  for (let index = 0; index < Number(wanted.readings ?? 0); index += 1) {
    for (const end of ['from', 'to']) await tap(page.locator(`[data-place="${wanted[`readings.${index}.${end}`]}"]`))
  }
  for (const [name, text] of Object.entries(wanted)) {
    const control = page.locator(`[name="${name}"]`).first()
    if (text === '' || (await control.count()) === 0) continue
    if (await standsAlready(page, name, text)) continue
    await open(`[name="${name}"]`)
    const kind = await control.evaluate((node) => (node instanceof HTMLSelectElement ? 'list' : (node as HTMLInputElement).type))
    if (kind === 'list') {
      await control.selectOption(text)
      taps += 2
    } else if (kind === 'text') {
      await tap(control)
      // Headless Chromium's touch emulation sometimes drops keys, even on a page without scripts: so the text is set at once.
      await control.fill(text)
      letters += text.length
    } else {
      for (const value of text.split(',')) {
        const choice = page.locator(`label:has([name="${name}"][value="${value}"])`)
        if (!(await choice.locator('input').isChecked())) await tap(choice)
      }
    }
  }
  await page.locator('h1').tap()
  return { taps, letters }
}

/** A hundred taps, each waiting for the page to settle. */
const longMs = 180_000

describe('the demo repair by touch at 390 px', { timeout: longMs }, () => {
  const touch = { hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } }

  it('gives the command’s plan, within a ceiling of taps', async () => {
    const job = demoJobs['bilge-pump-feed'] as NonNullable<(typeof demoJobs)['bilge-pump-feed']>
    const { page, faults } = await served.open(touch)
    const { taps, letters } = await fillByTouch(page, answersFrom(job))
    await planStands(page)
    const plan = planRepair(job)
    expect(await page.textContent('[data-plan] .says')).toBe(plan.decision.says)
    expect(await verdictsOn(page)).toEqual(plan.sections.map((section) => section.verdict))
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390)
    expect(faults).toEqual([])
    expect(taps).toBeLessThanOrEqual(110)
    expect(letters).toBeLessThanOrEqual(235)
    await page.context().close()
  })

  it('a first plan takes the needed answers and little more', async () => {
    const { page } = await served.open(touch)
    const { taps, letters } = await fillByTouch(page, neededAnswers)
    await planStands(page)
    // Six fields, a choice, two lists, and the tap that leaves the last field.
    expect(taps).toBeLessThanOrEqual(10)
    expect(letters).toBeLessThanOrEqual(14)
    await page.context().close()
  })
})
