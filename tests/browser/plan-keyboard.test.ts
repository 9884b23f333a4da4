import { demoJobs, planRepair } from '@strandwise/planner'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Answers } from '../../site/src/plan/answers.ts'
import { answersFrom } from '../../site/src/plan/answersFrom.ts'
import { withPlaces } from '../../site/src/plan/places.ts'
import { neededAnswers } from './neededAnswers.ts'
import { answer, planStands, type Site, site, verdictsOn } from './planPage.ts'

let served: Site
beforeAll(async () => {
  served = await site()
})
afterAll(() => served.close())

interface Focus {
  readonly name: string
  readonly kind: string
  readonly value: string
  /** Names of the fields inside a closed "more". */
  readonly inside: readonly string[]
  readonly adds: string
  readonly place: string
  readonly options: readonly string[]
}

const focus = (page: Page): Promise<Focus> =>
  page.evaluate(() => {
    const node = document.activeElement as HTMLElement
    const control = node instanceof HTMLInputElement || node instanceof HTMLSelectElement ? node : null
    const details = node.tagName === 'SUMMARY' ? (node.parentElement as HTMLDetailsElement) : null
    const names = [...(details?.querySelectorAll<HTMLInputElement>('[name]') ?? [])].map((inside) => inside.name)
    return {
      name: control?.name ?? '',
      kind: control instanceof HTMLSelectElement ? 'list' : (control?.type ?? ''),
      value: control?.value ?? '',
      inside: details?.open === false ? names : [],
      adds: node.dataset.add ?? '',
      place: node.dataset.place ?? '',
      options: node instanceof HTMLSelectElement ? [...node.options].map((option) => option.value) : [],
    }
  })

/** Fills the form by keyboard only, top to bottom, and counts the keys. */
async function fillByKeys(page: Page, wanted: Answers): Promise<number> {
  let keys = 0
  const press = async (key: string, times = 1) => {
    for (let time = 0; time < times; time += 1) await page.keyboard.press(key)
    keys += times
  }
  const type = async (text: string) => {
    await page.keyboard.type(text)
    keys += text.length
  }
  const added: Record<string, number> = {}
  let inEntry = false
  for (let stop = 0; stop < 400; stop += 1) {
    // Adding an entry focuses its first field by itself.
    if (!inEntry) await press('Tab')
    inEntry = false
    const at = await focus(page)
    const text = wanted[at.name] ?? ''
    if (at.name === 'title') {
      await type(text)
      await press('Tab')
      return keys
    }
    const reading = added.readings ?? 0
    const ends = [wanted[`readings.${reading}.from`] ?? '', wanted[`readings.${reading}.to`] ?? '']
    if (at.place !== '' && reading < Number(wanted.readings ?? 0) && ends.includes(at.place)) {
      await press('Enter')
      // The second place opens the reading and focuses its value; the keys back up to the next reading's places are counted.
      if (at.place !== ends[1]) continue
      added.readings = reading + 1
      if (added.readings < Number(wanted.readings ?? 0)) {
        while ((await focus(page)).place !== wanted[`readings.${reading + 1}.from`]) await press('Shift+Tab')
        await press('Enter')
        while ((await focus(page)).place !== wanted[`readings.${reading + 1}.to`]) await press('Tab')
        await press('Enter')
        added.readings += 1
        while ((await focus(page)).name !== 'readings.0.value') await press('Shift+Tab')
      }
      inEntry = true
    } else if (at.adds !== '' && (added[at.adds] ?? 0) < Number(wanted[at.adds] ?? 0)) {
      added[at.adds] = (added[at.adds] ?? 0) + 1
      await press('Enter')
      inEntry = true
    } else if (at.inside.some((name) => (wanted[name] ?? '') !== '')) await press('Enter')
    else if (text === '') continue
    else if (at.kind === 'text') await type(text)
    else if (at.kind === 'list') {
      const down = at.options.indexOf(text) - at.options.indexOf(at.value)
      await press(down > 0 ? 'ArrowDown' : 'ArrowUp', Math.abs(down))
    } else if (at.kind === 'checkbox' && text.split(',').includes(at.value)) await press('Space')
    else if (at.kind === 'radio') {
      // Arrow keys select while moving; with nothing selected, the space bar selects the first.
      for (let turn = 0; turn < 12; turn += 1) {
        const now = await page.evaluate(() => {
          const { value, checked } = document.activeElement as HTMLInputElement
          return { value, checked }
        })
        if (now.value === text && now.checked) break
        await press(now.value === text ? 'Space' : 'ArrowRight')
      }
    }
  }
  throw new Error('the foot of the form was not reached')
}

