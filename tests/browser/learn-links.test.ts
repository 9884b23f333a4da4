import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type BuiltSite, builtSite } from './builtSite.ts'
import { textOf } from './learnPage.ts'

const sleeve = 'questions/sleeve-from-stock/'
let site: BuiltSite
beforeAll(async () => {
  site = await builtSite()
})
afterAll(() => site.close())

describe('a link that can’t be used leaves the case as it was, and says why', () => {
  it.each([
    ['case1', /cut short/],
    ['case1&largest=5', /cut short/],
    ['case2&largest=5', /form 2/],
    ['case999999999&x', /cut short/],
    [`case1&${'x'.repeat(5000)}`, /longer than any case/],
    ['case1&surprise=1', /does not ask for/],
    ['case1&largest=%3Cscript%3E', /< or >/],
    ['case1&largest=5&largest=6', /twice/],
  ])('#%s', async (fragment, words) => {
    const { page, context, faults } = await site.open(`${sleeve}#${fragment}`)
    await page.waitForFunction(() => (document.querySelector('[data-said]')?.textContent ?? '') !== '')
    expect(await textOf(page, '[data-said]')).toMatch(words)
    expect(await page.inputValue('#largest')).toBe('5.2')
    expect(await textOf(page, '[data-part="sleeve"] .short')).toMatch(/^Take 6\/2 mm/)
    expect(faults).toEqual([])
    await context.close()
  })

  it('a whole link with one entry out of range, a stranger among the ticks, or entries that contradict', async () => {
    const good = await site.open(sleeve)
    await good.page.fill('#limit', '9 mm')
    await good.page.waitForFunction(() => location.hash.includes('limit=9'))
    const { hash } = new URL(good.page.url())
    await good.context.close()
    for (const broken of [hash.replace('largest=5.2', 'largest=-5'), hash.replace('stock=', 'stock=nothing%2C'), hash.replace('smallest=2.9', 'smallest=7')]) {
      expect(broken).not.toBe(hash)
      const { page, context } = await site.open(sleeve + broken)
      await page.waitForFunction(() => (document.querySelector('[data-said]')?.textContent ?? '') !== '')
      expect(await textOf(page, '[data-said]')).toMatch(/^This link can’t be used: .*The case below is as it was\.$/)
      expect(await page.inputValue('#limit')).toBe('8')
      await context.close()
    }
  })
})
