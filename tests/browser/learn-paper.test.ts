import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { forms, judge, makeSheet, readCode, taskMarks } from '../../site/src/learn/lesson/sheets.ts'
import { axeFindings } from './accessibility.ts'
import { type BuiltSite, builtSite } from './builtSite.ts'
import { printedPages, sideways, textOf } from './learnPage.ts'
import { everyLesson, pathOf } from './lessonPages.ts'

let site: BuiltSite
beforeAll(async () => {
  site = await builtSite()
})
afterAll(() => site.close())

async function printedAs(page: Page, which: string): Promise<number> {
  await page.evaluate((value) => {
    document.documentElement.dataset.printing = value
  }, which)
  return printedPages(page)
}

describe.each(everyLesson)('%s on paper', (id, lesson) => {
  it('the handout fits two pages, notes two, a sheet one, answers one; no navigation among them', async () => {
    const handout = await site.open(pathOf(id, 'handout/'))
    expect(await printedPages(handout.page)).toBeLessThanOrEqual(2)
    await handout.page.emulateMedia({ media: 'print' })
    expect(await handout.page.locator('nav:visible, a:visible, button:visible').count()).toBe(0)
    expect(await handout.page.locator('.keep .blank').count()).toBeGreaterThanOrEqual(lesson.steps.length)
    for (const { see } of lesson.steps) expect(await textOf(handout.page, 'main')).not.toContain(see.short)
    await handout.context.close()
    const notes = await site.open(pathOf(id, 'notes/'))
    expect(await printedPages(notes.page)).toBeLessThanOrEqual(2)
    await notes.context.close()
    const sheets = await site.open(pathOf(id, 'sheets/'))
    expect(await printedPages(sheets.page)).toBe(2 * forms.length)
    expect(await printedAs(sheets.page, 'sheets')).toBe(forms.length)
    expect(await printedAs(sheets.page, 'answers')).toBe(forms.length)
    await sheets.context.close()
  })

  it.each(['handout/', 'notes/', 'sheets/'])('%s at 320 px: nothing to the side, axe finds nothing, licence and citation', async (paper) => {
    const { page, context, faults } = await site.open(pathOf(id, paper), { viewport: { width: 320, height: 800 }, bypassCSP: true })
    expect(await sideways(page)).toBeLessThanOrEqual(0)
    expect(await axeFindings(page)).toEqual([])
    expect(await textOf(page, '.licence')).toContain(`CC BY-SA 4.0). Cite as: Strandwise, lesson ${lesson.number}, “${lesson.question}”`)
    expect(faults).toEqual([])
    await context.close()
  })

  it('a code makes the same sheet again, on the page as in the test; the page carries it', async () => {
    const code = `${lesson.number}B-0042`
    const { page, context } = await site.open(`${pathOf(id, 'sheets/')}#code=${code}`)
    await page.waitForFunction((shown) => document.querySelector('[data-sheet="B"]')?.textContent?.includes(shown), code)
    const sheet = makeSheet(lesson.sheets, lesson.number, 'B', 42)
    const shown = await textOf(page, '[data-place="B-false"]')
    for (const { given, tasks } of sheet.problems) for (const words of [given, ...tasks.map(({ ask }) => ask)]) expect(shown).toContain(words)
    await page.click('[data-next]')
    await page.waitForFunction(() => location.hash.endsWith('A-0043'))
    expect(await textOf(page, '[data-place="B-false"]')).not.toBe(shown)
    await context.close()
  })

  it('a code that is none is told, and the sheets stay', async () => {
    const { page, context, faults } = await site.open(pathOf(id, 'sheets/'))
    const before = await textOf(page, '[data-place="A-false"]')
    for (const typed of ['', '0', '10000', 'seven', `${lesson.number}D-0001`, `${lesson.number + 1}A-0001`]) {
      await page.fill('#code', typed)
      await page.click('.choose button[type="submit"]')
      expect(await textOf(page, '#code-said'), typed).toMatch(/^Read: .*Allowed: .*For example: .*The sheets below are as they were\.$/)
      expect(await textOf(page, '[data-place="A-false"]')).toBe(before)
    }
    expect(faults).toEqual([])
    await context.close()
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

  it('tells a pupil’s result apart on the page', async () => {
    const { page, context } = await site.open(pathOf(id, 'sheets/'))
    const [task] = makeSheet(lesson.sheets, lesson.number, 'A', 1).problems[0]?.tasks ?? []
    const field = page.locator('[data-task="A-0-0"] input')
    const said = page.locator('[data-task="A-0-0"] output')
    await field.fill(task?.answer.toPrecision(3) ?? '')
    await field.press('Tab')
    await expect.poll(() => said.textContent()).toMatch(/^Right: 2 of 2/)
    await field.fill(String(task?.usual[0]?.value))
    await field.press('Tab')
    await expect.poll(() => said.textContent()).toContain(task?.usual[0]?.says)
    await context.close()
  })
})

it('a code alone says which lesson it belongs to', () => {
  expect(readCode('2C-0007', 2)).toEqual({ seed: 7 })
  expect(readCode('7', 2)).toEqual({ seed: 7 })
  expect(readCode('2C-0007', 3)).toMatchObject({ said: expect.stringMatching(/sheet C of lesson 2\. This is lesson 3/) })
})
