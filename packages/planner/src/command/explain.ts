import { ConvergenceError, DomainError, NoSteadyStateError, UnknownEntryError } from '@strandwise/core/errors'
import { type Explanation, formulas, explain as working } from '@strandwise/working/formulas'
import { closest } from 'fastest-levenshtein'
import { explanationMarkdown, explanationText } from './explanation.ts'
import { formatOf } from './format.ts'
import { namedValues } from './namedValues.ts'
import { exitCodes, type Options, type Streams } from './streams.ts'
import { Unusable } from './unusable.ts'

const formats: Readonly<Record<string, (shown: Explanation) => string>> = {
  text: explanationText,
  markdown: explanationMarkdown,
  json: (shown) => `${JSON.stringify(shown, null, 2)}\n`,
}

const near = (name: string, known: readonly string[]): string => (known.length === 0 ? '' : `; the closest is ${closest(name.slice(0, 60), known)}`)

/** Proxies of the inputs that record which names the formula's function reads. */
function watched(inputs: Readonly<Record<string, unknown>>) {
  const asked = new Set<string>()
  const proxy = new Proxy(inputs, {
    get(target, key) {
      if (typeof key === 'string') asked.add(key)
      return Reflect.get(target, key) as unknown
    },
  })
  return { proxy, asked }
}

/** Refuses inputs that the function never read. */
function refuseUnasked(id: string, inputs: Readonly<Record<string, unknown>>, asked: ReadonlySet<string>): void {
  const known = [...asked].filter((name) => name !== 'toJSON')
  const lines = Object.keys(inputs)
    .filter((name) => !asked.has(name))
    .map((name) => `${name}: ${id} takes no such input; it takes ${known.join(', ')}${near(name, known)}`)
  if (lines.length > 0) throw new Unusable(...lines)
}

function shownFor(id: string, inputs: Readonly<Record<string, unknown>>): Explanation {
  const formula = Object.hasOwn(formulas, id) ? formulas[id] : undefined
  if (formula === undefined) throw new Unusable(`explain: no formula "${id.slice(0, 60)}"${near(id, Object.keys(formulas))}; without a name all are listed`)
  const { proxy, asked } = watched(inputs)
  try {
    formula.call(proxy)
    refuseUnasked(id, inputs, asked)
    return working(id, inputs)
  } catch (error) {
    if (error instanceof DomainError) {
      const stray = Object.keys(inputs).filter((name) => !asked.has(name))
      const misspelt = error.value === undefined && stray.length > 0 ? `; you gave ${closest(error.parameter, stray)}` : ''
      const value = error.value === undefined ? 'missing' : `is ${typeof error.value === 'string' ? `"${error.value.slice(0, 60)}"` : String(error.value)}`
      throw new Unusable(`${error.parameter}: ${value}; allowed: ${error.allowed}${misspelt}`)
    }
    if (error instanceof UnknownEntryError) throw new Unusable(`${error.message}${near(String(error.value), error.known)}`)
    if (error instanceof NoSteadyStateError || error instanceof ConvergenceError) throw new Unusable(`${id}: ${error.message}`)
    throw error
  }
}

/** strandwise explain: a formula with numbers substituted, its steps, source and validity; without a name, the list of formulas. */
export function explain([id, ...given]: readonly string[], { format }: Options, { stdout }: Streams): number {
  const print = formatOf(formats, format)
  if (id === undefined) stdout.write(`${Object.keys(formulas).sort().join('\n')}\n`)
  else stdout.write(print(shownFor(id, namedValues(given))))
  return exitCodes.sound
}
