import { circle, drawing, line, rect, text } from '../../drawings/svg.ts'
import type { LessonPicture } from '../lesson/lesson.ts'

const width = 360
const margin = 44
const top = 40
const drop = 84

/** The circuit as one line: places out along the top, in the order of the current, and back beneath. */
export function circuitLine(
  title: string,
  out: readonly string[],
  back: readonly string[],
  notes: readonly { readonly at: number; readonly words: string }[],
): LessonPicture {
  const along = (count: number, index: number): number => margin + (index * (width - 2 * margin)) / Math.max(1, count - 1)
  const bottom = top + drop
  const place = (x: number, y: number, name: string, under: boolean) => circle(x, y, 5, 'metal') + text(x, under ? y + 20 : y - 12, name)
  const wires = [
    line(margin, top, width - margin, top, 'series'),
    line(margin, bottom, width - margin, bottom, 'series'),
    line(margin, top, margin, bottom, 'axis'),
    line(width - margin, top, width - margin, bottom, 'axis'),
    rect(margin - 28, top + drop / 2 - 13, 56, 26, 'insulation'),
    rect(width - margin - 28, top + drop / 2 - 13, 56, 26, 'insulation'),
    text(margin, top + drop / 2 + 5, 'source'),
    text(width - margin, top + drop / 2 + 5, 'load'),
  ]
  const noted = notes.map(({ at, words }) => text((along(out.length, at) + along(out.length, at + 1)) / 2, top + 18, words))
  return {
    svg: drawing(
      width,
      bottom + 28,
      title,
      ...wires,
      ...out.map((name, index) => place(along(out.length, index), top, name, false)),
      ...back.map((name, index) => place(along(back.length, index), bottom, name, true)),
      ...noted,
    ),
    sentence: `Out: ${out.join(', ')}; back: ${back.join(', ')}${notes.length === 0 ? '' : `. ${notes.map(({ words }) => words).join('; ')}`}.`,
  }
}
