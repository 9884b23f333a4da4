import { drawing, line, text } from '../../drawings/svg.ts'

const width = 360
const margin = 14
/** Between two marks: room for "0 mm" and half of the next number. */
const leastStep = 48

/** A part drawn to scale above a millimetre rule. */
export function besideRuler(lengthMm: number, heightMm: number, title: string, draw: (perMm: number, x0: number, axis: number) => string): string {
  const perMm = (width - 2 * margin) / Math.max(lengthMm, 1)
  const half = Math.max((heightMm / 2) * perMm, 6)
  const axis = 12 + half
  const rule = axis + half + 14
  const step = [1, 2, 5, 10, 20, 50, 100, 200].find((mm) => mm * perMm >= leastStep) ?? 500
  const marks = Array.from({ length: Math.floor(lengthMm / step) + 1 }, (_, at) => at * step)
  return drawing(
    width,
    rule + 34,
    title,
    draw(perMm, margin, axis),
    line(margin, rule, margin + lengthMm * perMm, rule, 'dimension'),
    ...marks.map((mm) => line(margin + mm * perMm, rule, margin + mm * perMm, rule + 7, 'dimension')),
    ...marks.map((mm) => text(margin + mm * perMm, rule + 22, mm === 0 ? '0 mm' : String(mm), mm === 0 ? 'start' : 'middle')),
  )
}
