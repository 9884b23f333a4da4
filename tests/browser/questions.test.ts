import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { plainInputs } from '../../site/src/learn/question/plainInputs.ts'
import { type AskedField, isProblem, type Question, type QuestionModel } from '../../site/src/learn/question/question.ts'
import { readInputs, typedCase } from '../../site/src/learn/question/readInputs.ts'
import { workingsMarkup } from '../../site/src/learn/question/workingsMarkup.ts'
import { type BuiltSite, builtSite } from './builtSite.ts'
import { printedPages, sideways, textOf } from './learnPage.ts'

const asked = import.meta.glob<Readonly<Record<string, Question<unknown>>>>('../../site/src/learn/questions/*/question.ts', { eager: true })
const models = import.meta.glob<Readonly<Record<string, QuestionModel<never>>>>('../../site/src/learn/questions/*/answer.ts', { eager: true })

const questions = Object.entries(asked).flatMap(([path, module]) => {
  const model = Object.values(models[path.replace('question.ts', 'answer.ts')] ?? {})[0]
  return Object.values(module).map((question) => ({ id: question.id, question, model }))
})

/** Texts to try in a field: the ends of its range, values beyond, empty, and words. */
function texts(field: AskedField): readonly string[] {
  if (field.kind !== 'quantity') return field.choices.map(({ value }) => value)
  return [
    String(field.low),
    String(field.high),
    String((field.low + field.high) / 2),
    String(field.high + 1),
    String(field.low - 1),
    '',
    'abc',
    '1e308',
    '-5',
    '0',
  ]
}

it('twelve questions stand', () => {
  expect(questions.length).toBeGreaterThanOrEqual(12)
})

describe.each(questions)('$id', ({ id, question, model }) => {
  const fields = question.groups.flatMap((group) => group.fields)
  const answer = (typed: Readonly<Record<string, string>>) => {
    const read = readInputs(fields, typed)
    if (model === undefined) throw new Error(`${id} has no model`)
    return read.problems.length > 0 ? read.problems[0] : model.answer(read.inputs, question.facts as never)
  }

  it('whatever is typed into one field, there is an answer without a gap, or a refusal at a field', () => {
    for (const field of fields) {
      for (const text of texts(field)) {
        const outcome = answer({ ...typedCase(fields), [field.id]: text })
        const place = `${field.id} = ${text}`
        if (outcome === undefined) throw new Error(place)
        if (isProblem(outcome))
          expect(
            fields.map((one) => one.id),
            place,
          ).toContain(outcome.field)
        else {
          expect(JSON.stringify(outcome), place).not.toMatch(/NaN|Infinity|undefined/)
          expect(() => workingsMarkup(outcome.workings), place).not.toThrow()
        }
      }
    }
  })

  it('its sensible case has a drawing', () => {
    const outcome = answer(typedCase(fields))
    if (outcome === undefined || isProblem(outcome)) throw new Error(`${id} has no answer`)
    expect(outcome.parts.some(({ drawing }) => drawing?.startsWith('<svg') === true)).toBe(true)
  })

  it('bare numbers and known words are read without the reader of quantities, and give the same', () => {
    expect(plainInputs(fields, typedCase(fields))).not.toBeNull()
    for (const field of fields) {
      for (const text of [...texts(field), '3 mm', '1,5', ' 2 ']) {
        const typed = { ...typedCase(fields), [field.id]: text }
        const [plain, read] = [plainInputs(fields, typed), readInputs(fields, typed)]
        if (plain !== null) expect({ inputs: plain, problems: [] }, `${field.id} = ${text}`).toEqual(read)
      }
    }
  })

  it('its words are the trade’s: sources, limits and cautions stand', () => {
    expect(question.cautions.length).toBeGreaterThan(0)
    expect(question.rests.map(({ title }) => title)).toEqual(expect.arrayContaining(['Holds', 'Sources']))
    expect(question.scenario).toContain('invented')
  })
})

it.each(['crimp', 'bundle'])('%s: the trade’s figure from memory is marked', (id) => {
  const { question, model } = questions.find((one) => one.id === id) ?? {}
  const fields = question?.groups.flatMap((group) => group.fields) ?? []
  expect(JSON.stringify(model?.answer(readInputs(fields, typedCase(fields)).inputs, question?.facts as never))).toContain('(from memory)')
  expect(JSON.stringify(question?.rests)).toContain('from memory')
})

describe('on the page', () => {
  let site: BuiltSite
  beforeAll(async () => {
    site = await builtSite()
  })
  afterAll(() => site.close())

  it.each(questions.map(({ id }) => id))('%s: the answer follows, the slim bar keeps it in sight, one sheet of paper', async (id) => {
    const { page, context, faults } = await site.open(`questions/${id}/`)
    expect(await sideways(page)).toBeLessThanOrEqual(0)
    const field = page.locator('form .ask input[type="text"]').first()
    await page.evaluate(() => scrollTo(0, document.body.scrollHeight / 2))
    await page.waitForSelector('[data-bar]:not([hidden])')
    expect(await textOf(page, '[data-bar]')).toBe(await textOf(page, '[data-part] .short'))
    if ((await field.count()) > 0) {
      await field.fill('abc')
      await page.waitForSelector('asked-question[data-old]')
    }
    expect(await printedPages(page)).toBe(1)
    expect(faults).toEqual([])
    await context.close()
  })
})
