import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { forms, judge, makeSheet, readCode, taskMarks } from '../../site/src/learn/lesson/sheets.ts'
import { axeFindings } from './accessibility.ts'
import { type BuiltSite, builtSite, type Opened } from './builtSite.ts'
import { printedPages, sideways, smallestPrintedPt, textOf } from './learnPage.ts'
import { everyLesson, pathOf, plain } from './lessonPages.ts'

let site: BuiltSite
beforeAll(async () => {
  site = await builtSite()
})
afterAll(() => site.close())

describe.each(everyLesson)('%s on paper', (id, lesson) => {
  it.each([
    ['handout/', 2],
    ['notes/', 2],
    ['sheets/', 2 * forms.length],
  ] as const)('%s: at 320 px nothing to the side, axe finds nothing, licence and citation; at most %i pages without navigation', async (paper, most) => {
    const { page, context, faults } = await site.open(pathOf(id, paper), { viewport: { width: 320, height: 800 }, bypassCSP: true })
    expect(await sideways(page)).toBeLessThanOrEqual(0)
    expect(await axeFindings(page)).toEqual([])
    // Colours are those of all lessons: the first one shows them.
    if (lesson.number === 1) {
      await page.emulateMedia({ colorScheme: 'dark' })
      expect(await axeFindings(page, 'colours')).toEqual([])
    }
    expect(await textOf(page, '.licence')).toContain(plain(`CC BY-SA 4.0). Cite as: Strandwise, lesson ${lesson.number}, “${lesson.question}”`))
    await page.emulateMedia({ colorScheme: 'light', media: 'print' })
    expect(await page.locator('nav:visible, a:visible, button:visible').count()).toBe(0)
    expect(await smallestPrintedPt(page)).toBeGreaterThanOrEqual(8)
    const pages = await printedPages(page)
    if (paper === 'sheets/') expect(pages).toBe(most)
    else expect(pages).toBeLessThanOrEqual(most)
    if (paper === 'handout/') {
      const text = await textOf(page, 'main')
      expect(await page.locator('.keep .blank').count()).toBeGreaterThanOrEqual(lesson.steps.length)
      for (const { see } of lesson.steps) expect(text).not.toContain(plain(see.short))
      for (const caution of lesson.cautions) expect(text).toContain(plain(caution.text))
      for (const step of lesson.measurement.steps) expect(text).toContain(plain(step))
    }
    expect(faults).toEqual([])
    await context.close()
  })

  describe('its sheets on the page', () => {
    let opened: Opened
    const code = `${lesson.number}B-0042`
    beforeAll(async () => {
      opened = await site.open(`${pathOf(id, 'sheets/')}#code=${code}`)
    })
    afterAll(() => opened.context.close())

    it('a code makes the same sheet again, on the page as in the test; the page carries it', async () => {
      const { page } = opened
      await page.waitForFunction((shown) => document.querySelector('[data-sheet="B"]')?.textContent?.includes(shown), code)
      const sheet = makeSheet(lesson.sheets, lesson.number, 'B', 42)
      const shown = await textOf(page, '[data-place="B-false"]')
      for (const { given, tasks } of sheet.problems) for (const words of [given, ...tasks.map(({ ask }) => ask)]) expect(shown).toContain(plain(words))
      await page.click('[data-next]')
      await page.waitForFunction(() => location.hash.endsWith('A-0043'))
      expect(await textOf(page, '[data-place="B-false"]')).not.toBe(shown)
    })

    it('a code that is none is told, and the sheets stay', async () => {
      const { page, faults } = opened
      const before = await textOf(page, '[data-place="A-false"]')
      for (const typed of ['', '0', '10000', 'seven', `${lesson.number}D-0001`, `${lesson.number + 1}A-0001`]) {
        await page.fill('#code', typed)
        await page.keyboard.press('Enter')
        expect(await textOf(page, '#code-said'), typed).toMatch(/^Read: .*Allowed: .*For example: .*The sheets below are as they were\.$/)
        expect(await textOf(page, '[data-place="A-false"]')).toBe(before)
      }
      expect(faults).toEqual([])
    })

    it('tells a pupil’s result apart', async () => {
      const { page } = opened
      const [task] = makeSheet(lesson.sheets, lesson.number, 'A', 43).problems[0]?.tasks ?? []
      const field = page.locator('[data-task="A-0-0"] input')
      const said = page.locator('[data-task="A-0-0"] output')
      await field.fill(task?.answer.toPrecision(3) ?? '')
      await field.press('Tab')
      await expect.poll(() => said.textContent()).toMatch(/^Right: 2 of 2/)
      const usual = task?.usual.find(({ value }) => Math.abs(value / task.answer - 1) > 0.02)
      await field.fill(String(usual?.value))
      await field.press('Tab')
      await expect.poll(() => said.textContent()).toContain(usual?.says)
    })
  })

  it('no answer of a sheet can be copied from its other problem', () => {
    for (let seed = 1; seed <= 100; seed++) {
      const [first, second] = makeSheet(lesson.sheets, lesson.number, 'B', seed).problems
      for (const [index, task] of (first?.tasks ?? []).entries()) expect(second?.tasks[index]?.answer, `${seed}: ${task.ask}`).not.toBe(task.answer)
    }
  })

  it('right and usual wrong results are told apart, with their marks, on sheets of a hundred codes', () => {
    for (let seed = 1; seed <= 100; seed++)
      for (const form of forms)
        for (const { tasks } of makeSheet(lesson.sheets, lesson.number, form, seed).problems)
          for (const task of tasks) {
            const where = `${form} ${seed}: ${task.ask}`
            expect(Number.isFinite(task.answer) && task.answer !== 0, where).toBe(true)
            expect(judge(task, task.answer.toPrecision(3)).marks, where).toBe(taskMarks)
            expect(task.usual.length, where).toBeGreaterThanOrEqual(1)
            for (const { value, marks, says } of task.usual) {
              expect(marks).toBeLessThan(taskMarks)
              const found = judge(task, value.toPrecision(4))
              // If a mistake happens to give the right number, it may be marked right.
              if (Math.abs(value / task.answer - 1) > 0.02) expect(found.marks, `${where}: ${says}`).not.toBe(taskMarks)
              expect(found.marks, `${where}: ${says}`).not.toBeNull()
            }
            expect(judge(task, String(task.answer * 7.77)).marks, where).toBeNull()
          }
  })
})

