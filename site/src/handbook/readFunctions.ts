import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { formulas } from '@strandwise/working/formulas'
import { type Figure, figures } from '../../../references/count/figures.ts'
import { unchecked } from '../../../references/count/unchecked.ts'
import { entries } from '../../../tests/docs/entries.ts'
import { evaluate, parseExample } from '../../../tests/docs/example.ts'
import type { Entry } from '../../../tests/docs/extract.ts'
import { scope } from '../../../tests/docs/scope.ts'
import { equationTex, printedUnit, texOfName } from '../../../tests/docs/working.ts'
import { wordsOf } from '../methodPage/readable.ts'
import type { HandCheck, HandFunction, HandUse } from './facts.ts'
import { formOf } from './formFields.ts'
import type { FunctionCode } from './functionCode.ts'
import { whyWithoutForm } from './withoutForm.ts'

const root = fileURLToPath(new URL('../../../', import.meta.url))

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1)

/** "wireSagMm" as "Wire sag". */
export function titleOf(name: string): string {
  const { words } = wordsOf(name)
  const named = words
    .replace(/\b(?:astm|awg|cfr|faa|iec|iso|nec|sae|[a-z]{1,2}\d{3,})\b/g, (word) => word.toUpperCase())
    .replace(/\b(?:bernstein|churchill|nusselt|onderdonk|preece|rayleigh)\b/g, capital)
  return capital(named)
}

interface UsedIn {
  readonly use: HandUse
  readonly text: string
}

const sourceFilesIn = (folder: string): readonly string[] =>
  readdirSync(root + folder, { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`
    if (entry.isDirectory()) return sourceFilesIn(path)
    return /\.(ts|astro)$/.test(entry.name) && !/\.(test|sample)\.ts$/.test(entry.name) ? [path] : []
  })

/** Lessons and questions: a folder each, with id and title in one file. */
function learnUses(): readonly UsedIn[] {
  const tellers = sourceFilesIn('site/src/learn').filter((path) => /^site\/src\/learn\/(lessons|questions)\/[^/]+\/(lesson|question)\.ts$/.test(path))
  return tellers.flatMap((teller): readonly UsedIn[] => {
    const text = readFileSync(root + teller, 'utf8')
    const id = /\bid: '([a-z0-9-]+)'/.exec(text)?.[1]
    const title = /\btitle: '((?:[^'\\]|\\.)+)'/.exec(text)?.[1]
    if (id === undefined || title === undefined) return []
    const use = teller.endsWith('question.ts')
      ? { words: `Question: ${title}`, path: `questions/${id}/` }
      : { words: `Lesson: ${title}`, path: `examples/${id}/` }
    const folder = teller.slice(0, teller.lastIndexOf('/'))
    return [
      {
        use,
        text: sourceFilesIn(folder)
          .map((path) => readFileSync(root + path, 'utf8'))
          .join('\n'),
      },
    ]
  })
}

/** Rooms of the planner that take part in a plan. */
function planUses(): readonly UsedIn[] {
  const text = sourceFilesIn('packages/planner/src')
    .map((path) => readFileSync(root + path, 'utf8'))
    .join('\n')
  return [{ use: { words: 'Every repair plan that needs it', path: 'plan/' }, text }]
}

const checkOf = ({ source, clause, status, title, printed, unit, got, met }: Figure): HandCheck => ({ source, clause, status, title, printed, unit, got, met })

/** The arguments of an example; empty if it is more than one call, which the docs step reports. */
function inputsOf(example: string): readonly unknown[] {
  try {
    return example === '' ? [] : evaluate(parseExample(example).argumentsText, scope)
  } catch {
    return []
  }
}

const argumentsOf = (example: string): string => (example === '' ? '' : parseExample(example).argumentsText)

/** Order of checks by status of their source; a page lists the first ones and counts the rest. */
const standing = ['published', 'library', 'derived', 'from memory']

function functionOf(entry: Entry, all: readonly Entry[], checks: readonly Figure[], code: FunctionCode | undefined, used: readonly UsedIn[]): HandFunction {
  const { doc, name, room } = entry
  const [example = ''] = doc.examples
  const inputs = inputsOf(example)
  const form = formOf(entry, inputs) ?? null
  const result = doc.symbols.find(({ path }) => path === 'result')
  const mentions = new RegExp(`\\b${name}\\b`)
  const about = [...doc.remarks, ...doc.equations, ...doc.sources, ...doc.throws, ...doc.symbols.map(({ meaning }) => meaning)].join(' ')
  const named = all.filter((other) => other.kind === 'function' && other.name !== name && new RegExp(`\\b${other.name}\\b`).test(about))
  const beside = all.filter((other) => other.kind === 'function' && other.package === entry.package && other.room === room && other.name !== name)
  return {
    name,
    words: titleOf(name),
    package: entry.package,
    room,
    place: entry.place.replace(/:\d+$/, ''),
    sentence: doc.sentence,
    remarks: doc.remarks,
    equations: doc.equations.flatMap((line) => equationTex(line)),
    symbols: doc.symbols.map((line) => ({
      tex: texOfName(line.symbol),
      field: line.path,
      unit: line.unit === '1' ? '' : printedUnit(line.unit),
      meaning: line.meaning,
    })),
    domains: doc.domains.map(({ path, optional, domain }) => `${path}: ${domain.text}${optional ? ', may be left out' : ''}`),
    errors: doc.throws,
    sources: doc.sources,
    example,
    parameters: entry.parameters.map((parameter) => parameter.name),
    form,
    withoutForm: form === null ? whyWithoutForm(argumentsOf(example), inputs, all) : null,
    resultUnit: result === undefined || result.unit === '1' ? wordsOf(name).unit : printedUnit(result.unit),
    hasWorking: Object.hasOwn(formulas, name),
    checks: [...checks].sort((a, b) => standing.indexOf(a.status) - standing.indexOf(b.status)).map(checkOf),
    uncheckedBecause: unchecked[name] ?? null,
    bytes: code?.gzipBytes ?? 0,
    ownFile: code !== undefined && code.code !== null,
    uses: used.filter(({ text }) => mentions.test(text)).map(({ use }) => use),
    near: [...new Set([...named, ...beside].map((other) => other.name))],
  }
}

/** A page for every public function, from its docstring, its checks and its callers. */
export async function readFunctions(codes: Readonly<Record<string, FunctionCode>>): Promise<readonly HandFunction[]> {
  const all = entries()
  const found = all.filter(({ kind }) => kind === 'function')
  const checks = await figures()
  const used = [...planUses(), ...learnUses()]
  return found.map((entry) =>
    functionOf(
      entry,
      all,
      checks.filter((figure) => !figure.looksUp && figure.checks.includes(entry.name)),
      codes[entry.name],
      used,
    ),
  )
}
