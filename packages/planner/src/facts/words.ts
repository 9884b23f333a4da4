import type { PlanValue } from './finding.ts'
import { printedValue, type Units } from './print.ts'

/** A heading of at most 60 characters and its sentences, with {name} where a value or a word stands. */
export interface FindingWords {
  readonly says: string
  readonly text: string
}
/** The words of one section: a code, its heading, its sentences. */
export type SectionWords = Readonly<Record<string, FindingWords>>

/** What a sentence is filled with. */
export interface Filling {
  readonly values?: Readonly<Record<string, PlanValue>>
  readonly names?: Readonly<Record<string, string>>
}

/** The sentence that says what, by how much, what to do: the first of a finding's text. */
export const firstSentence = (text: string): string => text.split(/(?<=[.!?]) (?=[A-Z0-9])/)[0] ?? text

/** A sentence with its values in the job's units and its words in place. */
export function filled(template: string, { values = {}, names = {} }: Filling, units: Units): string {
  const text = template.replace(/\{(\w+)\}/g, (_, name: string) => {
    const value = Object.hasOwn(values, name) ? values[name] : undefined
    if (value !== undefined) return printedValue(value, units)
    const word = Object.hasOwn(names, name) ? names[name] : undefined
    if (word === undefined) throw new Error(`no value or word "${name}" for "${template}"`)
    return word
  })
  // A word that begins a sentence stands with a capital.
  return text.replace(/(^|[.!?] )(\p{Ll})/gu, (_, before: string, letter: string) => before + letter.toUpperCase())
}
