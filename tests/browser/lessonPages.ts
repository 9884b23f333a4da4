import type { Page } from 'playwright-core'
import { lessons } from '../../site/src/learn/lessons.ts'
import { textOf } from './learnPage.ts'

/** Every lesson with its id as the test's name. */
export const everyLesson = lessons.map((lesson) => [lesson.id, lesson] as const)

export const pathOf = (id: string, page = ''): string => `examples/${id}/${page}`

export const titleOnBoard = (page: Page): Promise<string> => textOf(page, 'dialog h2')

/** Present card and number of cards of the board. */
export async function cardOf(page: Page): Promise<{ readonly at: number; readonly count: number }> {
  const [at = 0, count = 0] = (await textOf(page, 'dialog [data-count]')).split(' of ').map(Number)
  return { at, count }
}

/** Steps through all cards by key and calls `each` on every one. */
export async function throughCards(page: Page, each: (at: number, title: string) => Promise<void>): Promise<number> {
  await page.click('[data-open]')
  const { count } = await cardOf(page)
  for (let at = 1; at <= count; at++) {
    await each(at, await titleOnBoard(page))
    if (at < count) await page.keyboard.press('ArrowRight')
  }
  return count
}
