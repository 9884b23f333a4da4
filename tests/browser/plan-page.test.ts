import { demoJobs, planRepair } from '@strandwise/planner'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { jobToFragment } from '../../site/src/plan/jobLink.ts'
import { withPlaces } from '../../site/src/plan/places.ts'
import { axeFindings } from './accessibility.ts'
import { answer, fillIn, planStands, type Site, seeAnswers, seePlan, site, status, verdictsOn } from './planPage.ts'

let served: Site
beforeAll(async () => {
  served = await site()
})
afterAll(() => served.close())

/** The accessibility checker runs several times over a long page. */
const longMs = 180_000
const kindWords = { mend: 'Mend', 'replace the run': 'Replace the run', 'leave it': 'Leave it', 'measure first': 'Measure first', refused: 'Refused' }

describe('the plan page', { timeout: longMs }, () => {
  it.each(Object.entries(demoJobs))('%s: decision, cautions, steps, findings and verdicts are the command’s', async (name, job) => {
    const { page, faults } = await served.open()
    await fillIn(page, name)
    const plan = planRepair(job)
    const refused = plan.decision.kind === 'refused'
    expect(await status(page)).toBe(refused ? 'Refused: the wire ends here.' : `${kindWords[plan.decision.kind]}: ${plan.verdict}.`)
    expect(await page.textContent('[data-plan] .says')).toBe(withPlaces(plan.decision.says))
    expect(await page.locator('[data-block="cautions"] li').allTextContents()).toEqual([...plan.cautions])
    expect(await page.locator('[data-block="steps"] li').count()).toBe(plan.sequence.length)
    expect(await verdictsOn(page)).toEqual(plan.sections.map((section) => section.verdict))
    for (const section of plan.sections) {
      const place = page.locator(`[data-section="${section.id}"]`)
      expect(await place.locator('.findings > li').allTextContents()).toEqual(section.findings.map(({ text }) => withPlaces(text)))
      expect(await place.locator('dl dt').allTextContents()).toEqual(section.values.map((value) => value.name))
      expect(await place.locator('> summary').textContent()).toContain(withPlaces(section.says))
    }
    expect(await page.locator('[data-block="diagnosis"] .answered > li').count()).toBe(plan.diagnosis.answered.length)
    expect(await page.locator('[data-ways] tbody tr').count()).toBe(plan.ways.length)
    expect(faults).toEqual([])
    await page.context().close()
  })

  it('at 390 px has the card as its first screen, in its own place, reached from the foot bar', async () => {
    const { page } = await served.open()
    await fillIn(page, 'bilge-pump-feed')
    expect(await page.locator('[data-plan]').isVisible()).toBe(false)
    await seePlan(page)
    expect(await page.locator('form:not([data-proof-form])').isVisible()).toBe(false)
    const box = await page.locator('[data-plan] .decision').boundingBox()
    expect(box?.y).toBeLessThan(40)
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThan(844 - 60)
    await seeAnswers(page)
    expect(await page.locator('form:not([data-proof-form])').isVisible()).toBe(true)
    expect(await page.locator('[data-plan]').isVisible()).toBe(false)
    await page.context().close()
  })

  it('from 1000 px on has the plan beside the answers, both in view', async () => {
    const { page } = await served.open({ viewport: { width: 1000, height: 900 } })
    await fillIn(page, 'bilge-pump-feed')
    const [answers, plan] = [await page.locator('.answers-side').boundingBox(), await page.locator('.decision').first().boundingBox()]
    expect((answers?.x ?? 0) + (answers?.width ?? 0)).toBeLessThanOrEqual(plan?.x ?? 0)
    expect(plan?.y).toBeLessThan(300)
    expect(await page.locator('[data-act="see-plan"], [data-act="see-answers"]').filter({ visible: true }).count()).toBe(0)
    await page.context().close()
  })

  it('draws the decided way: its cuts, the crimp from the side, and the section; each says in words what it shows', async () => {
    const { page } = await served.open()
    await fillIn(page, 'bilge-pump-feed')
    const names = await page.$$eval('[data-block="drawings"] svg', (drawings) => drawings.map((drawing) => drawing.getAttribute('aria-label') ?? ''))
    expect(names.length).toBeGreaterThanOrEqual(2)
    for (const name of names) expect(name).toMatch(/to scale.*\d mm/s)
    await seePlan(page)
    const sizes = await page.$$eval('[data-plan] svg.drawing', (drawings) =>
      drawings.flatMap((drawing) => {
        const scale = drawing.getBoundingClientRect().width / ((drawing as SVGSVGElement).viewBox.baseVal.width || 1)
        return [...drawing.querySelectorAll('text')]
          .filter((text) => text.getClientRects().length > 0)
          .map((text) => scale * Number.parseFloat(getComputedStyle(text).fontSize))
      }),
    )
    expect(sizes.length).toBeGreaterThan(4)
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(12)
    await page.context().close()
  })

  it('opens the working behind a section: formula, numbers and source', async () => {
    const { page, faults } = await served.open()
    await fillIn(page, 'bilge-pump-feed')
    await seePlan(page)
    const section = page.locator('[data-section]:has([data-working])').first()
    await section.locator('> summary').click()
    await section.locator('[data-working] > summary').first().click()
    await page.waitForSelector('[data-working-of] math')
    expect(await section.locator('[data-working-of]').first().textContent()).toMatch(/Holds: .+ From: .+/s)
    await seeAnswers(page)
    await answer(page, 'title', 'Another name')
    await planStands(page)
    expect(await section.getAttribute('open')).not.toBeNull()
    expect(faults).toEqual([])
    await page.context().close()
  })

  it.each([390, 768, 1280])(
    'at %i px full of answers nothing runs out of the page, in light and dark, and the accessibility rules find nothing',
    async (width) => {
      for (const colorScheme of ['light', 'dark'] as const) {
        const { page, faults } = await served.open({ viewport: { width, height: 900 }, colorScheme })
        await fillIn(page, 'bilge-pump-feed')
        const fits = async (what: string) =>
          expect(await page.evaluate(() => document.documentElement.scrollWidth), `${colorScheme}, ${what}`).toBeLessThanOrEqual(width)
        await answer(page, 'circuit.supplyV', '12 parsecs')
        for (const details of await page.locator('details').all()) await details.evaluate((node) => node.setAttribute('open', ''))
        await fits('answers')
        if (width !== 768) expect(await axeFindings(page), `${colorScheme}, answers`).toEqual([])
        await seePlan(page)
        await fits('plan')
        if (width === 390) expect(await axeFindings(page), `${colorScheme}, plan`).toEqual([])
        expect(faults).toEqual([])
        await page.context().close()
      }
    },
  )

  it('whatever can be tapped is 44 px tall', async () => {
    const { page } = await served.open()
    await fillIn(page, 'bilge-pump-feed')
    const small = () =>
      page.$$eval('repair-plan :is(button, select, input[type="text"], summary, .side-by-side label, .tick-list label)', (nodes) =>
        nodes.filter((node) => node.getClientRects().length > 0 && node.getBoundingClientRect().height < 43.9).map((node) => node.outerHTML.slice(0, 120)),
      )
    expect(await small()).toEqual([])
    await seePlan(page)
    expect(await small()).toEqual([])
    await page.context().close()
  })

  it('reads without script: questions, hints and units are there, and it says that planning needs script', async () => {
    const { page } = await served.openPlain()
    const words = await page.textContent('main')
    expect(words).toContain('Planning needs script')
    for (const title of ['Distance from the plug', 'Wire size', 'Load current', 'Of each reading']) expect(words).toContain(title)
    expect(await page.locator('[data-needs-script]:visible').count()).toBe(0)
    await page.context().close()
  })

  it('says in a sentence where a job from a link is refused by the stop list', async () => {
    const job = { ...demoJobs['trailer-tail-lamp'], circuit: { kind: 'airbag', supplyV: 12 } }
    const { page } = await served.open({}, `#${jobToFragment(job)}`)
    await page.waitForSelector('[data-plan][data-verdict="refused"]')
    expect(await page.locator('[data-plan] .decision').isVisible()).toBe(true)
    expect(await page.locator('[data-block="steps"] li').count()).toBe(0)
    await page.context().close()
  })
})
