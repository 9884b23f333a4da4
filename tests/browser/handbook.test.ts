import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import * as core from '@strandwise/core'
import { practiceRules } from '@strandwise/core/rules'
import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, it, test } from 'vitest'
import { differencesOf, reproduced } from '../../site/src/handbook/againstFormula.ts'
import type { HandField } from '../../site/src/handbook/facts.ts'
import { readData } from '../../site/src/handbook/readData.ts'
import { readFields } from '../../site/src/handbook/readFields.ts'
import { readUnit } from '../../site/src/handbook/readUnit.ts'
import { refusalOf } from '../../site/src/handbook/refusal.ts'
import { gathered, resultMarkup } from '../../site/src/handbook/resultMarkup.ts'
import { drawnInputs } from '../docs/draw.ts'
import { entries } from '../docs/entries.ts'
import { evaluate, parseExample } from '../docs/example.ts'
import { functionOf, scope } from '../docs/scope.ts'
import { outsideOf } from '../docs/vary.ts'
import { type BuiltSite, built, builtSite, pages } from './builtSite.ts'
import { sideways, textOf } from './learnPage.ts'

const functions = entries().filter(({ kind }) => kind === 'function')
const htmlOf = (path: string): string => readFileSync(join(built, path, 'index.html'), 'utf8')
const handbook = pages().filter((path) => path.startsWith('handbook/'))
/** Bytes of any page with its styles and scripts before interaction; measured at most 18.6 kB. */
const pageCeiling = 20_000

interface Form {
  readonly unit: string
  readonly fields: readonly HandField[]
  readonly inputs: readonly unknown[]
}

/** The form of a page; null without one. */
function formOf(name: string): Form | null {
  const text = /<handbook-function data-function="([^"]*)"/.exec(htmlOf(`handbook/${name}`))?.[1]
  return text === undefined
    ? null
    : (JSON.parse(text.replaceAll('&quot;', '"').replaceAll('&#34;', '"').replaceAll('&#39;', "'").replaceAll('&lt;', '<').replaceAll('&amp;', '&')) as Form)
}

const forms = functions.flatMap((entry) => {
  const form = existsSync(join(built, 'handbook', entry.name)) ? formOf(entry.name) : null
  return form === null ? [] : [{ name: entry.name, entry, form }]
})

const valueAt = (inputs: readonly unknown[], path: HandField['path']): unknown =>
  path.reduce<unknown>((found, key) => (found as Readonly<Record<string | number, unknown>> | undefined)?.[key], inputs)

/** Text to type for these inputs. */
const typedFor = (form: Form, inputs: readonly unknown[]): Readonly<Record<string, string>> =>
  Object.fromEntries(
    form.fields.map(({ id, path }) => {
      const value = valueAt(inputs, path)
      return [id, value === undefined || value === null ? '' : Array.isArray(value) ? value.join(', ') : String(value)]
    }),
  )

