import {
  bundleCurrentA,
  bundleDiameterMm,
  bundleTemperatureC,
  chooseSleeve,
  cutLengthMm,
  iec60228,
  insulation,
  layFactorOfClass,
  resistanceOhm,
  sleeveMaterial,
  sleeveSizes,
  steadyCurrentBandA,
} from '@strandwise/core'
import { formatQuantity, type QuantityKind } from '@strandwise/working/quantity'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { axeFindings } from './accessibility.ts'
import { type BuiltSite, builtSite } from './builtSite.ts'
import { sideways, textOf, valuesIn } from './learnPage.ts'

let site: BuiltSite
beforeAll(async () => {
  site = await builtSite()
})
afterAll(() => site.close())

const wire = 'questions/wire-size/'
const sleeve = 'questions/sleeve-from-stock/'
const text = (value: number, kind: QuantityKind): string => formatQuantity(Number(value.toPrecision(3)), kind)
const answered = (page: Page, part: string, words: RegExp): Promise<unknown> =>
  page.waitForFunction(([name, pattern]) => new RegExp(pattern).test(document.querySelector(`[data-part="${name}"] .short`)?.textContent ?? ''), [
    part,
    words.source,
  ] as const)

/** The page's default case with this conductor area and ambient. */
function heat(areaMm2: number, ambientC = 35) {
  const pvc = insulation('PVC')
  return {
    areaMm2,
    material: 'annealed-copper' as const,
    layFactor: layFactorOfClass(5).nominal,
    insulationThicknessMm: 0.6,
    insulationConductivityWPerMK: pvc.conductivityWPerMK?.nominal ?? 0,
    ambientC,
  }
}
const correlations = ['churchill-chu', 'morgan'] as const
function bundle(areaMm2: number, loadedWires: number) {
  const wireMm = 2 * Math.sqrt(areaMm2 / Math.PI) + 1.2
  return { ...heat(areaMm2), loadedWires, bundleOutsideMm: bundleDiameterMm(Array.from({ length: loadedWires }, () => wireMm)) }
}
const limitC = insulation('PVC').continuousC?.low ?? 0

