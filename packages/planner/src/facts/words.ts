import type { PlanValue } from './finding.ts'
import { printedValue, type Units } from './print.ts'

/** A heading of at most 60 characters and text, with {name} as placeholder for a value or word. */
export interface FindingWords {
  readonly says: string
  readonly text: string
}
/** Texts of one section by code. */
export type SectionWords = Readonly<Record<string, FindingWords>>

/** Values for the placeholders. */
export interface Filling {
  readonly values?: Readonly<Record<string, PlanValue>>
  readonly names?: Readonly<Record<string, string>>
}

/** The first sentence of a finding's text: what, by how much, what to do. */
export const firstSentence = (text: string): string => text.split(/(?<=[.!?]) (?=[A-Z0-9])/)[0] ?? text

/** A template with its placeholders filled in the job's units. */
export function filled(template: string, { values = {}, names = {} }: Filling, units: Units): string {
  const text = template.replace(/\{(\w+)\}/g, (_, name: string) => {
    const value = Object.hasOwn(values, name) ? values[name] : undefined
    if (value !== undefined) return printedValue(value, units)
    const word = Object.hasOwn(names, name) ? names[name] : undefined
    if (word === undefined) throw new Error(`no value or word "${name}" for "${template}"`)
    return word
  })
  // Capitalises the first letter of each sentence.
  return text.replace(/(^|[.!?] )(\p{Ll})/gu, (_, before: string, letter: string) => before + letter.toUpperCase())
}