test('every public function, table and topic of rules has its page, and the contents lead to each', () => {
  const contents = htmlOf('handbook')
  for (const { name } of functions) expect(contents, name).toContain(`/handbook/${name}/"`)
  const tables = entries().filter(({ kind, room, package: name }) => name === 'core' && kind === 'value' && (room === 'tables' || room === 'materials'))
  const withRows = tables.filter(({ name }) => /\[\{/.test(JSON.stringify((core as Readonly<Record<string, unknown>>)[name])))
  expect(withRows.length).toBeGreaterThan(10)
  for (const { name } of withRows) expect(contents, name).toContain(`/handbook/tables/${name}/"`)
  const rulePages = handbook.filter((path) => path.startsWith('handbook/rules/')).map(htmlOf)
  for (const { id } of practiceRules) expect(rulePages.filter((html) => html.includes(`id="${id}"`)).length, id).toBe(1)
})

/** Lists of rows within a value, by length. */
function listsIn(value: unknown): readonly number[] {
  if (typeof value !== 'object' || value === null) return []
  if (Array.isArray(value)) return value.length >= 2 && value.every((item) => typeof item === 'object') ? [value.length] : []
  return Object.values(value).flatMap(listsIn)
}

describe('tables', () => {
  const data = readData()

  test.each(data.filter(({ name }) => !['metals', 'solders', 'insulations', 'sleeveMaterials'].includes(name)))(
    '$name: every list of rows in it is a table of its page, and a CSV',
    ({ name, tables }) => {
      const lists = listsIn((core as Readonly<Record<string, unknown>>)[name])
      const shown = tables.map(({ rows }) => rows.length)
      for (const length of new Set(lists))
        expect(shown.filter((one) => one === length).length, `${length} rows`).toBeGreaterThanOrEqual(lists.filter((one) => one === length).length)
      const html = htmlOf(`handbook/tables/${name}`)
      for (const [at, { rows }] of tables.entries()) {
        expect(html).toContain(`handbook/tables/${name}-${at + 1}.csv`)
        expect(
          readFileSync(join(built, `handbook/tables/${name}-${at + 1}.csv`), 'utf8')
            .trimEnd()
            .split('\r\n'),
        ).toHaveLength(rows.length + 1)
      }
    },
  )

  test('a list with a provenance of its own has its status: the allowed drops of AC 43.13-1B are from memory', () => {
    const drops = data.find(({ name }) => name === 'faaAc4313')?.tables.find(({ title }) => title === 'allowed drop')
    expect(new Set(drops?.rows.map((row) => row.at(-1)))).toEqual(new Set(['from memory']))
  })

  test('each formula beside a column is public and gives a difference in that table', () => {
    for (const { table, columns, by } of reproduced) {
      expect(functions.map(({ name }) => name)).toContain(by)
      const found = data.find(({ name }) => name === table)?.tables.flatMap((one) => one.columns) ?? []
      expect(
        found.filter(({ key, words }) => columns.test(key.replace('-difference', '')) && words.endsWith(`against ${by}`)).length,
        `${table} ${columns}`,
      ).toBeGreaterThan(0)
    }
  })

  test('IEC 60228: 0.75 mm2 of class 5 is printed with 26 ohm/km; plain area gives 11.6 % less', () => {
    const row = core.iec60228.rows.find(({ areaMm2, conductorClass }) => areaMm2 === 0.75 && conductorClass === 5)
    const [first] = differencesOf('iec60228', ['plainOhmPerKm'], {})
    expect(first?.percent(row as unknown as Readonly<Record<string, unknown>>)).toBeCloseTo(100 * ((1000 * 1.7241e-8 * 1e6) / 0.75 / 26 - 1), 6)
  })
})

test.each(handbook)('%s: small before a touch, with a title of its own and no gap', (path) => {
  const html = htmlOf(path)
  const parts = [...html.matchAll(/<(?:script[^>]* src|link rel="stylesheet" href)="\/([^"]+)"/g)].map((match) => readFileSync(join(built, match[1] ?? '')))
  const bytes = [Buffer.from(html), ...parts].reduce((sum, text) => sum + gzipSync(text, { level: 9 }).length, 0)
  expect(bytes, 'page, styles and scripts').toBeLessThanOrEqual(pageCeiling)
  expect(html).toMatch(/<h1[^>]*>[^<]{3,}/)
  const results = [...html.matchAll(/<div class="given" data-result[^>]*>([\s\S]*?)<\/div>/g)].map((match) => match[1] ?? '')
  for (const result of results) expect(/\bundefined\b|\bNaN\b/.test(result)).toBe(false)
  expect(html.includes('[object Object]')).toBe(false)
})

describe('live forms', () => {
  it('every function has one, or its page says why not and shows what the example gives', () => {
    const without = functions.filter(({ name }) => !forms.some((form) => form.name === name)).map(({ name }) => name)
    expect(without.length).toBeLessThan(0.1 * functions.length)
    for (const name of without)
      expect(htmlOf(`handbook/${name}`), name).toMatch(/It takes no input|One of its inputs is a function|Its input is (?:what|a stream|a whole job)/)
    expect(without.filter((name) => !htmlOf(`handbook/${name}`).includes('data-result'))).toEqual([])
  })

  it.each(forms)('$name: the page stands at its example, and the form says it back', async ({ name, entry, form }) => {
    const inputs = evaluate(parseExample(entry.doc.examples[0] ?? '').argumentsText, scope)
    const read = readFields(form.fields, form.inputs, typedFor(form, inputs), readUnit)
    expect(read.problems).toEqual([])
    const result = resultMarkup(await gathered(await functionOf(name)(...read.inputs)), form.unit)
    expect(result).toBe(resultMarkup(await gathered(await functionOf(name)(...inputs)), form.unit))
    expect(htmlOf(`handbook/${name}`).replaceAll('&#34;', '&quot;')).toContain(result)
  })

  it.each(forms.filter(({ entry }) => entry.doc.domains.length > 0))(
    '$name: random inputs typed into it give what the function gives',
    async ({ name, entry, form }) => {
      await fc.assert(
        fc.asyncProperty(drawnInputs(entry), async (drawn) => {
          const inputs = JSON.parse(JSON.stringify(drawn)) as readonly unknown[]
          // A second example may not fit the form, which follows the first.
          const fits = (value: unknown, { kind, optional }: HandField): boolean =>
            value === undefined ? optional : kind === 'numbers' || typeof value !== 'object'
          fc.pre(form.fields.every((field) => fits(valueAt(inputs, field.path), field)))
          const read = readFields(form.fields, inputs, typedFor(form, inputs), readUnit)
          expect(read.problems).toEqual([])
          const outcome = async (given: readonly unknown[]): Promise<string> => {
            try {
              return resultMarkup(await gathered(await functionOf(name)(...given)), form.unit)
            } catch (error) {
              return (error as Error).message
            }
          }
          expect(await outcome(read.inputs)).toBe(await outcome(inputs))
        }),
        { numRuns: 10 },
      )
    },
  )

  it.each(forms.filter(({ entry }) => entry.doc.domains.length > 0))(
    '$name: a value outside its domain is refused at its field',
    async ({ name, entry, form }) => {
      for (const { path, domain } of entry.doc.domains) {
        const field = form.fields.find(({ written, kind }) => written === path && kind === 'number')
        const [, , , outside] = outsideOf(domain)
        if (field === undefined || outside === undefined || valueAt(form.inputs, field.path) === undefined) continue
        const read = readFields(form.fields, form.inputs, { ...typedFor(form, form.inputs), [field.id]: String(outside) }, readUnit)
        const refused = await Promise.resolve()
          .then(() => functionOf(name)(...read.inputs))
          .then(
            () => 'accepted',
            (error: Error) => refusalOf(error, form.fields),
          )
        expect(refused, `${path} = ${outside}`).toMatchObject({ id: field.id })
      }
    },
  )
})

describe('in the browser', () => {
  let site: BuiltSite
  beforeAll(async () => {
    site = await builtSite()
  })
  afterAll(() => site.close())

  it('the result follows what is typed, in any unit; the working too; a refusal stands at its field and keeps the last result', async () => {
    const { page, context, faults } = await site.open('handbook/wireSagMm/')
    await page.fill('[id="f-0-spanMm"]', '0.6 m')
    await page.waitForFunction(() => document.querySelector('[data-result]')?.textContent?.includes('10.591 mm'))
    await page.click('[data-working] summary')
    await page.waitForFunction(() => document.querySelector('[data-workings]')?.textContent?.includes('600'))
    await page.fill('[id="f-0-pullN"]', '0.01')
    await page.waitForSelector('handbook-function[data-old]')
    expect(await textOf(page, '[id="f-0-pullN-problem"]')).toMatch(/^Read: 0\.01\. Allowed: at least 0\.07/)
    expect(await textOf(page, '[data-result]')).toBe('10.591 mm')
    await page.fill('[id="f-0-pullN"]', 'a lot')
    await page.waitForFunction(() => document.querySelector('[id="f-0-pullN-problem"]')?.textContent?.includes('a lot'))
    expect(faults).toEqual([])
    await context.close()
  })

  it.each(['handbook/', 'handbook/heatJoint/', 'handbook/tables/metals/', 'handbook/rules/joint/', 'handbook/identifyWire/'])(
    '%s at 320, 768 and 1920 px: nothing runs to the side',
    async (path) => {
      const { page, context } = await site.open(path)
      for (const width of [320, 768, 1920]) {
        await page.setViewportSize({ width, height: 900 })
        expect(await sideways(page), `${width} px`).toBeLessThanOrEqual(0)
      }
      await context.close()
    },
  )

  it('a table sorts by a column, shows the rows that hold a word, and comes as CSV', async () => {
    const { page, context, faults } = await site.open('handbook/tables/awgTable/')
    const first = () => textOf(page, 'tbody tr:not([hidden]) td:nth-child(2)')
    await page.click('th:nth-child(3) button')
    expect(await first()).toBe('40')
    await page.click('th:nth-child(3) button')
    expect(await first()).toBe('4/0')
    await page.fill('[data-filter]', '0.0820')
    expect(await textOf(page, '[data-count]')).toMatch(/^\d of 44 rows$/)
    const csv = await (await page.request.get(`${site.address}handbook/tables/awgTable-1.csv`)).text()
    expect(csv.split('\r\n').length).toBe(46)
    expect(faults).toEqual([])
    await context.close()
  })
})
