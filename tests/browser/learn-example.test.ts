import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import ts from 'typescript'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { readReferences } from '../../references/count/readReferences.ts'
import { axeFindings } from './accessibility.ts'
import { type BuiltSite, builtSite, type Opened } from './builtSite.ts'
import { sideways, textOf, valuesIn } from './learnPage.ts'
import { everyLesson, pathOf, plain } from './lessonPages.ts'

let site: BuiltSite
beforeAll(async () => {
  site = await builtSite()
})
afterAll(() => site.close())

/** Read once: it loads every reference. */
const published = readReferences().then((read) => read.map(({ reference }) => reference))
const scratch = fileURLToPath(new URL('../../node_modules/.cache/strandwise-lessons/', import.meta.url))

describe.each(everyLesson)('%s as a page', (id, lesson) => {
  let still: Opened
  beforeAll(async () => {
    still = await site.open(pathOf(id), { javaScriptEnabled: false })
  })
  afterAll(() => still.context.close())

  it('reads whole without script: each question, result, reason and mistake, the slider’s ends, nothing that waits for script', async () => {
    const { page } = still
    const whole = await textOf(page, '.lesson')
    const said = lesson.steps.flatMap((step) => [step.ask, step.see.short, ...step.why, ...step.options.map(({ text }) => text)])
    const wrong = lesson.steps.flatMap((step) => step.options.flatMap(({ reply }) => reply ?? []))
    const costs = lesson.mistakes.flatMap(({ done, costs, instead, value }) => [done, costs, instead, value.text])
    const { low, high } = lesson.whatIf.setting
    for (const words of [...said, ...wrong, ...costs, lesson.answer.short, lesson.whatIf.says(low), lesson.whatIf.says(high)])
      expect(whole).toContain(plain(words))
    expect(await page.locator('button:visible, input:visible').count()).toBe(0)
    expect(await page.locator('.lesson math').count()).toBeGreaterThan(3)
  })

  it('has one right answer to each question and a reply to each wrong one', () => {
    for (const { title, options, keep } of lesson.steps) {
      expect(
        options.filter(({ reply }) => reply === undefined),
        title,
      ).toHaveLength(1)
      expect(options.length, title).toBeGreaterThanOrEqual(3)
      expect(options.length, title).toBeLessThanOrEqual(4)
      expect(keep, title).toMatch(/\[\[.+?\]\]/)
    }
    expect(lesson.mistakes.length).toBeGreaterThanOrEqual(3)
    expect(lesson.measurement.high).toBeGreaterThan(lesson.measurement.low)
  })

  it('its code, as printed, runs and gives the numbers that it prints', async () => {
    const text = (await still.page.locator('#code pre').textContent()) ?? ''
    const printed = await valuesIn(still.page, '[data-prints]')
    mkdirSync(scratch, { recursive: true })
    const file = join(scratch, `${id}.mjs`)
    writeFileSync(file, ts.transpileModule(text, { compilerOptions: { module: ts.ModuleKind.ESNext, target: ts.ScriptTarget.ES2022 } }).outputText)
    const ran = (await import(/* @vite-ignore */ pathToFileURL(file).href)) as Readonly<Record<string, number>>
    expect(Object.keys(printed).length).toBeGreaterThanOrEqual(3)
    for (const [name, value] of Object.entries(printed)) expect(Number(ran[name]?.toPrecision(6)), name).toBe(Number(value))
  })

  it('its check cards print what the references print, and ours beside it', async () => {
    const { page } = still
    for (const [index, check] of lesson.checks.entries()) {
      const values = await valuesIn(page, `#check-${index + 1}`)
      expect(Object.keys(values)).toHaveLength(3)
      if (check.kind === 'derived') {
        // A value read off a curve is good to 2 %.
        expect(Math.abs(check.ours / check.theirs - 1)).toBeLessThan(check.readOff === true ? 0.02 : 0.01)
        continue
      }
      const found = (await published)
        .filter(({ source, clause }) => source.includes(check.source) && clause.includes(check.clause ?? ''))
        .flatMap((source) => source.cases.filter(({ title }) => title === check.title).map((item) => ({ source, item })))
      expect(found).toHaveLength(1)
      const [{ source, item } = {}] = found
      expect(item?.status ?? source?.status).toBe('published')
      expect(values.printed).toContain(item?.printed)
      expect(Number.parseFloat(values.ours?.replace('−', '-') ?? '')).toBeCloseTo(item?.got() ?? Number.NaN, 2)
      expect(await textOf(page, `#check-${index + 1}`)).toContain(source?.source)
    }
  })

  it('shows no result before it is opened; all of it open, at 320, 768 and 1920 px: nothing to the side, mathematics within its bars, words of drawings large enough; axe finds nothing in light and dark', async () => {
    const { page, context } = await site.open(pathOf(id), { bypassCSP: true })
    const read = await page.locator('main').ariaSnapshot()
    expect(read).toContain(lesson.steps[0]?.ask.slice(0, 30))
    for (const step of lesson.steps) {
      expect(read).not.toContain(step.see.short.slice(0, 30))
      expect(read).not.toContain(step.why[0]?.slice(0, 30))
    }
    for (const { costs } of lesson.mistakes) expect(read).not.toContain(costs)
    expect(await page.locator('[data-card="see"]:visible, [data-card="why"]:visible').count()).toBe(0)
    await page.$$eval('details', (all) => {
      for (const one of all) one.open = true
    })
    for (const [width, colorScheme] of [
      [320, 'light'],
      [768, 'dark'],
      [1920, null],
    ] as const) {
      await page.setViewportSize({ width, height: 900 })
      await page.emulateMedia({ colorScheme: colorScheme ?? 'light' })
      expect(await sideways(page), `${width} px`).toBeLessThanOrEqual(0)
      const wide = await page.$$eval('math', (all) => all.filter((math) => math.getBoundingClientRect().right > innerWidth).map((math) => math.textContent))
      expect(wide, `${width} px`).toEqual([])
      const small = await page.$$eval('.lesson .drawing .label', (labels) => Math.min(...labels.map((label) => label.getBoundingClientRect().height)))
      expect(small, `${width} px`).toBeGreaterThanOrEqual(11)
      // For axe, widths differ only in what a phone hides, schemes in colours.
      if (colorScheme !== null) expect(await axeFindings(page, colorScheme === 'dark' ? 'colours' : 'all'), colorScheme).toEqual([])
    }
    await context.close()
  })
})

it('the list shows of each lesson its question, a picture, the time and what is needed', async () => {
  const { page, context } = await site.open('examples/', { javaScriptEnabled: false })
  const items = await page.locator('.lesson-list > li').all()
  expect(items).toHaveLength(everyLesson.length)
  for (const [index, [id, lesson]] of everyLesson.entries()) {
    const item = items[index]
    expect(await item?.locator('a').getAttribute('href')).toContain(pathOf(id))
    expect((await item?.textContent())?.replace(/\s+/g, ' ')).toContain(lesson.question)
    expect((await item?.textContent())?.replace(/\s+/g, ' ')).toMatch(/About \d+ minutes\. Needs: .+\./)
    expect(await item?.locator('svg.drawing').count()).toBe(1)
  }
  await context.close()
})
