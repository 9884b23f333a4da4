import { element, line, path, rect, text } from './svg.ts'

/** A small decorative drawing; the words beneath it say the same. */
const small = (...inside: readonly string[]): string =>
  element('svg', { class: 'drawing door', viewBox: '0 0 120 56', 'aria-hidden': 'true', focusable: 'false' }, ...inside)

const strands = [22, 28, 34]

/** Drawings of the three entrances: a cut-back lead, a board with a card, a function between braces. */
export const doorDrawings = {
  plan: small(
    rect(1, 17, 56, 22, 'insulation'),
    ...strands.map((y, index) => line(57, y, 101 - 5 * index, y, 'strand')),
    path('M81 8V48M77 12L85 4M77 52L85 44', 'cut'),
  ),
  learn: small(rect(1, 6, 104, 44, 'insulation'), rect(27, 15, 52, 26, 'metal'), line(35, 24, 71, 24, 'strand'), line(35, 32, 59, 32, 'strand')),
  embed: small(path('M15 8C5 8 11 26 1 28C11 30 5 48 15 48M67 8C77 8 71 26 81 28C71 30 77 48 67 48', 'bracket'), text(41, 33, 'Ω(mm)')),
} as const
