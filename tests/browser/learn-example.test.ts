import {
  breakEvenOverlapMm,
  interfaceConductanceSPerM,
  knownNominal,
  lapJointResistanceOhm,
  lapLengthForStrengthMm,
  lapNetworkResistanceOhm,
  lapOverlapDiameters,
  metal,
  resistanceOhmPerM,
  solder,
  strandedAreaMm2,
  strandedDiameterMm,
  transferLengthMm,
} from '@strandwise/core'
import { formatQuantity, type QuantityKind } from '@strandwise/working/quantity'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { axeFindings } from './accessibility.ts'
import { type BuiltSite, builtSite } from './builtSite.ts'
import { printedPages, sideways, textOf, valuesIn } from './learnPage.ts'

const path = 'examples/overlap-length/'
let site: BuiltSite
beforeAll(async () => {
  site = await builtSite()
})
afterAll(() => site.close())

// The scenario's givens as its text states them, put into the packages afresh.
const alloy = solder('Sn60Pb40')
const copper = metal('annealed-copper')
const strands = { strandCount: 32, strandDiameterMm: 0.2 }
const areaMm2 = strandedAreaMm2(strands)
const diameterMm = strandedDiameterMm(strands)
const ohmPerM = resistanceOhmPerM({ areaMm2, material: 'annealed-copper', temperatureC: 20 })
const layer = { bondWidthMm: diameterMm / 2, layerMm: 0.1, layerOhmM: knownNominal(alloy, 'resistivityOhmM', alloy.resistivityOhmM) }
const pair = { conductorsOhmPerM: [ohmPerM, ohmPerM] as const, interfaceSPerM: interfaceConductanceSPerM(layer) }
const enoughMm = breakEvenOverlapMm(pair) ?? Number.NaN
const overlapMm = 4 * diameterMm
const lapOhm = lapJointResistanceOhm({ ...pair, overlapMm })
const text = (value: number, kind: QuantityKind, figures = 3): string => formatQuantity(Number(value.toPrecision(figures)), kind)

