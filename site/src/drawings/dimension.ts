import { line, path, text } from './svg.ts'

/** Half the length of the slanted tick that ends a dimension line. */
const tick = 3.5
/** Overhang of an extension line past the dimension line. */
const past = 4

const slash = (x: number, y: number): string => path(`M${x - tick} ${y + tick}L${x + tick} ${y - tick}`, 'dimension')

/** Width of a label's letter at most, and of a drawing. */
const letter = 7.4
const drawingWidth = 360

/** Words too wide for their dimension stand beside it, where there is room. */
function besideOrIn(x1: number, x2: number, y: number, away: number, words: string): string {
  const wide = letter * words.length
  const [fitsAfter, fitsBefore] = [x2 + 8 + wide <= drawingWidth, x1 - 8 - wide >= 0]
  if (wide <= x2 - x1 + 2 * past || !(fitsAfter || fitsBefore)) return text((x1 + x2) / 2, away > 0 ? y + 14 : y - 5, words)
  return fitsAfter ? text(x2 + 8, y + 4, words, 'start') : text(x1 - 8, y + 4, words, 'end')
}

/** A level dimension between two points of the drawing, at height y; extension lines come from y1. */
export function levelDimension(x1: number, x2: number, y: number, fromY: number, words: string): string {
  const away = Math.sign(y - fromY)
  return [
    line(x1, fromY, x1, y + past * away, 'extension'),
    line(x2, fromY, x2, y + past * away, 'extension'),
    line(x1, y, x2, y, 'dimension'),
    slash(x1, y),
    slash(x2, y),
    besideOrIn(x1, x2, y, away, words),
  ].join('')
}

/** An upright dimension at x, its words beside it. */
export function uprightDimension(x: number, y1: number, y2: number, fromX: number, words: string): string {
  const away = Math.sign(x - fromX)
  return [
    line(fromX, y1, x + past * away, y1, 'extension'),
    line(fromX, y2, x + past * away, y2, 'extension'),
    line(x, y1, x, y2, 'dimension'),
    slash(x, y1),
    slash(x, y2),
    text(x + 6 * away, (y1 + y2) / 2 + 4, words, away > 0 ? 'start' : 'end'),
  ].join('')
}
