import { escapeText } from '../drawings/svg.ts'

/** Trusted markup of this site; text inserted in it is escaped. */
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

/** Template tag that escapes values, except those that are markup already. */
export function html(parts: TemplateStringsArray, ...values: readonly Inside[]): Markup {
  return new Markup(parts.map((part, index) => part + written(values[index] ?? null)).join(''))
}

/** Marks a string as trusted markup, such as a drawing. */
export const made = (markup: string): Markup => new Markup(markup)