describe('wire size both ways', () => {
  it('both answers are the packages’, without script', async () => {
    const { page, context } = await site.open(wire, { javaScriptEnabled: false })
    const lowA = Math.min(...correlations.map((correlation) => bundleCurrentA({ ...bundle(1, 3), correlation, limitC }) ?? 0))
    const shown = Number.parseFloat(/carries ([\d.]+) A/.exec(await textOf(page, '[data-part="this-wire"] .short'))?.[1] ?? '')
    expect(shown).toBeLessThanOrEqual(lowA)
    expect(shown).toBeGreaterThan(0.99 * lowA)

    const sizes = [...new Set(iec60228.rows.map(({ areaMm2 }) => areaMm2))].sort((a, b) => a - b)
    const found = sizes.map((areaMm2) => {
      const hot = Math.max(...correlations.map((correlation) => bundleTemperatureC({ ...bundle(areaMm2, 3), correlation, currentA: 4.5 }).centreC))
      const ohm = resistanceOhm({ areaMm2, lengthM: 8, material: 'annealed-copper', temperatureC: Math.min(hot, 300), layFactor: layFactorOfClass(5).nominal })
      return { areaMm2, hot, dropV: 4.5 * ohm }
    })
    const best = found.find(({ hot, dropV }) => hot <= limitC && dropV <= 0.36)
    expect(await textOf(page, '[data-part="which-wire"] .short')).toContain(`Take ${best?.areaMm2} mm² or thicker`)
    const values = Object.values(await valuesIn(page, '[data-part="which-wire"]'))
    expect(values).toContain(text(best?.dropV ?? 0, 'voltageV'))
    expect(values).toContain(`${found.find(({ hot }) => hot <= limitC)?.areaMm2} mm²`)
    await context.close()
  })

  it('follows what is typed, in any unit, and the link brings the case back', async () => {
    const { page, context, faults } = await site.open(wire)
    await page.fill('#size', '18 AWG')
    await page.fill('#air', '86 °F')
    await page.fill('#loaded', '1')
    const area = 0.8230775
    await answered(page, 'this-wire', /alone in still air of 30 °C/)
    const lowA = steadyCurrentBandA({ ...heat(area, 30), limitC })?.low ?? 0
    const sentence = await textOf(page, '[data-part="this-wire"] .short')
    const shown = Number.parseFloat(/carries ([\d.]+) A/.exec(sentence)?.[1] ?? '')
    expect(shown).toBeLessThanOrEqual(lowA)
    expect(shown).toBeGreaterThan(0.985 * lowA)
    await page.click('[data-copy]')
    const link = await page.inputValue('[data-link]')
    expect(link).toContain('18+AWG')
    const other = await site.open(wire + new URL(link).hash)
    await answered(other.page, 'this-wire', /alone in still air of 30 °C/)
    expect(await textOf(other.page, '[data-part="this-wire"] .short')).toBe(sentence)
    expect(await other.page.inputValue('#size')).toBe('18 AWG')
    expect([...faults, ...other.faults]).toEqual([])
    await other.context.close()
    await context.close()
  })

  it('inch beside metric where it is asked for, and no current where the air is at the limit', async () => {
    const { page, context } = await site.open(wire)
    await page.selectOption('#units', 'both')
    await answered(page, 'this-wire', /cmil/)
    await page.fill('#air', '70 °C')
    await answered(page, 'this-wire', /^None/)
    expect(await page.getAttribute('[data-part="this-wire"]', 'data-verdict')).toBe('unsound')
    expect(await page.locator('[data-part="this-wire"] [data-mark]:not([hidden])').getAttribute('data-mark')).toBe('unsound')
    await context.close()
  })

  it('the working opens by keyboard, as built at first, then for what was typed', async () => {
    const { page, context, faults } = await site.open(wire)
    await page.focus('[data-working] summary')
    await page.keyboard.press('Enter')
    expect(await page.locator('[data-workings] math:visible').count()).toBeGreaterThan(10)
    const before = await textOf(page, '[data-workings]')
    await page.fill('#current', '9 A')
    await page.waitForFunction((old) => document.querySelector('[data-workings]')?.textContent?.replace(/\s+/g, ' ').trim() !== old, before)
    const drop = await textOf(page, '[data-workings]')
    expect(drop).toMatch(/Area that the drop asks for/)
    expect(await page.$$eval('[data-workings] dd', (values) => values.map((value) => value.textContent))).toContain('9 A')
    expect(faults).toEqual([])
    await context.close()
  })

  it.each([
    ['#air', 'abc', /^Read: “abc”: .*Allowed: from -60 °C to 200 °C\. For example: 35 °C\.$/],
    ['#air', '500 °F', /^Read: 500 °F\. Allowed: from -76 °F to 392 °F\. For example: 95 °F\.$/],
    ['#size', '3 kg', /^Read: “3 kg”: .*Allowed: from 0\.05 mm² to 120 mm²\. For example: 1 mm²\.$/],
    ['#wall', '1 in', /^Read: 1 in\. Allowed: from 0 in to 0\.393701 in\. For example: 0\.0236 in\.$/],
    ['#loaded', '2.5', /^Read: 2\.5\. Allowed: a whole number from 1 to 24\. For example: 3\.$/],
    ['#current', '0', /^Read: 0 A\. Allowed: above 0 A and at most 500 A\. For example: 4\.5 A\.$/],
    ['#drop', '', /^Read: nothing\. Allowed: .*For example: 0\.36 V\.$/],
  ])('%s “%s”: the field says what was read, what is allowed and an example; the answer stays and is old', async (field, typed, words) => {
    const { page, context, faults } = await site.open(wire)
    await page.fill('#out', '5 m')
    await page.waitForFunction(() => location.hash.includes('out=5'))
    const before = await textOf(page, '.answered')
    await page.fill(field, typed)
    await page.waitForSelector('asked-question[data-old]')
    expect(await textOf(page, `${field}-problem`)).toMatch(words)
    expect(await page.getAttribute(field, 'aria-invalid')).toBe('true')
    expect(await textOf(page, '.answered')).toBe(before)
    expect(await textOf(page, '[data-old-words]')).toMatch(/old/)
    expect(page.url()).toContain('out=5+m')
    expect(faults).toEqual([])
    await context.close()
  })
})

