import { drawing, line, rect, text } from '../../drawings/svg.ts'
import type { LessonPicture } from '../lesson/lesson.ts'

const width = 360
const left = 8
const right = 74
const row = 40
const barHeight = 14

/** One bar; without a value it is the one that the class must find. */
export interface Bar {
  readonly name: string
  readonly value: number | null
  readonly text: string
  readonly kind?: 'metal' | 'solder' | 'sleeve' | 'insulation'
}

/** Values as bars on one scale, with an optional limit as a vertical line. A picture beside a slider gets `fullScale`, so that its bars change and not its scale. */
export function bars(title: string, items: readonly Bar[], limit?: { readonly value: number; readonly text: string }, fullScale = 0): LessonPicture {
  const largest = Math.max(...items.map(({ value }) => value ?? 0), limit?.value ?? 0, fullScale)
  const x = (value: number): number => left + (value / largest) * (width - left - right)
  const height = row * items.length + (limit === undefined ? 8 : 26)
  const drawn = items.map(({ name, value, text: words, kind = 'metal' }, index) => {
    const top = row * index + 20
    const bar = value === null ? rect(left, top, x(largest) - left, barHeight, 'limit') : rect(left, top, Math.max(1, x(value) - left), barHeight, kind)
    return text(left, top - 5, name, 'start') + bar + text((value === null ? x(largest) : x(value)) + 6, top + barHeight - 3, words, 'start')
  })
  const mark =
    limit === undefined
      ? ''
      : line(x(limit.value), 8, x(limit.value), height - 18, 'limit hot') +
        text(x(limit.value), height - 4, limit.text, limit.value > 0.6 * largest ? 'end' : limit.value < 0.3 * largest ? 'start' : 'middle')
  const said = items.map(({ name, text: words }) => `${name}: ${words}`).join('; ')
  return { svg: drawing(width, height, title, mark, ...drawn), sentence: `${said}${limit === undefined ? '' : `; ${limit.text}`}.` }
}
