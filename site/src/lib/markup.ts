import { escapeText } from '../drawings/svg.ts'

/** Markup made on this site; whatever text goes into it is escaped. */
export class Markup {
  readonly text: string

  constructor(text: string) {
    this.text = text
  }
}

type Inside = string | number | Markup | null | readonly (string | Markup | null)[]

function written(inside: Inside): string {
  if (inside === null) return ''
  if (inside instanceof Markup) return inside.text
  if (typeof inside === 'string' || typeof inside === 'number') return escapeText(String(inside))
  return inside.map(written).join('')
}

/** A template whose values are escaped, except those that are markup already. */
export function html(parts: TemplateStringsArray, ...values: readonly Inside[]): Markup {
  return new Markup(parts.map((part, index) => part + written(values[index] ?? null)).join(''))
}

/** A drawing or another piece that was made as a string of markup. */
export const made = (markup: string): Markup => new Markup(markup)
