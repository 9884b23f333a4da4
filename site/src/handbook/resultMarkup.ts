import { escapeText } from '../drawings/svg.ts'
import { quantityText } from '../learn/quantityText.ts'
import { wordsOf } from '../methodPage/readable.ts'

/** Of a longer list only both ends are shown. */
const longest = 12
/** Most values shown of one result; the code example has all of them. */
const mostLines = 80
const longestText = 240
const longestShort = 80

const inWords = (key: string): string => {
  const { words } = wordsOf(key)
  return words === '' ? key : words
}

function plain(value: unknown, unit: string): string {
  if (value === null || value === undefined) return 'none'
  if (typeof value === 'number') return quantityText(value, unit === '' ? '1' : unit)
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  const text = String(value)
  return text.length > longestText ? `${text.slice(0, longestText)} … (${text.length} characters)` : text
}

/** Every plain value of a result, labelled by its path. */
function lines(value: unknown, unit: string, place: readonly string[]): readonly (readonly [string, string])[] {
  if (typeof value !== 'object' || value === null) return [[place.join(', '), plain(value, unit)]]
  if (Array.isArray(value)) {
    if (value.length === 0) return [[place.join(', '), 'none']]
    if (value.every((item) => typeof item !== 'object' || item === null)) {
      const shown =
        value.length > longest
          ? [...value.slice(0, longest - 1).map((item) => plain(item, '')), `… ${value.length} in all`]
          : value.map((item) => plain(item, ''))
      return [[place.join(', '), `${shown.join('; ')}${unit === '' ? '' : ` ${unit}`}`]]
    }
    const some = value.slice(0, longest)
    return [
      ...some.flatMap((item, at) => lines(item, unit, [...place, String(at + 1)])),
      ...(value.length > longest ? [[place.join(', '), `${value.length} in all`] as const] : []),
    ]
  }
  return Object.entries(value).flatMap(([key, inner]) => lines(inner, wordsOf(key).unit, [...place, inWords(key)]))
}

/** A stream as the list of its first items; any other result as it is. */
export async function gathered(value: unknown): Promise<unknown> {
  if (typeof value !== 'object' || value === null || !(Symbol.asyncIterator in value)) return value
  const items: unknown[] = []
  for await (const item of value as AsyncIterable<unknown>) if (items.push(item) >= longest) break
  return items
}

/** A result: a single number in large type, several as a list. */
export function resultMarkup(value: unknown, unit: string): string {
  // A whole report or page is text, not a figure.
  if (typeof value === 'string' && value.length > longestShort) return `<pre tabindex="0">${escapeText(plain(value, unit))}</pre>`
  if (typeof value !== 'object' || value === null) return `<p class="short">${escapeText(plain(value, unit))}</p>`
  const all = lines(value, '', [])
  const rows = all.length > mostLines ? [...all.slice(0, mostLines), ['…', `${all.length} values in all`] as const] : all
  return `<dl class="values">${rows.map(([words, text]) => `<dt>${escapeText(words)}</dt><dd>${escapeText(text)}</dd>`).join('')}</dl>`
}
