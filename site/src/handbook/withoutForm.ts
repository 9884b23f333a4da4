import type { Entry } from '../../../tests/docs/extract.ts'

/** Why a function has no form, and the page that helps instead. */
export interface WithoutForm {
  readonly words: string
  /** Path from the site's base, and what stands there. */
  readonly instead?: { readonly path: string; readonly words: string }
}

const holdsFunction = (value: unknown): boolean =>
  typeof value === 'function' || (typeof value === 'object' && value !== null && Object.values(value).some(holdsFunction))

const valuesIn = (value: unknown): number =>
  typeof value === 'object' && value !== null ? Object.values(value).reduce<number>((sum, inner) => sum + valuesIn(inner), 0) : 1

/** The reason, read from the example's arguments. */
export function whyWithoutForm(argumentsText: string, inputs: readonly unknown[], all: readonly Entry[]): WithoutForm {
  if (argumentsText.trim() === '') return { words: 'It takes no input.' }
  if (inputs.some(holdsFunction)) return { words: 'One of its inputs is a function of your own, which no form can hold.' }
  const made = all.find(({ kind, name }) => kind === 'function' && new RegExp(`^${name}\\(`).test(argumentsText.trim()))
  if (made !== undefined) return { words: `Its input is what ${made.name} gives.`, instead: { path: `handbook/${made.name}/`, words: 'its page' } }
  if (inputs.every((input) => Array.isArray(input) && input.length === 0)) return { words: 'Its input is a stream of rows, one after the other.' }
  return {
    words: `Its input is a whole job, ${valuesIn(inputs)} values in the example.`,
    instead: { path: 'plan/', words: 'The plan page asks for one, step by step.' },
  }
}