describe('the worked example of the soldered overlap', () => {
  it('every number of its steps is the packages’', async () => {
    const { page, context } = await site.open(path, { javaScriptEnabled: false })
    expect(await valuesIn(page, '#wire dl.strong')).toEqual({ 'one metre of wire': text(ohmPerM, 'resistanceOhmPerM') })
    expect(await valuesIn(page, '#transfer dl.strong')).toEqual({ 'transfer length': text(transferLengthMm(pair), 'lengthMm') })
    expect((await valuesIn(page, '#enough dl.strong'))['enough for the current']).toContain(text(enoughMm, 'lengthMm'))
    const made = await valuesIn(page, '#made dl.strong')
    expect(made['the lap']).toBe(text(lapOhm, 'resistanceOhm'))
    expect(made['heat in the lap at 4 A']).toBe(text(lapOhm * 16, 'powerW'))
    const strengthMm = lapLengthForStrengthMm({
      tensileMPa: knownNominal(copper, 'tensileMPa', copper.tensileMPa),
      areaMm2,
      shearMPa: knownNominal(alloy, 'shearMPa', alloy.shearMPa),
      safetyFactor: 1,
      bondWidthMm: diameterMm / 2,
    })
    expect((await valuesIn(page, '#strength dl.strong'))['as strong as the wire, pulled once']).toContain(text(strengthMm, 'lengthMm'))
    const { low, high } = lapOverlapDiameters
    expect(await textOf(page, '#answer .short')).toBe(
      `${low} to ${high} wire diameters: ${text(low * diameterMm, 'lengthMm', 2)} to ${text(high * diameterMm, 'lengthMm', 2)} of overlap here.`,
    )
    await context.close()
  })

  it('the picture asks for the overlap until it is made in step 5', async () => {
    const { page, context } = await site.open(path, { javaScriptEnabled: false })
    const labels = (id: string) => page.locator(`#${id} figure.to-scale svg text`).allTextContents()
    expect(await labels('question')).toContain('?')
    expect(await textOf(page, '#question')).not.toContain(text(overlapMm, 'lengthMm', 2))
    expect(await textOf(page, '#question figcaption')).toMatch(/Overlap to be found/)
    for (const id of ['made', 'answer']) expect(await labels(id), id).toContain(text(overlapMm, 'lengthMm', 2))
    await context.close()
  })

  it('its working has no zeros to count and no remainder of rounding', async () => {
    const { page, context } = await site.open(path, { javaScriptEnabled: false })
    const known = await page.locator('.lesson .working dd').allTextContents()
    expect(known).toContain(`${Number((pair.interfaceSPerM / 1e6).toPrecision(5))} MS/m`)
    expect(known).toContain(`${Number((layer.layerOhmM * 1e9).toPrecision(5))} nΩ m`)
    expect(await textOf(page, '#enough .put-in')).toMatch(/residual.*0, to rounding/)
    const numbers = await page.locator('.lesson .working dd, .lesson mn').allTextContents()
    expect(numbers.length).toBeGreaterThan(50)
    expect(numbers.filter((number) => /\d{7}|^−?0\.0000/.test(number))).toEqual([])
    await context.close()
  })

  it('the limit of like wires and the sliced ladder agree on the page', async () => {
    const { page, context } = await site.open(path, { javaScriptEnabled: false })
    const checks = await page.$$eval('#check .check', (nodes) =>
      nodes.map((node) => [...node.querySelectorAll('dd')].map((value) => Number.parseFloat(value.textContent ?? ''))),
    )
    expect(checks[2]).toEqual([1.199679, 1.199679])
    const [there = 0, here = 1] = checks[3] ?? []
    expect(here).toBeCloseTo(lapOhm * 1e6, 3)
    expect(Math.abs(there / here - 1)).toBeLessThan(1e-5)
    expect(await textOf(page, '#check')).toMatch(/It can contradict it, and does not.*NASA-STD-8739\.4[^:]*\(published\)/)
    await context.close()
  })

  it('each mistake has its number', async () => {
    const { page, context } = await site.open(path, { javaScriptEnabled: false })
    const dry = lapJointResistanceOhm({ ...pair, overlapMm, interfaceSPerM: interfaceConductanceSPerM({ ...layer, layerMm: 0, filmOhmM2: 1e-8 }) })
    const partly = lapNetworkResistanceOhm({
      ...pair,
      stretches: [
        { lengthMm: overlapMm / 8, interfaceSPerM: pair.interfaceSPerM },
        { lengthMm: (7 * overlapMm) / 8, interfaceSPerM: 0 },
      ],
    })
    const whole = await textOf(page, '.lesson')
    for (const ohm of [dry, partly, lapJointResistanceOhm({ ...pair, overlapMm: diameterMm }), lapJointResistanceOhm({ ...pair, overlapMm: 12 * diameterMm })])
      expect(whole).toContain(text(ohm, 'resistanceOhm'))
    // All that lies inside the common tangents of both wires, less their metal: the valleys and the gaps between the strands.
    const filled = (length: number): string => text(length * ((1 + Math.PI / 4) * diameterMm ** 2 - 2 * areaMm2), 'volumeMm3', 2)
    expect(whole).toContain(`for ${filled(12 * diameterMm)} of solder, that between the strands counted, instead of ${filled(overlapMm)}.`)
    await context.close()
  })

  it('is whole without script: MathML in every step, the chart, the worksheet with its answers, nothing that waits for script', async () => {
    const { page, context } = await site.open(path, { javaScriptEnabled: false })
    for (const id of ['wire', 'solder', 'transfer', 'enough', 'made', 'strength']) expect(await page.locator(`#${id} math`).count(), id).toBeGreaterThan(2)
    expect(await page.locator('math:visible').count()).toBe(await page.locator('math').count())
    expect(await page.locator('#what-if svg path.series').count()).toBe(2)
    expect(await textOf(page, '#what-if output')).toContain(text(enoughMm, 'lengthMm', 2).replace(' mm', '.0 mm'))
    expect(await page.locator('[data-sheet="tasks"] li').count()).toBe(3)
    expect(await page.locator('[data-sheet="answers"] td').allTextContents()).not.toContain('')
    expect(await page.locator('button:visible').count()).toBe(0)
    await context.close()
  })

  it('the slider draws another chart and says the same, by keyboard', async () => {
    const { page, context, faults } = await site.open(path)
    const before = await page.locator('#what-if path.series').first().getAttribute('d')
    await page.focus('#setting')
    await page.keyboard.press('Home')
    await page.waitForFunction((old) => document.querySelector('#what-if path.series')?.getAttribute('d') !== old, before)
    const narrow = breakEvenOverlapMm({ ...pair, interfaceSPerM: interfaceConductanceSPerM({ ...layer, bondWidthMm: 0.05 * diameterMm }) }) ?? 0
    expect(await textOf(page, '#what-if output')).toContain(`from ${narrow.toPrecision(2)} mm of overlap on`)
    await page.click('#what-if live-chart')
    await page.waitForSelector('#what-if canvas')
    expect(faults).toEqual([])
    await context.close()
  })

  it.each([390, 768, 1280])('at %i px on the board: nothing to the side, axe finds nothing, and the sheet prints on pages of its own', async (width) => {
    const { page, context } = await site.open(path, { viewport: { width, height: 844 }, bypassCSP: true })
    await page.click('[data-open]')
    for (let step = 0; step < 5; step++) await page.keyboard.press('ArrowRight')
    expect(await sideways(page)).toBeLessThanOrEqual(0)
    expect(await page.$eval('[data-stage]', (stage) => stage.scrollWidth - stage.clientWidth)).toBeLessThanOrEqual(0)
    expect(await axeFindings(page)).toEqual([])
    await page.keyboard.press('Escape')
    const all = await printedPages(page)
    await page.evaluate(() => {
      document.documentElement.dataset.printing = 'sheet'
    })
    const alone = await printedPages(page)
    expect(alone).toBeGreaterThanOrEqual(2)
    expect(alone).toBeLessThanOrEqual(4)
    expect(all).toBeGreaterThan(alone)
    await context.close()
  })
})
