import { element, line, path, rect, text } from './svg.ts'

/** A small decorative drawing; the words beneath it say the same. */
const small = (...inside: readonly string[]): string =>
  element('svg', { class: 'drawing door', viewBox: '0 0 120 56', 'aria-hidden': 'true', focusable: 'false' }, ...inside)

const strands = [22, 28, 34]

/** Drawings of the three entrances: a cut-back lead, a board with a card, a function between braces. */
export const doorDrawings = {
  plan: small(
    rect(4, 17, 56, 22, 'insulation'),
    ...strands.map((y, index) => line(60, y, 104 - 5 * index, y, 'strand')),
    path('M84 8V48M80 12L88 4M80 52L88 44', 'cut'),
  ),
  learn: small(rect(8, 6, 104, 44, 'insulation'), rect(34, 15, 52, 26, 'metal'), line(42, 24, 78, 24, 'strand'), line(42, 32, 66, 32, 'strand')),
  embed: small(path('M34 8C24 8 30 26 20 28C30 30 24 48 34 48M86 8C96 8 90 26 100 28C90 30 96 48 86 48', 'bracket'), text(60, 33, 'Ω(mm)')),
} as const