it.each(['%', '%E0%A4%A', 'seven', '1B-'])('a link with the code %s is told in words, and the sheets stay', async (code) => {
  const [[id, lesson] = ['', undefined]] = everyLesson
  const { page, context, faults } = await site.open(`${pathOf(id, 'sheets/')}#code=${code}`)
  await expect.poll(() => textOf(page, '#code-said')).toMatch(/^Read: “.+”\. Allowed: the code printed on a sheet/)
  expect(await textOf(page, '[data-sheet="A"]')).toContain(`${lesson?.number}A-0001`)
  expect(faults).toEqual([])
  await context.close()
})

it('sheets and answers print apart, each on a page of its own', async () => {
  const [[id] = ['']] = everyLesson
  const { page, context } = await site.open(pathOf(id, 'sheets/'))
  for (const which of ['sheets', 'answers']) {
    await page.evaluate((value) => {
      document.documentElement.dataset.printing = value
    }, which)
    expect(await printedPages(page)).toBe(forms.length)
  }
  await context.close()
})

it('a code alone says which lesson it belongs to', () => {
  expect(readCode('2C-0007', 2)).toEqual({ seed: 7 })
  expect(readCode('7', 2)).toEqual({ seed: 7 })
  expect(readCode('2C-0007', 3)).toMatchObject({ said: expect.stringMatching(/sheet C of lesson 2\. This is lesson 3/) })
})