describe('which sleeve from the stock', () => {
  const lined = sleeveSizes['metric 3:1 lined'].rows.find(({ nominal }) => nominal === '6/2 mm')
  const change = sleeveMaterial('polyolefin-adhesive-lined').longitudinalChange ?? { low: Number.NaN, high: Number.NaN }

  it('the answer is the packages’, without script, and every sleeve that is out says why', async () => {
    const { page, context } = await site.open(sleeve, { javaScriptEnabled: false })
    const stock = [
      {
        material: 'polyolefin-adhesive-lined' as const,
        suppliedInsideMm: 6,
        recoveredInsideMm: 2,
        recoveredWallMm: lined?.recoveredWallMm ?? 0,
        longitudinalChange: change,
      },
    ]
    const [choice] = chooseSleeve({ largestMm: 5.2, smallestMm: 2.9, outsideLimitMm: 8, stock })
    const cut = cutLengthMm({ jointMm: 26, overlapEachSideMm: 6, longitudinalChange: change })
    expect(choice?.fits).toBe(true)
    expect(await textOf(page, '[data-part="sleeve"] .short')).toBe(
      `Take 6/2 mm adhesive-lined 3:1, metric, cut ${text(cut, 'lengthMm')} long; shrunk on, it is ${text(choice?.outsideMm ?? 0, 'lengthMm')} outside.`,
    )
    expect(await page.inputValue('#largest')).toBe('5.2')
    expect(await textOf(page, '#largest-unit')).toBe('mm')
    const others = await valuesIn(page, '[data-part="others"]')
    expect(Object.keys(others)).toHaveLength(6)
    expect(others['3/16 in thin wall 2:1, AS23053/5']).toBe('4.75 mm inside does not go over 5.2 mm')
    expect(others['1/4 in thin wall 2:1, AS23053/5']).toBe('shrinks to 3.17 mm and stays loose on 2.9 mm')
    await context.close()
  })

  it('ticks, a sleeve of one’s own and the way back by the link', async () => {
    const { page, context, faults } = await site.open(sleeve)
    await page.uncheck('input[value="metric-3-1-lined-6/2-mm"]')
    await answered(page, 'sleeve', /^None of these 6 fits/)
    expect(await textOf(page, '[data-part="sleeve"] li')).toMatch(/is at most 8 mm outside after shrinking/)
    expect(await page.getAttribute('[data-part="sleeve"]', 'data-verdict')).toBe('unsound')
    await page.click('.group summary')
    await page.fill('#own-supplied', '6.4 mm')
    await page.waitForSelector('asked-question[data-old]')
    expect(await textOf(page, '#own-recovered-problem')).toMatch(/^Read: nothing\. Allowed: all three sizes/)
    await page.fill('#own-recovered', '1.6 mm')
    await page.fill('#own-wall', '1 mm')
    await answered(page, 'sleeve', /^Take your own/)
    const { hash } = new URL(page.url())
    const sentence = await textOf(page, '[data-part="sleeve"] .short')
    const other = await site.open(sleeve + hash)
    await answered(other.page, 'sleeve', /^Take your own/)
    expect(await textOf(other.page, '[data-part="sleeve"] .short')).toBe(sentence)
    expect(await other.page.isChecked('input[value="metric-3-1-lined-6/2-mm"]')).toBe(false)
    expect([...faults, ...other.faults]).toEqual([])
    await other.context.close()
    await context.close()
  })

  it('a smallest diameter above the largest is refused at its field', async () => {
    const { page, context } = await site.open(sleeve)
    await page.fill('#smallest', '6 mm')
    await page.waitForSelector('asked-question[data-old]')
    expect(await textOf(page, '#smallest-problem')).toBe('Read: 6 mm. Allowed: at most the largest diameter, 5.2 mm. For example: 5.2 mm.')
    await context.close()
  })
})

describe.each([wire, sleeve])('%s', (path) => {
  it.each([390, 768, 1280])('at %i px with a refusal and the working open: nothing to the side, axe finds nothing', async (width) => {
    const { page, context } = await site.open(path, { viewport: { width, height: 844 }, bypassCSP: true, colorScheme: width === 768 ? 'dark' : 'light' })
    await page.click('[data-working] summary')
    await page.locator('form input[type="text"]').first().fill('abc')
    await page.waitForSelector('asked-question[data-old]')
    expect(await sideways(page)).toBeLessThanOrEqual(0)
    expect(await axeFindings(page)).toEqual([])
    await context.close()
  })
})
