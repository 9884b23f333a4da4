import { drawing, line, rect, text } from '../../drawings/svg.ts'
import type { LessonPicture } from '../lesson/lesson.ts'

const width = 360
const left = 12
const right = 12
const row = 44

/** Interval of a reading; with null ends it is the one that the class must find. */
export interface IntervalRow {
  readonly name: string
  readonly low: number | null
  readonly high: number | null
  readonly text: string
}

/** Intervals on one scale, with the limit they are compared with. A picture beside a slider gets the ends of its scale, so that its bars change and not its scale. */
export function intervals(
  title: string,
  rows: readonly IntervalRow[],
  limit: { readonly value: number; readonly text: string },
  scale: readonly number[] = [],
): LessonPicture {
  const ends = [...rows.flatMap(({ low, high }) => [low ?? 0, high ?? 0]), ...scale]
  const [from, to] = [Math.min(0, limit.value, ...ends), Math.max(limit.value, ...ends)]
  const x = (value: number): number => left + ((value - from) / (to - from || 1)) * (width - left - right)
  const height = row * rows.length + 40
  const drawn = rows.map(({ name, low, high, text: words }, index) => {
    const top = row * index + 22
    const bar =
      low === null || high === null ? rect(left, top, width - left - right, 12, 'limit') : rect(x(low), top, Math.max(2, x(high) - x(low)), 12, 'solder')
    return text(left, top - 6, `${name}: ${words}`, 'start') + bar
  })
  const axis = height - 22
  return {
    svg: drawing(
      width,
      height,
      title,
      line(left, axis, width - right, axis, 'axis'),
      line(x(0), axis - 4, x(0), axis + 4, 'axis'),
      text(x(0), axis + 16, '0'),
      line(x(limit.value), 4, x(limit.value), axis + 4, 'limit hot'),
      ...drawn,
      text(x(limit.value) + (x(limit.value) > width / 2 ? -4 : 10), axis + 16, limit.text, x(limit.value) > width / 2 ? 'end' : 'start'),
    ),
    sentence: `${rows.map(({ name, text: words }) => `${name}: ${words}`).join('; ')}; ${limit.text}.`,
  }
}
