import { gather } from './gather.ts'

const name = 'virtual:method-facts'
const resolved = `\0${name}`

/** Hands the facts to the method page as a module, gathered when a page first asks. */
export function methodFacts() {
  let facts: Promise<string> | undefined
  return {
    name: 'method-facts',
    resolveId: (id: string) => (id === name ? resolved : undefined),
    load(id: string) {
      if (id !== resolved) return undefined
      facts ??= gather().then((found) => `export const facts = JSON.parse(${JSON.stringify(JSON.stringify(found))})`)
      return facts
    },
  }
}
