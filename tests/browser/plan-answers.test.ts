import { demoJobs, planRepair } from '@strandwise/planner'
import type { Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { answer, fillIn, type Site, settled, site, status, verdictsOn } from './planPage.ts'

let served: Site
/** One page for all cases that begin by filling it anew. */
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

async function emptied(): Promise<void> {
  await page.click('[data-act="forget"]')
  await page.check('[name="units"][value="metric"]')
}

const problem = async (page: Page, name: string) => (await page.textContent(`[id="ask-${name}-problem"]`)) ?? ''
const heard = async (page: Page, name: string) => (await page.textContent(`[id="ask-${name}-heard"]`)) ?? ''
const old = (page: Page) => page.locator('.planned[data-old]').count()

describe('a bad answer', () => {
  it('is told at its field in the unit typed, and the last good plan stays, marked as old', async () => {
    await fillIn(page, 'bilge-pump-feed')
    const before = await verdictsOn(page)
    await answer(page, 'circuit.supplyV', '12 mm')
    expect(await problem(page, 'circuit.supplyV')).toBe(
      'Read “12 mm”: "mm" is a unit of length, not of voltage. Allowed: from 0.001 V to 1000 V. For example 12 V.',
    )
    expect(await page.getAttribute('[name="circuit.supplyV"]', 'aria-invalid')).toBe('true')
    expect(await verdictsOn(page)).toEqual(before)
    expect(await old(page)).toBeGreaterThanOrEqual(9)
    expect(await page.locator('.old').first().textContent()).toBe('From your earlier answers.')
    expect(await status(page)).toBe('One answer can’t be used. The plan shown is from your earlier answers.')
    await answer(page, 'circuit.supplyV', '12 V')
    expect(await old(page)).toBe(0)
    expect(await problem(page, 'circuit.supplyV')).toBe('')
    expect(await page.getAttribute('[name="circuit.supplyV"]', 'aria-invalid')).toBeNull()
  })

  it.each([
    ['damage.fromTerminationMm', '4000 in', 'Read 4000 in. Allowed: from 0 in to 3937.01 in. For example 0.984 in.'],
    ['damage.fromTerminationMm', '400 ft', 'Read 400 ft. Allowed: from 0 ft to 328.084 ft. For example 0.082 ft.'],
    ['surroundings.ambientC', '500 °F', 'Read 500 °F. Allowed: from -76 °F to 392 °F. For example 68 °F.'],
    ['surroundings.ambientC', '500', 'Read 500 °C. Allowed: from -60 °C to 200 °C. For example 20 °C.'],
    ['circuit.supplyV', '0 mV', 'Read 0 mV. Allowed: from 1 mV to 1000000 mV. For example 12000 mV.'],
    ['circuit.supplyV', 'twelve', 'Read “twelve”: no number at its start. Allowed: from 0.001 V to 1000 V. For example 12 V.'],
    [
      'damage.slackMm',
      '1,234',
      'Read “1,234”: the comma could be a decimal sign or part thousands: 1.234 or 1234. Allowed: from 0 mm to 100000 mm. For example 40 mm.',
    ],
    ['wire.strandCount', '7.5', 'Read 7.5. Allowed: a whole number from 1 to 10000. For example 19.'],
    ['wire.size', 'thick', 'Read thick. Allowed: "18 AWG", "2/0", "1.5 mm²", "7/0.3 mm" or "19 x 32 AWG". For example 18 AWG.'],
    ['surroundings.hottestC', '10', 'Read 10 °C. Allowed: at least air now, 18 °C. For example 18 °C.'],
    ['wire.bundleOutsideMm', '0.02 in', ''],
    ['wire.outsideDiameterMm', '1', 'Read 1 mm. Allowed: at least 2.47 mm: the metal and twice the insulation. For example 2.67 mm.'],
    ['wire.strandDiameterMm', '0.2', "Read 0.2 mm. Allowed: from 0.257 to 0.341 mm: so thick, 19 strands make the wire's 1.31 mm². For example 0.296 mm."],
  ])('%s = "%s"', async (name, text, words) => {
    await fillIn(page, 'bilge-pump-feed')
    for (const details of await page.locator('details:has([name])').all()) await details.evaluate((node) => node.setAttribute('open', ''))
    await answer(page, name, text)
    expect(await problem(page, name)).toBe(words)
  })

  it('is not told in the middle of a word, nor where nothing was touched', async () => {
    await emptied()
    expect(await page.locator('.problem:visible').count()).toBe(0)
    await page.locator('[name="circuit.supplyV"]').pressSequentially('12 vol')
    await page.waitForTimeout(400)
    expect(await page.locator('.problem:visible').count()).toBe(0)
  })

  it('of two that exclude one another names both', async () => {
    await fillIn(page, 'bilge-pump-feed')
    await answer(page, 'load.powerW', '50')
    expect(await problem(page, 'load.powerW')).toBe(
      'Read both load current and load power. Allowed: one of load current or load power or load resistance. For example empty this field, and leave load current.',
    )
  })
})

describe('answers', () => {
  it.each([
    ['damage.fromTerminationMm', '1 1/2 in', '38.1 mm'],
    ['damage.fromTerminationMm', '2.5 cm', '25 mm'],
    ['surroundings.ambientC', '68 F', '20 °C'],
    ['wire.size', '7/0.3 mm', '0.4948 mm²'],
    ['load.currentA', '350 mA', '350 mA'],
    ['wire.outLengthM', '12 ft 6 in', '3.81 m'],
  ])('%s: "%s" is heard as %s', async (name, text, words) => {
    await emptied()
    await answer(page, name, text)
    expect(await heard(page, name)).toBe(words)
  })

  it('in inch give the same plan as in metric, and the plan speaks inch on request', async () => {
    await fillIn(page, 'bilge-pump-feed')
    const metric = await page.textContent('[data-section="cut-back"]')
    await answer(page, 'damage.slackMm', `${45 / 25.4} in`)
    expect(await page.textContent('[data-section="cut-back"]')).toBe(metric)
    await page.check('[name="units"][value="both"]')
    await settled(page)
    expect(await page.textContent('[data-section="cut-back"]')).toMatch(/70(?:\.0)? mm \(2\.76 in\)/)
    await page.check('[name="units"][value="inch"]')
    await settled(page)
    const inch = (await page.textContent('[data-section="cut-back"]')) ?? ''
    expect(inch).toContain('2.76 in')
    expect(inch.replace(/What this rests on.*/s, '')).not.toMatch(/\d mm\b/)
  })

  it('that end the wire: a refused circuit has no plan below it, even before the rest is answered', async () => {
    await emptied()
    await page.selectOption('[name="circuit.kind"]', 'airbag')
    await answer(page, 'circuit.supplyV', '12')
    expect(await status(page)).toBe('Verdict: refused. The wire ends.')
    expect(await page.getAttribute('[data-before]', 'data-verdict')).toBe('refused')
    expect(await page.textContent('[data-cautions]')).toContain('Airbag')
    expect(await page.locator('.planned:visible, [data-group="damage"]:visible').count()).toBe(0)
    await page.selectOption('[name="circuit.kind"]', 'motor')
    await settled(page)
    expect(await page.locator('[data-group="damage"]').isVisible()).toBe(true)
    expect(await status(page)).toContain('still missing')
    await fillIn(page, 'bilge-pump-feed')
    await answer(page, 'circuit.supplyV', '230')
    expect(await status(page)).toBe('Verdict: refused. The wire ends.')
    expect(await page.locator('.planned:visible').count()).toBe(0)
  })

  it('left open are assumed where they act, and the assumption leads to its field', async () => {
    await fillIn(page, 'trailer-tail-lamp')
    const job = demoJobs['trailer-tail-lamp'] as NonNullable<(typeof demoJobs)['trailer-tail-lamp']>
    const assumed = planRepair(job).assumptions.filter((item) => item.field === 'wire.standard' || item.field.startsWith('wire.'))
    expect(await page.locator('[data-assumed="wire"] li').count()).toBe(assumed.length)
    await page.click('[data-act="forget"]')
    await fillIn(page, 'bilge-pump-feed')
    await page.click('[data-goto="wire.loadedInBundle"]')
    expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).name)).toBe('wire.loadedInBundle')
    await page.keyboard.type('3')
    await page.keyboard.press('Enter')
    expect(await page.locator('[data-goto="wire.loadedInBundle"]').count()).toBe(0)
  })

  it('in a list are added and taken out, and those behind move up', async () => {
    await fillIn(page, 'bilge-pump-feed')
    await page.click('[data-remove="readings"] >> nth=0')
    expect(await page.locator('[data-list="readings"] > *').count()).toBe(1)
    expect(await page.inputValue('[name="readings.0.value"]')).toBe('1.9')
    expect(await page.textContent('[id="ask-readings.0.value-unit"]')).toBe('V')
    expect(await status(page)).toMatch(/^Verdict/)
    await page.click('[data-add="readings"]')
    expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).name)).toBe('readings.1.kind')
    expect(await status(page)).toContain('still missing')
    expect(await old(page)).toBeGreaterThan(0)
  })
})

describe('the way on', () => {
  it('leads past the field just typed in, however soon after the last key it is taken', async () => {
    const { page } = await served.open()
    await page.selectOption('[name="circuit.kind"]', 'motor')
    await page.fill('[name="circuit.supplyV"]', '12')
    await page.locator('[name="circuit.supplyV"]').blur()
    await settled(page)
    await page.check('[name="damage.kind"][value="broken"]')
    for (const [name, text] of [
      ['damage.fromTerminationMm', '200'],
      ['damage.slackMm', '60'],
    ] as const) {
      await page.click('[data-next] button')
      expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).name)).toBe(name)
      await page.keyboard.type(text)
    }
    await page.click('[data-next] button')
    expect(await page.inputValue('[name="damage.fromTerminationMm"]')).toBe('200')
    expect(await page.inputValue('[name="damage.slackMm"]')).toBe('60')
    expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).name)).toBe('wire.size')
    await page.context().close()
  })
})
