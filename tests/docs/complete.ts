import type { Entry } from './extract.ts'

const errors = ['DomainError', 'UnknownEntryError', 'ConvergenceError', 'NoSteadyStateError', 'QuantityError', 'JobError']
/** `@throws nothing`. */
const nothing = /^nothing\b/

/** Path with list indices set to 0, where the index doesn't matter. */
const general = (path: string): string => path.replace(/(^|\.)\d+(?=\.|$)/g, '$10')

function covers(domainPath: string, leafPath: string): boolean {
  const wanted = general(leafPath).split('.')
  const given = general(domainPath).split('.')
  return wanted.length === given.length && given.every((segment, index) => segment === '*' || segment === wanted[index])
}

/** Paths of leaves as docstrings and errors write them: fields of a single input object bare, others after the parameter's name. */
export function writtenPaths(entry: Entry): readonly { readonly path: string; readonly kind: string; readonly listed: boolean; readonly optional: boolean }[] {
  return entry.parameters.flatMap(({ name, leaves }) =>
    leaves.map((leaf) => ({
      path: entry.parameters.length === 1 && leaf.path !== '' && !/^\d/.test(leaf.path) ? leaf.path : leaf.path === '' ? name : `${name}.${leaf.path}`,
      kind: leaf.kind,
      listed: leaf.choices !== undefined,
      optional: leaf.optional,
    })),
  )
}

/** Guards check an input and return it: they have no equation, and their domain is a parameter. The planner's functions have no equation either. */
const isGuard = (entry: Entry): boolean => entry.package === 'core' && entry.room === 'errors'

/** Missing parts of a function's docstring. */
function functionLacks(entry: Entry): string[] {
  const { doc } = entry
  const lacks: string[] = []
  if (doc.throws.length === 0) lacks.push('@throws')
  if (doc.examples.length === 0) lacks.push('@example')
  if (isGuard(entry) || entry.package === 'planner') return lacks
  if (doc.equations.length === 0) lacks.push('@equation')
  if (doc.symbols.length === 0) lacks.push('@symbol')
  if (doc.sources.length === 0) lacks.push('@source')
  for (const text of doc.throws) {
    if (!nothing.test(text) && !errors.some((name) => text.startsWith(name))) lacks.push(`@throws "${text}" names none of ${errors.join(', ')}, nor "nothing"`)
  }
  if (doc.domains.length > 0 && !doc.throws.some((text) => text.startsWith('DomainError'))) lacks.push('@throws DomainError')
  const paths = writtenPaths(entry)
  for (const { path, kind, listed } of paths) {
    if (kind === 'number' && !listed && !doc.domains.some((line) => covers(line.path, path))) lacks.push(`@domain ${path}`)
  }
  for (const line of doc.domains) {
    if (!paths.some(({ path, kind }) => kind === 'number' && covers(line.path, path))) lacks.push(`@domain ${line.path} belongs to no numeric parameter`)
  }
  return lacks
}

/** An entry with the domains of other functions copied in; an unknown function is reported. */
export function withShared(entry: Entry, all: readonly Entry[]): Entry {
  const problems: string[] = []
  const paths = writtenPaths(entry)
  const shared = entry.doc.domainsOf.flatMap((name) => {
    const other = all.find((one) => one.name === name && one.kind === 'function')
    if (other === undefined) problems.push(`@domain as ${name}: no function is called so`)
    return (other?.doc.domains ?? []).filter(
      (line) => paths.some(({ path, kind }) => kind === 'number' && covers(line.path, path)) && !entry.doc.domains.some((own) => own.path === line.path),
    )
  })
  return { ...entry, doc: { ...entry.doc, domains: [...entry.doc.domains, ...shared], problems: [...entry.doc.problems, ...problems] } }
}

/** All faults of an export's docstring; empty if complete. */
export function lacks(entry: Entry): readonly string[] {
  const found: string[] = [...entry.doc.problems]
  if (!/^.{4,}\.$/.test(entry.doc.sentence))
    found.unshift(entry.doc.sentence === '' ? 'a sentence' : `a sentence with a full stop, not "${entry.doc.sentence}"`)
  if (entry.kind === 'function') found.push(...functionLacks(entry))
  if (entry.kind === 'value' && entry.package === 'core' && entry.room === 'tables' && entry.doc.sources.length === 0) found.push('@source')
  return found
}
