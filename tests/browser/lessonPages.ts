import type { Page } from 'playwright-core'
import { lessons } from '../../site/src/learn/lessons.ts'
import { textOf } from './learnPage.ts'

/** Every lesson with its id as the test's name. */
export const everyLesson = lessons.map((lesson) => [lesson.id, lesson] as const)

export const pathOf = (id: string, page = ''): string => `examples/${id}/${page}`

export const titleOnBoard = (page: Page): Promise<string> => textOf(page, 'dialog h2')

/** Text with every run of white space as one space, as pages tie numbers to units. */
export const plain = (text: string): string => text.replace(/\s+/g, ' ').trim()

/** Present card and number of cards of the board. */
export async function cardOf(page: Page): Promise<{ readonly at: number; readonly count: number }> {
  const [at = 0, count = 0] = (await textOf(page, 'dialog [data-count]')).split(' of ').map(Number)
  return { at, count }
}

/** One card as the board shows it. */
export interface SeenCard {
  readonly title: string
  readonly kind: string
  /** Everything that can be seen, once. */
  readonly text: string
  /** Pixels that don't fit, down and to the side. */
  readonly over: readonly [number, number]
  /** Width of the page beyond the window. */
  readonly sideways: number
}

/** Goes through the open board from its first card to its last by the key of a remote, inside the page, and tells what each card shows. */
export async function seenCards(page: Page): Promise<readonly SeenCard[]> {
  await page.keyboard.press('Home')
  const seen = await page.evaluate(() => {
    const stage = document.querySelector<HTMLElement>('[data-stage]')
    const count = document.querySelector('dialog [data-count]')
    if (stage === null || count === null) throw new Error('no board')
    const cards: SeenCard[] = []
    for (;;) {
      cards.push({
        title: stage.querySelector('h2')?.textContent ?? '',
        kind: stage.dataset.kind ?? '',
        // biome-ignore lint/performance/useDomNodeTextContent: what is hidden must not count
        text: document.querySelector('dialog')?.innerText ?? '',
        over: [stage.scrollHeight - stage.clientHeight, stage.scrollWidth - stage.clientWidth],
        sideways: document.documentElement.scrollWidth - innerWidth,
      })
      const before = count.textContent
      stage.dispatchEvent(new KeyboardEvent('keydown', { key: 'PageDown', bubbles: true }))
      if (count.textContent === before) return cards
    }
  })
  return seen.map((card) => ({ ...card, title: plain(card.title), text: plain(card.text) }))
}

/** Goes on by key to the next card whose title ends so. */
export async function goToCard(page: Page, title: string): Promise<void> {
  const found = await page.evaluate((wanted) => {
    const stage = document.querySelector('[data-stage]')
    const titleNow = (): string => stage?.querySelector('h2')?.textContent?.replace(/\s+/g, ' ').trim() ?? ''
    for (let tries = 0; tries < 100 && !titleNow().endsWith(wanted); tries++)
      stage?.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowRight', bubbles: true }))
    return titleNow()
  }, plain(title))
  if (!found.endsWith(plain(title))) throw new Error(`no card "${title}": the last is "${found}"`)
}
