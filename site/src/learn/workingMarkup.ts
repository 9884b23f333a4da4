import type { Explanation } from '@strandwise/working/formulas'
import { escapeText } from '../drawings/svg.ts'
import { equationMarkup, mathml } from './mathml.ts'
import { quantityText } from './quantityText.ts'

/** Source of a value or a rule, in one line. */
export function sourceText(source: Explanation['source']): string {
  const place = [source.source, source.edition, source.clause].filter((part) => part !== undefined && part !== '').join(', ')
  return `${place} (${source.status})`
}

const list = (items: readonly string[]): string => (items.length === 0 ? '' : `<ul>${items.map((item) => `<li>${escapeText(item)}</li>`).join('')}</ul>`)

/** The working of a formula as markup: the formula, each step with its numbers, the symbols, where it comes from and where it holds. */
export function workingMarkup(explanation: Explanation): string {
  const { steps, symbols, formulaTex } = explanation
  const shown = steps.map((step) => `<li><p>${escapeText(step.text)}</p>${equationMarkup(step.tex)}</li>`)
  const named = symbols.map(
    (symbol) => `<dt>${mathml(symbol.tex)} ${escapeText(symbol.meaning)}</dt><dd>${escapeText(quantityText(symbol.value, symbol.unit))}</dd>`,
  )
  return [
    '<div class="working">',
    // A closed form is already part of its last step.
    steps.some((step) => step.tex.startsWith(formulaTex)) ? '' : equationMarkup(formulaTex),
    `<dl class="values">${named.join('')}</dl>`,
    `<ol class="put-in">${shown.join('')}</ol>`,
    list(explanation.notes),
    `<p class="rests">Holds: ${escapeText(explanation.validity.join('; ').replace(/\.$/, ''))}. From: ${escapeText(sourceText(explanation.source))}.</p>`,
    '</div>',
  ].join('')
}
