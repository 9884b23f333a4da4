import { demoJobs, planRepair } from '@strandwise/planner'
import type { Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { neededAnswers } from './neededAnswers.ts'
import { answer, fillIn, planStands, type Site, seeAnswers, seePlan, settled, site, status, verdictsOn } from './planPage.ts'

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

async function emptied(): Promise<void> {
  await seeAnswers(page)
  await page.click('[data-act="forget"]')
  await page.check('[name="units"][value="metric"]')
}

const problem = async (page: Page, name: string) => (await page.textContent(`[id="ask-${name}-problem"]`)) ?? ''
const heard = async (page: Page, name: string) => (await page.textContent(`[id="ask-${name}-heard"]`)) ?? ''
const old = (page: Page) => page.locator('[data-plan][data-old]').count()

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
    expect(await old(page)).toBe(1)
    expect(await page.locator('[data-old-note]').textContent()).toBe('From your earlier answers.')
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
      'Read “1,234”: the comma could be a decimal sign or part thousands: 1.234 or 1234. Allowed: from 0 mm to 10000 mm. For example 40 mm.',
    ],
    ['wire.strandCount', '7.5', 'Read 7.5. Allowed: a whole number from 1 to 10000. For example 19.'],
    ['surroundings.hottestC', '10', 'Read 10 °C. Allowed: at least air now, 18 °C. For example 18 °C.'],
    ['wire.bundleOutsideMm', '0.02 in', ''],
    ['wire.outsideDiameterMm', '1', 'Read 1 mm. Allowed: at least 2.47 mm: the metal and twice the insulation. For example 2.67 mm.'],
    ['wire.strandDiameterMm', '0.2', "Read 0.2 mm. Allowed: from 0.257 to 0.341 mm: so thick, 19 strands make the wire's 1.31 mm². For example 0.296 mm."],
  ])('%s = "%s"', async (name, text, words) => {
    await fillIn(page, 'bilge-pump-feed')
    for (const details of await page.locator('form details').all()) await details.evaluate((node) => node.setAttribute('open', ''))
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
    const steps = () => page.textContent('[data-block="steps"]')
    const metric = await steps()
    await answer(page, 'damage.fromTerminationMm', `${25 / 25.4} in`)
    await planStands(page)
    expect(await steps()).toBe(metric)
    await page.check('[name="units"][value="both"]')
    await settled(page)
    expect(await steps()).toMatch(/\d mm \([\d./ ]+ in\)/)
    await page.check('[name="units"][value="inch"]')
    await settled(page)
    expect(await steps()).toMatch(/\d in\b/)
    expect(await steps()).not.toMatch(/\d mm\b/)
  })

  it('that end the wire: a refused circuit has a card that says so, even before the rest is answered', async () => {
    await emptied()
    await page.selectOption('[name="circuit.kind"]', 'airbag')
    await answer(page, 'circuit.supplyV', '12')
    expect(await status(page)).toBe('Refused: the wire ends here.')
    expect(await page.textContent('[data-block="card"]')).toContain('irbag')
    expect(await page.locator('[data-plan] [data-section], [data-block="steps"] li').count()).toBe(0)
    await page.selectOption('[name="circuit.kind"]', 'motor')
    await settled(page)
    expect(await status(page)).toContain('answers to go')
    expect(await page.locator('[data-block="card"] *').count()).toBe(0)
    await fillIn(page, 'bilge-pump-feed')
    await answer(page, 'circuit.supplyV', '230')
    expect(await status(page)).toBe('Refused: the wire ends here.')
  })

  it('left open are assumed where they act, and the assumption leads to its field', async () => {
    await fillIn(page, 'trailer-tail-lamp')
    const job = demoJobs['trailer-tail-lamp'] as NonNullable<(typeof demoJobs)['trailer-tail-lamp']>
    const assumed = planRepair(job).assumptions.filter((item) => item.field.startsWith('wire.'))
    expect(assumed.length).toBeGreaterThan(0)
    expect(await page.locator('[data-assumed="wire"] li').count()).toBe(assumed.length)
    const button = page.locator('[data-assumed="wire"] [data-goto]').first()
    const path = await button.getAttribute('data-goto')
    await button.click()
    expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).name)).toBe(path)
  })

  it('in a list are added and taken out, and those behind move up', async () => {
    await fillIn(page, 'bilge-pump-feed')
    await page.click('[data-remove="readings"] >> nth=0')
    expect(await page.locator('[data-list="readings"] > *').count()).toBe(1)
    expect(await page.inputValue('[name="readings.0.value"]')).toBe('1.9')
    expect(await page.textContent('[id="ask-readings.0.value-unit"]')).toBe('V')
    await planStands(page)
    if ((await page.getAttribute('[data-group="tools"]', 'open')) === null) await page.locator('[data-group="tools"] > summary').click()
    await page.click('[data-add="tools"]')
    expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).name)).toMatch(/^tools\.1\./)
    await settled(page)
    expect(await status(page)).toContain('to go')
    expect(await old(page)).toBe(1)
  })
})

