import { escapeText } from '../../drawings/svg.ts'
import type { AnswerPart } from './question.ts'

const items = (list: readonly string[]): string => list.map((item) => `<li>${escapeText(item)}</li>`).join('')

/** One answer as markup, at build time and on the page. */
export function answerMarkup(part: AnswerPart): string {
  const values = part.values.map((value) => `<dt>${escapeText(value.name)}</dt><dd>${escapeText(value.text)}</dd>`).join('')
  return [
    `<p class="short">${escapeText(part.sentence)}</p>`,
    part.drawing ?? '',
    values === '' ? '' : `<dl class="values">${values}</dl>`,
    part.notes.length === 0 ? '' : `<ul>${items(part.notes)}</ul>`,
  ].join('')
}
