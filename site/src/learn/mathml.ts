import katex from 'katex'
import { unitText } from './quantityText.ts'

/** A line with more characters than this, about a phone's width, also breaks at plus signs and bracketed factors. */
const longLine = 32

/** Approximate number of characters shown. */
const shownLength = (tex: string): number => tex.replace(/\\[a-zA-Z]+/g, 'x').replace(/[{}^_\\, ]/g, '').length

/** Splits TeX at a sign outside all brackets; the sign starts the next part. */
function splitAt(tex: string, sign: RegExp): readonly string[] {
  const parts: string[] = []
  let depth = 0
  let from = 0
  for (let at = 0; at < tex.length; at += 1) {
    const rest = tex.slice(at)
    if (depth === 0 && at > from && sign.test(rest)) {
      parts.push(tex.slice(from, at))
      from = at
    }
    if (tex[at] === '{' || rest.startsWith('\\left')) depth += 1
    if (tex[at] === '}' || rest.startsWith('\\right')) depth -= 1
  }
  return [...parts, tex.slice(from)].map((part) => part.trim()).filter((part) => part !== '')
}

/** Breaks, in order: separate equations, equals signs, plus signs, factors. */
const signs = { list: /^,\\quad /, equal: /^ =/, plus: /^\+/, factor: /^\\cdot\\left/ } as const

const isShort = (part: string): boolean => shownLength(part) <= longLine

/** Keeps the left-hand side with its first equation if both fit in a line. */
function firstTogether(parts: readonly string[]): readonly string[] {
  const [name, first, ...others] = parts
  if (name === undefined || first === undefined || !isShort(`${name} ${first}`)) return parts
  return [`${name} ${first}`, ...others]
}

function shortLines(tex: string): readonly string[] {
  return splitAt(tex, signs.list)
    .map((part) => part.replace(signs.list, ''))
    .flatMap((part) => firstTogether(splitAt(part, signs.equal)))
    .flatMap((part) => (isShort(part) ? [part] : splitAt(part, signs.plus)))
    .flatMap((part) => (isShort(part) ? [part] : splitAt(part, signs.factor)))
}

/** One formula as MathML, without its TeX source and without anything that a strict style policy would drop. */
export function mathml(tex: string, display: 'block' | 'inline' = 'inline'): string {
  const markup = katex.renderToString(tex, { output: 'mathml', displayMode: display === 'block', strict: 'ignore', throwOnError: true })
  const found = /<math[\s\S]*<\/math>/.exec(markup)?.[0]
  if (found === undefined || found.includes('style=')) throw new Error(`no plain MathML for ${tex}`)
  return (
    found
      .replace(/<annotation[^>]*>[\s\S]*?<\/annotation>/, '')
      .replace(/<\/?semantics>/g, '')
      // One row inside each root: the style sheet draws the sign around it, as high as the row.
      .replaceAll('<msqrt>', '<msqrt><mrow>')
      .replaceAll('</msqrt>', '</mrow></msqrt>')
  )
}

/** Separates a unit from its number, and spells out a unit that begins with 1. */
const apart = (tex: string): string =>
  tex.replace(/\\,\\mathrm\{(1\/m{1,2}|1\/K|1\/s)\}/g, (_found, unit: string) => `\\ \\text{${unitText(unit)}}`).replaceAll('\\,\\mathrm', '\\ \\mathrm')

/** A chain of equations, broken at equals signs to fit a narrow page. */
export function equationMarkup(tex: string): string {
  return `<div class="equation">${shortLines(apart(tex))
    .map((line) => `<div${/^(\+|\\cdot)/.test(line) ? ' class="goes-on"' : ''}>${mathml(line, 'block')}</div>`)
    .join('')}</div>`
}