describe('the size of a wire', () => {
  it.each([
    ['18 AWG', '0.823 mm²'],
    ['1.5', '1.5 mm²'],
    ['1,5', '1.5 mm²'],
    ['2.5 mm²', ''],
    ['7/0.3 mm', '0.4948 mm²'],
    ['18', '0.823 mm²'],
    ['35', ''],
  ])('“%s” is one answer', async (text, words) => {
    await emptied()
    await answer(page, 'wire.size', text)
    expect(await problem(page, 'wire.size')).toBe('')
    if (words !== '') expect(await heard(page, 'wire.size')).toBe(words)
  })

  it.each([
    ['thick', 'Read “thick”.'],
    ['6', 'Read “6”: 6 mm² or 6 AWG.'],
    ['0.0001', 'Read “0.0001”.'],
    ['99 AWG', 'Read “99 AWG”.'],
    ['300000', 'Read “300000”.'],
  ])('“%s” is refused where it is typed, though nothing else is answered', async (text, words) => {
    await emptied()
    await answer(page, 'wire.size', text)
    expect(await problem(page, 'wire.size')).toContain(words)
    expect(await problem(page, 'wire.size')).toMatch(/Allowed: .+ For example /)
    expect(await status(page)).toContain('can’t be used')
  })
})

describe('the way on', () => {
  it('leads past the field just typed in, however soon after the last key it is taken', async () => {
    const { page } = await served.open()
    await page.check('[name="damage.kind"][value="broken"]')
    for (const [name, text] of [
      ['damage.fromTerminationMm', '200'],
      ['wire.size', '1.5'],
    ] as const) {
      await page.click('[data-next] button')
      expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).name)).toBe(name)
      await page.keyboard.type(text)
    }
    await page.click('[data-next] button')
    expect(await page.inputValue('[name="damage.fromTerminationMm"]')).toBe('200')
    expect(await page.inputValue('[name="wire.size"]')).toBe('1.5')
    expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).name)).toBe('wire.insulation')
    await page.context().close()
  })

  it('follows the wire: eight answers, in the order of the page, and the plan is there', async () => {
    const { page } = await served.open()
    const order: string[] = []
    for (let count = 0; count < Object.keys(neededAnswers).length; count += 1) {
      await page.click('[data-next] button')
      const name = await page.evaluate(() => (document.activeElement as HTMLInputElement).name)
      order.push(name)
      const text = neededAnswers[name] ?? ''
      const kind = await page.evaluate(() => document.activeElement?.tagName === 'SELECT' || (document.activeElement as HTMLInputElement).type)
      if (kind === true) await page.selectOption(`[name="${name}"]`, text)
      else if (kind === 'radio') await page.check(`[name="${name}"][value="${text}"]`)
      else await page.keyboard.type(text)
    }
    expect(order).toEqual(Object.keys(neededAnswers))
    await page.locator('h1').click()
    await planStands(page)
    await seePlan(page)
    expect(await page.locator('[data-plan] .decision .says').isVisible()).toBe(true)
    await page.context().close()
  })
})