/** Hundreds of keys, each a message to the browser. */
const longMs = 180_000

describe('the demo repair by keyboard alone', { timeout: longMs }, () => {
  it('at 390 px gives the command’s plan, and how many keys it takes is told', async () => {
    const job = demoJobs['bilge-pump-feed'] as NonNullable<(typeof demoJobs)['bilge-pump-feed']>
    const { page, faults } = await served.open()
    const keys = await fillByKeys(page, answersFrom(job))
    const plan = planRepair(job)
    await planStands(page)
    expect(await page.textContent('[data-plan] .says')).toBe(plan.decision.says)
    expect(await verdictsOn(page)).toEqual(plan.sections.map((section) => section.verdict))
    const printed = await page.locator('[data-section] .findings > li').allTextContents()
    expect(printed).toEqual(plan.sections.flatMap((section) => section.findings.map(({ text }) => withPlaces(text))))
    expect(faults).toEqual([])
    // Every answer of the demo, each letter counted: a ceiling that detects a longer path.
    expect(keys).toBeLessThanOrEqual(460)
    await page.context().close()
  })

  it('a first plan of the needed answers alone takes far fewer keys', async () => {
    const { page } = await served.open()
    const keys = await fillByKeys(page, neededAnswers)
    await planStands(page)
    expect(keys).toBeLessThanOrEqual(80)
    await page.context().close()
  })

  it('undo and redo go by keys and by buttons, and half-typed text is the browser’s own', async () => {
    const { page } = await served.open()
    const field = page.locator('[name="circuit.supplyV"]')
    await field.fill('12')
    await field.press('Enter')
    await field.fill('24')
    await field.press('Enter')
    await page.keyboard.press('Control+z')
    expect(await field.inputValue()).toBe('12')
    await page.keyboard.press('Control+z')
    expect(await field.inputValue()).toBe('')
    await page.keyboard.press('Control+Shift+z')
    expect(await field.inputValue()).toBe('12')
    await page.keyboard.press('Control+y')
    expect(await field.inputValue()).toBe('24')
    await page.click('[data-act="undo"]')
    expect(await field.inputValue()).toBe('12')
    await page.click('[data-act="redo"]')
    expect(await field.inputValue()).toBe('24')
    expect(await page.locator('[data-act="redo"]').isDisabled()).toBe(true)
    await field.focus()
    await page.keyboard.press('End')
    await page.keyboard.type('7')
    await page.keyboard.press('Control+z')
    expect(await field.inputValue()).toBe('24')
    await page.context().close()
  })

  it('an example filled in is one step back', async () => {
    const { page } = await served.open()
    await answer(page, 'circuit.supplyV', '24')
    await page.click('[data-act="example"]')
    await planStands(page)
    expect(await page.inputValue('[name="circuit.supplyV"]')).toBe('12')
    await page.click('[data-act="undo"]')
    expect(await page.inputValue('[name="circuit.supplyV"]')).toBe('24')
    expect(await page.locator('[data-list="readings"] > *').count()).toBe(0)
    await page.click('[data-act="redo"]')
    expect(await page.locator('[data-list="readings"] > *').count()).toBe(2)
    await page.context().close()
  })
})

it('Enter in the last answer leads to the button that shows the plan', async () => {
  const { page } = await served.open()
  for (const [name, text] of Object.entries(neededAnswers)) {
    const control = page.locator(`[name="${name}"]`).first()
    if (name === 'damage.kind') await page.locator(`[name="${name}"][value="${text}"]`).check({ force: true })
    else if (await control.evaluate((node) => node instanceof HTMLSelectElement)) await control.selectOption(text)
    else await control.fill(text)
  }
  await page.locator('[name="load.currentA"]').press('Enter')
  await page.waitForFunction(() => (document.activeElement as HTMLElement).dataset.act === 'see-plan')
  await page.keyboard.press('Enter')
  expect(await page.getAttribute('repair-plan', 'data-view')).toBe('plan')
  await page.context().close()
})
