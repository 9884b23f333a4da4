import type { Explanation } from '@strandwise/working/formulas'
import { escapeText } from '../drawings/svg.ts'
import { equationMarkup, mathml, unitText } from './mathml.ts'

const shownDigits = 5

/** A number outside this range gets a unit prefix or a power of ten. */
const long = { from: 1e6, below: 1e-4 } as const
const isLong = (value: number): boolean => value !== 0 && (Math.abs(value) >= long.from || Math.abs(value) < long.below)

const thousand = 3
/** Prefixes by power of ten; squared units such as mm², and units with a prefix, take none. */
const prefixes: Readonly<Record<number, string>> = { 9: 'G', 6: 'M', [-6]: 'µ', [-9]: 'n', [-12]: 'p' }
const takesPrefix = /^(?:Ω|S|W|V|A|J|N|Pa|Hz)(?![\w²³^])/

const signed = (digits: number): string => String(digits).replace('-', '−')
const raised = (power: number): string => [...String(power)].map((sign) => (sign === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(sign)])).join('')
const withUnit = (number: string, unit: string): string => (unit === '1' ? number : `${number} ${unitText(unit)}`)

/** A value as a page prints it, without long rows of zeros. */
export function quantityText(value: number, unit: string): string {
  if (!isLong(value)) return withUnit(signed(Number(value.toPrecision(shownDigits))), unit)
  const [mantissa = '0', exponent = '0'] = value.toExponential(shownDigits - 1).split('e')
  const power = Number(exponent)
  const step = thousand * Math.floor(power / thousand)
  const prefix = takesPrefix.test(unit) ? prefixes[step] : undefined
  if (prefix !== undefined) return `${signed(Number((Number(mantissa) * 10 ** (power - step)).toPrecision(shownDigits)))} ${prefix}${unit}`
  return withUnit(`${signed(Number(mantissa))} · 10${raised(power)}`, unit)
}

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
