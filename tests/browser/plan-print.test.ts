import { demoJobs, planRepair } from '@strandwise/planner'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { jobToFragment } from '../../site/src/plan/jobLink.ts'
import { fillIn, planStands, type Site, site } from './planPage.ts'
import { pagesOf } from './printed.ts'

let served: Site
beforeAll(async () => {
  served = await site()
})
afterAll(() => served.close())

describe('the job card on paper', { timeout: 180_000 }, () => {
  it.each(Object.entries(demoJobs))('%s: one page or two, boxes to tick, limits, no blank row', async (name, job) => {
    const { page } = await served.open()
    await fillIn(page, name)
    const plan = planRepair(job)
    expect(pagesOf(await page.pdf({ preferCSSPageSize: true }))).toBeLessThanOrEqual(plan.sequence.length === 0 ? 1 : 2)
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('[data-card]').isVisible()).toBe(true)
    expect(await page.locator('form:not([data-proof-form])').isVisible()).toBe(false)
    expect(await page.locator('[data-card] .box').count()).toBe(2 * plan.sequence.length + plan.parts.length)
    const rows = await page.locator('[data-card] .measured tbody th').allTextContents()
    expect(rows).toEqual(plan.decision.doneWhen.map(({ text }) => text))
    if (job.circuit.fuseA !== undefined && plan.decision.kind !== 'refused')
      expect(await page.textContent('[data-card] .facts')).toContain(`Fuse: ${job.circuit.fuseA} A`)
    await page.context().close()
  })

  it('without a plan prints the questions as a sheet to fill in', async () => {
    const { page } = await served.open()
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('form:not([data-proof-form])').isVisible()).toBe(true)
    expect(await page.locator('[data-card]').isVisible()).toBe(false)
    await page.context().close()
  })

  it('of a job with the longest title and every tool stays on three pages', async () => {
    const bilge = demoJobs['bilge-pump-feed'] as NonNullable<(typeof demoJobs)['bilge-pump-feed']>
    const long = {
      ...bilge,
      title: 'A title as long as the form takes it, with every word that a person may think of at the end of a long day. '.padEnd(120, 'x'),
      circuit: { ...bilge.circuit, rules: ['small-craft', 'aircraft', 'road-vehicle', 'space'] },
      surroundings: { ...bilge.surroundings, location: 'submerged', vibration: 'strong', flammableVapour: true },
      tools: Array.from({ length: 12 }, (_, index) => ({
        name: `${index} ${'a tool with a long name '.repeat(3)}`.trim(),
        kind: 'iron',
        powerW: 15 + 10 * index,
      })),
    }
    const { page } = await served.open({}, `#${jobToFragment(long)}`)
    await planStands(page)
    expect(pagesOf(await page.pdf({ preferCSSPageSize: true }))).toBeLessThanOrEqual(3)
    await page.context().close()
  })
})
