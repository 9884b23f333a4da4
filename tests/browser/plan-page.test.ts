import { demoJobs, planRepair, valueText } from '@strandwise/planner'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { jobToFragment } from '../../site/src/plan/jobLink.ts'
import { axeFindings } from './accessibility.ts'
import { answer, fillIn, type Site, site, status, verdictsOn } from './planPage.ts'
import { pagesOf } from './printed.ts'

let served: Site
beforeAll(async () => {
  served = await site()
})
afterAll(() => served.close())

/** The accessibility checker goes through a long page several times. */
const longMs = 180_000

describe('the plan page', { timeout: longMs }, () => {
  it.each(Object.entries(demoJobs))('%s: every verdict, reason and number is the command’s', async (name, job) => {
    const { page, faults } = await served.open()
    await fillIn(page, name)
    const plan = planRepair(job)
    expect(await status(page)).toBe(`Verdict: ${plan.verdict}.`)
    expect(await verdictsOn(page)).toEqual(plan.sections.map((section) => section.verdict))
    for (const section of plan.sections) {
      const place = page.locator(`[data-section="${section.id}"]`)
      expect(await place.locator('> ul > li').allTextContents()).toEqual(section.findings.map(({ text }) => text))
      expect(await place.locator('dl dt').allTextContents()).toEqual(section.values.map((value) => value.name))
      const memory = (status: string) => (status === 'from memory' ? ' (from memory)' : '')
      expect(await place.locator('dl dd').allTextContents()).toEqual(section.values.map((value) => valueText(value) + memory(value.provenance.status)))
    }
    expect(await page.locator('[data-cautions] li').allTextContents()).toEqual([...plan.cautions])
    expect(await page.locator('[data-after="steps"] ol > li').count()).toBe(plan.sequence.length)
    expect(await page.locator('.assumed li').count()).toBe(plan.assumptions.length)
    await page.waitForSelector('[data-section="joint"] svg.drawing')
    expect(await page.locator('svg.drawing').count()).toBeGreaterThanOrEqual(3)
    expect(faults).toEqual([])
    await page.context().close()
  })

  it('every section hangs beneath answers, cautions before every section', async () => {
    const { page } = await served.open()
    const order = await page.$$eval('.run > li', (stretches) =>
      stretches
        .map((node) => (node as HTMLElement).dataset)
        .map((data) => data.group ?? data.section ?? (data.before === undefined ? (data.after ?? data.part) : 'before')),
    )
    const at = (name: string) => order.indexOf(name)
    const needs = { before: 'circuit', 'wire-and-protection': 'load', 'cut-back': 'damage', method: 'way', heating: 'tools', covering: 'sleeves' }
    for (const [section, answers] of Object.entries(needs)) expect(at(answers), section).toBeLessThan(at(section))
    expect(at('before')).toBeLessThan(order.lastIndexOf('readings'))
    const sections = await page.$$eval('[data-section]', (nodes) => nodes.map((node) => (node as HTMLElement).dataset.section))
    expect(sections).toHaveLength(9)
    await page.context().close()
  })

  it.each([390, 768, 1280])(
    'at %i px full of answers nothing runs out of the page, in light and dark, and the accessibility rules find nothing',
    async (width) => {
      for (const colorScheme of ['light', 'dark'] as const) {
        const { page, faults } = await served.open({ viewport: { width, height: 900 }, colorScheme })
        await fillIn(page, 'bilge-pump-feed')
        await page.waitForSelector('[data-section="joint"] svg.drawing')
        expect(await page.evaluate(() => document.documentElement.scrollWidth), colorScheme).toBeLessThanOrEqual(width)
        // The checker takes long over a full page; the widest and the narrowest layout hold all there is.
        if (width !== 768) expect(await axeFindings(page), colorScheme).toEqual([])
        await answer(page, 'circuit.supplyV', '12 parsecs')
        for (const details of await page.locator('details').all()) await details.evaluate((node) => node.setAttribute('open', ''))
        expect(await page.evaluate(() => document.documentElement.scrollWidth), `${colorScheme}, opened`).toBeLessThanOrEqual(width)
        if (width === 390) expect(await axeFindings(page), `${colorScheme}, opened`).toEqual([])
        expect(faults).toEqual([])
        await page.context().close()
      }
    },
  )

  it('whatever can be tapped is 44 px tall or wide enough to hit', async () => {
    const { page } = await served.open()
    await fillIn(page, 'bilge-pump-feed')
    const small = await page.$$eval(
      'repair-plan :is(button, select, input[type="text"], summary, .side-by-side label, .tick-list label, .tick, .bar a)',
      (nodes) =>
        nodes.filter((node) => node.getClientRects().length > 0 && node.getBoundingClientRect().height < 43.9).map((node) => node.outerHTML.slice(0, 120)),
    )
    expect(small).toEqual([])
    await page.context().close()
  })

  it.each(Object.keys(demoJobs))('%s prints as a job card of at most two pages, with boxes', async (name) => {
    const { page } = await served.open()
    await fillIn(page, name)
    expect(pagesOf(await page.pdf({ preferCSSPageSize: true }))).toBeLessThanOrEqual(2)
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('.card').isVisible()).toBe(true)
    expect(await page.locator('form').isVisible()).toBe(false)
    const job = demoJobs[name]
    const plan = planRepair(job as NonNullable<typeof job>)
    expect(await page.locator('.card .box').count()).toBe(2 * plan.sequence.length + plan.parts.length)
    expect(await page.locator('.card .measured tbody tr').count()).toBeGreaterThanOrEqual(4)
    await page.context().close()
  })

  it('the longest job that could be made also prints on two pages', async () => {
    const bilge = demoJobs['bilge-pump-feed'] as NonNullable<(typeof demoJobs)['bilge-pump-feed']>
    const tube = bilge.solderSleeve?.tube as NonNullable<typeof bilge.sleeves>[number]
    const long = {
      ...bilge,
      title: 'A title as long as the form takes it, with every word that a person may think of at the end of a long day. '.padEnd(120, 'x'),
      circuit: { ...bilge.circuit, rules: ['small-craft', 'aircraft', 'road-vehicle', 'space'] },
      surroundings: { ...bilge.surroundings, location: 'submerged', vibration: 'strong', flexes: true, flammableVapour: true },
      solders: ['Sn60Pb40', 'Sn42Bi58', 'SAC305'],
      tools: Array.from({ length: 12 }, (_, index) => ({
        name: `${index} ${'a tool with a long name '.repeat(3)}`.trim(),
        kind: 'iron',
        powerW: 15 + 10 * index,
      })),
      sleeves: Array.from({ length: 20 }, (_, index) => ({ ...tube, name: `sleeve ${index}` })),
    }
    for (const job of [long, { ...long, intendedMethod: 'soldered-lap', methods: ['soldered-lap', 'soldered-lineman-splice'] }]) {
      const { page } = await served.open({}, `#${jobToFragment(job)}`)
      await page.waitForFunction(() => document.querySelector('[data-status]')?.textContent?.startsWith('Verdict'))
      expect(await page.locator('.card .measured tbody tr').count()).toBeGreaterThan(0)
      expect(pagesOf(await page.pdf({ preferCSSPageSize: true }))).toBeLessThanOrEqual(2)
      await page.context().close()
    }
  })

  it('reads without script: questions, hints and units are there, and it says that planning needs script', async () => {
    const { page } = await served.openPlain()
    const words = await page.textContent('main')
    expect(words).toContain('Planning needs script')
    for (const title of ['Distance from the plug', 'Wire size', 'Load current', 'Of each reading']) expect(words).toContain(title)
    expect(await page.locator('[data-needs-script]:visible').count()).toBe(0)
    await page.context().close()
  })
})
