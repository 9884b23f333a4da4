import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { axeFindings } from './accessibility.ts'
import { type BuiltSite, built, builtSite, pages } from './builtSite.ts'

/** Last the phone's, at which the accessibility rules are run. */
const widths = [1280, 768, 390]

let site: BuiltSite
beforeAll(async () => {
  site = await builtSite()
})
afterAll(async () => {
  await site.close()
})

/** Overlapping blocks of text, except hidden ones and ancestors. */
const overlaps = () => {
  const blocks = [
    ...document.querySelectorAll('main p, main li, main h1, main h2, main h3, main dt, main dd, main summary, main label, header a, .foot p'),
  ].filter((element) => {
    const box = element.getBoundingClientRect()
    return (
      box.width > 0 &&
      box.height > 0 &&
      element.checkVisibility({ visibilityProperty: true, opacityProperty: true }) &&
      getComputedStyle(element).position !== 'fixed'
    )
  })
  const found: string[] = []
  for (let i = 0; i < blocks.length; i++) {
    const a = blocks[i]?.getBoundingClientRect()
    for (let j = i + 1; j < Math.min(blocks.length, i + 12); j++) {
      const [one, other] = [blocks[i], blocks[j]]
      const b = other?.getBoundingClientRect()
      if (a === undefined || b === undefined || one?.contains(other ?? null) || other?.contains(one ?? null)) continue
      if (Math.min(a.right, b.right) - Math.max(a.left, b.left) > 2 && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 2)
        found.push(`"${one?.textContent?.trim().slice(0, 40)}" over "${other?.textContent?.trim().slice(0, 40)}"`)
    }
  }
  return found
}

/** One page stands for all that are generated alike; the handbook's own test reads all of them. */
const alike = /^handbook\/(?!$|resistanceOhm\/|heatJoint\/|parseQuantity\/|tables\/(metals|awgTable)\/|rules\/(joint|cautions)\/)/
const looked = pages().filter((path) => !alike.test(path))
/** The lessons' own tests run axe on each of their pages; here one lesson stands for all, in light and dark. */
const elsewhere = /^examples\/(?!overlap-length\/)./

test.each(looked.map((path) => [path === '' ? 'home' : path, path] as const))(
  `%s at ${widths.join(', ')} px: nothing to scroll sideways, no text over text, no fault; in light and in dark no finding of the accessibility rules`,
  async (_name, path) => {
    const { page, context, faults } = await site.open(path)
    for (const width of widths) {
      await page.setViewportSize({ width, height: 900 })
      expect(await page.evaluate(() => document.documentElement.scrollWidth), `${width} px`).toBeLessThanOrEqual(width)
      expect(await page.evaluate(overlaps), `${width} px`).toEqual([])
    }
    expect(faults).toEqual([])
    if (!elsewhere.test(path)) {
      await page.emulateMedia({ reducedMotion: 'reduce' })
      expect(await axeFindings(page), 'light').toEqual([])
      await page.emulateMedia({ colorScheme: 'dark' })
      expect(await axeFindings(page, 'colours'), 'dark').toEqual([])
    }
    await context.close()
  },
)

const htmlOf = (path: string): string =>
  readFileSync(join(built, path.endsWith('.html') ? path : `${path}index.html`), 'utf8').replace(/<script[\s\S]*?<\/script>/g, '')

test.each(pages())('%s says what it is, before any script', (path) => {
  const html = htmlOf(path)
  expect(/<title>([^<]*)<\/title>/.exec(html)?.[1]?.length).toBeGreaterThan(8)
  expect(html.match(/<h1[\s>]/g)?.length).toBe(1)
  const main = /<main[\s>][\s\S]*<\/main>/.exec(html)?.[0].replace(/<style[\s\S]*?<\/style>|<[^>]*>/g, '') ?? ''
  expect(main.replace(/\s+/g, ' ').length).toBeGreaterThan(60)
})

test.each(['', 'method/', 'handbook/wireSagMm/', 'handbook/tables/metals/', 'embed/'])('%s can be read with scripts off', async (path) => {
  const { page, context } = await site.open(path, { javaScriptEnabled: false })
  expect(await page.locator('main h1').isVisible()).toBe(true)
  expect(await page.locator('main p').first().isVisible()).toBe(true)
  await context.close()
})

test('every link and every anchor inside the site leads somewhere', () => {
  const ids = new Map<string, ReadonlySet<string>>()
  const links = new Map<string, readonly string[]>()
  for (const path of pages()) {
    const html = htmlOf(path)
    ids.set(path, new Set([...html.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1] ?? '')))
    links.set(
      path,
      [...html.matchAll(/<a\s[^>]*?href="([^"]*)"/g)].map(
        (match) => new URL((match[1] ?? '').replaceAll('&amp;', '&').replaceAll('&#38;', '&'), site.address + path).href,
      ),
    )
  }
  const broken = [...links].flatMap(([path, targets]) =>
    targets.flatMap((target) => {
      if (!target.startsWith(site.address)) return [`${path}: leads to another host: ${target}`]
      const [address = '', anchor = ''] = target.slice(site.address.length).split('#')
      const place = address.replace(/\?.*$/, '')
      if (!ids.has(place)) return /\.\w+$/.test(place) ? [] : [`${path}: no page ${target}`]
      // A fragment with "=" or "." carries inputs or a job, not an anchor; opening job links is tested below.
      return anchor === '' || /[=.]/.test(anchor) || ids.get(place)?.has(decodeURIComponent(anchor)) === true ? [] : [`${path}: no anchor ${target}`]
    }),
  )
  expect(broken).toEqual([])
})

test('home leads to the whole plan of its job, and says the same', async () => {
  const { page, context } = await site.open('')
  const told = await page.textContent('.decision .says')
  const words = ((await page.textContent('main')) ?? '').split(/\s+/).filter((word) => word !== '')
  expect(words.length).toBeLessThan(400)
  await page.click('a[href*="#job"]')
  await page.waitForSelector('[data-plan][data-verdict]')
  expect(await page.textContent('[data-plan] .says')).toBe(told)
  expect(await page.locator('[data-plan] .says').isVisible()).toBe(true)
  await context.close()
})

test('a page that is not there answers 404 and leads back', async () => {
  const { page, context } = await site.open('404.html')
  const answer = await page.goto(`${site.address}nowhere/`)
  expect(answer?.status()).toBe(404)
  expect(await page.locator('main a').first().getAttribute('href')).toBe('/')
  await context.close()
})
