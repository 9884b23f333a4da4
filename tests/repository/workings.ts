import type { Entry } from '../docs/extract.ts'
import { type Working, type WorkingStep, type WorkingSymbol, workingOf } from '../docs/working.ts'
import { exportsOf } from './source.ts'
import type { TreeFile } from './tree.ts'

const folder = 'packages/working/src/formulas'
const header = '// Made from the docstrings of core by "npm test -- --update-api"; change the docstring instead.'

interface Read {
  readonly entry: Entry
  readonly working: Working
}

const quoted = (text: string): string => `'${text.replaceAll('\\', '\\\\').replaceAll("'", "\\'")}'`

/** Optional access along "a.b" in a value that may lack it. */
const reach = (from: string, path: string): string =>
  from +
  path
    .split('.')
    .map((key) => (/^\d+$/.test(key) ? `?.[${key}]` : `?.${key}`))
    .join('')

function originText({ input, constant }: WorkingSymbol): string {
  if (input === undefined) return `() => ${constant}`
  return constant === undefined ? quoted(input) : `(i) => ${reach('i', input).replace('?.', '.')} ?? ${constant}`
}

function stepText({ name, tex, unit, meaning, expression, of }: WorkingStep): string {
  const path = of === undefined ? '' : `, of: ${quoted(of)}`
  return `    { name: ${quoted(name)}, tex: ${quoted(tex)}, unit: ${quoted(unit)}, meaning: ${quoted(meaning)}, expression: ${quoted(expression)}${path} },`
}

/** Status of a source: 'published' unless it says derived or from memory. */
function provenance(source: string): string {
  if (/^derived\b/.test(source)) return `derived(${quoted(source.replace(/^derived:? /, ''))})`
  if (/\bfrom memory\b/.test(source)) return `fromMemory(${quoted(source.replace(/[:;,]? ?\(?(both )?from memory\)?:? ?/, ''))})`
  return `published(${quoted(source)})`
}

function formulaText(entry: Entry, { symbols, steps, results }: Working): string {
  const { name, parameters, doc } = entry
  const [first] = parameters
  const positional = parameters.length !== 1 || first?.leaves[0]?.path === ''
  const inputs = positional
    ? `{ ${parameters.map((one, at) => `readonly ${one.name}: Parameters<typeof ${name}>[${at}]`).join('; ')} }`
    : `Parameters<typeof ${name}>[0]`
  const names = parameters.map((one) => one.name).join(', ')
  const validity = doc.remarks.length > 0 ? doc.remarks : ['inputs within the domain that the function checks']
  return [
    `/** The working of ${name}. */`,
    `export const ${name}Formula = closed<${inputs}>({`,
    `  id: ${quoted(name)},`,
    `  call: ${positional ? `({ ${names} }) => ${name}(${names})` : name},`,
    '  symbols: {',
    ...symbols.map(
      (one) => `    ${one.name}: { tex: ${quoted(one.tex)}, unit: ${quoted(one.unit)}, of: ${originText(one)}, meaning: ${quoted(one.meaning)} },`,
    ),
    '  },',
    ...(steps.length === 0 ? [] : ['  steps: [', ...steps.map(stepText), '  ],']),
    '  results: [',
    ...results.map(stepText),
    '  ],',
    `  source: ${provenance(doc.sources[0] ?? '')},`,
    `  validity: [${validity.map(quoted).join(', ')}],`,
    '})',
  ].join('\n')
}

/** Imports of a room's workings from core: functions and constants, by the room that exports them. */
function importsFor(read: readonly Read[], values: ReadonlyMap<string, string>): readonly string[] {
  const constants = read.flatMap(({ working }) => working.symbols.flatMap(({ constant }) => (constant === undefined ? [] : [constant.split('.')[0] ?? ''])))
  const taken = [...read.map(({ entry }) => [entry.room, entry.name] as const), ...constants.map((name) => [values.get(name) ?? '', name] as const)]
  const rooms = [...new Set(taken.map(([room]) => room))].sort()
  return rooms.map(
    (room) => `import { ${[...new Set(taken.flatMap(([own, name]) => (own === room ? [name] : [])))].sort().join(', ')} } from '@strandwise/core/${room}'`,
  )
}

/** Hand-written workings by function name: exports named <function>Formula. */
function writtenByHand(files: readonly TreeFile[]): ReadonlyMap<string, string> {
  const own = files.filter(
    ({ path }) => new RegExp(`^${folder}/[^/]+/[^/]+\\.ts$`).test(path) && !path.endsWith('.test.ts') && !path.endsWith('/fromDocstrings.ts'),
  )
  return new Map(
    own.flatMap((file) => exportsOf(file).flatMap(({ name }) => (name.endsWith('Formula') ? [[name.slice(0, -'Formula'.length), file.path] as const] : []))),
  )
}

/** Generated files of working: for each room of core the workings of its docstrings, and the registry. */
export function madeWorkings(entries: readonly Entry[], files: readonly TreeFile[]): readonly TreeFile[] {
  const core = entries.filter((entry) => entry.package === 'core')
  const values = new Map(core.flatMap(({ kind, name, room }) => (kind === 'value' ? [[name, room] as const] : [])))
  const byHand = writtenByHand(files)
  const read = core.flatMap((entry): readonly Read[] => {
    const working = byHand.has(entry.name) ? undefined : workingOf(entry, new Set(values.keys()))
    return working === undefined ? [] : [{ entry, working }]
  })
  const rooms = [...new Set(read.map(({ entry }) => entry.room))].sort()
  const made = rooms.map((room) => {
    const own = read.filter(({ entry }) => entry.room === room)
    const texts = own.map(({ entry, working }) => formulaText(entry, working))
    const kinds = ['derived', 'fromMemory', 'published'].filter((kind) => texts.some((text) => text.includes(`source: ${kind}(`)))
    const imports = [...importsFor(own, values), "import { closed } from '../formula.ts'", `import { ${kinds.join(', ')} } from '../sources.ts'`]
    return { path: `${folder}/${room}/fromDocstrings.ts`, text: `${header}\n${imports.join('\n')}\n\n${texts.join('\n\n')}\n` }
  })
  const places = new Map([...byHand, ...read.map(({ entry }) => [entry.name, `${folder}/${entry.room}/fromDocstrings.ts`] as const)])
  return [...made, { path: `${folder}/formulas.ts`, text: registryText(places) }]
}

/** Text of the registry, sorted by room and name. */
function registryText(places: ReadonlyMap<string, string>): string {
  const byFile = new Map<string, string[]>()
  for (const [name, path] of places) byFile.set(path, [...(byFile.get(path) ?? []), name])
  const files = [...byFile].map(([path, names]) => [`./${path.slice(folder.length + 1)}`, names.sort()] as const).sort(([a], [b]) => (a < b ? -1 : 1))
  return [
    header,
    ...files.map(([path, names]) => `import { ${names.map((name) => `${name}Formula`).join(', ')} } from '${path}'`),
    "import type { Formula } from './formula.ts'",
    '',
    '/** Every formula that can show its working, by the name of its core function. */',
    'export const formulas: Readonly<Record<string, Formula>> = {',
    ...files.flatMap(([, names]) => names.map((name) => `  ${name}: ${name}Formula,`)),
    '}',
    '',
  ].join('\n')
}
