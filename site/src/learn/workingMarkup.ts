import type { Explanation } from '@strandwise/working/formulas'
import { escapeText } from '../drawings/svg.ts'
import { equationMarkup, mathml } from './mathml.ts'

const shownDigits = 5

const raised = (power: string): string => [...power.replace('+', '')].map((sign) => (sign === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(sign)])).join('')

/** A number as a page prints it: a power of ten stands as one. */
function numberText(value: number): string {
  const [mantissa = '', power] = String(Number(value.toPrecision(shownDigits))).split('e')
  return `${mantissa.replace('-', '−')}${power === undefined ? '' : ` · 10${raised(power)}`}`
}

/** Where a value or a rule comes from, in one line. */
export function sourceText(source: Explanation['source']): string {
  const place = [source.source, source.edition, source.clause].filter((part) => part !== undefined && part !== '').join(', ')
  return `${place} (${source.status})`
}

const quantityText = (value: number, unit: string): string => (unit === '1' ? numberText(value) : `${numberText(value)} ${unit}`)

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
    // A closed form stands in its last step already.
    steps.some((step) => step.tex.startsWith(formulaTex)) ? '' : equationMarkup(formulaTex),
    `<dl class="values">${named.join('')}</dl>`,
    `<ol class="put-in">${shown.join('')}</ol>`,
    list(explanation.notes),
    `<p class="rests">Holds: ${escapeText(explanation.validity.join('; '))}. From: ${escapeText(sourceText(explanation.source))}.</p>`,
    '</div>',
  ].join('')
}
