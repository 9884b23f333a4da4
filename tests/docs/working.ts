import { type MathNode, parse } from 'mathjs/number'
import { writtenPaths } from './complete.ts'
import type { Entry } from './extract.ts'
import type { SymbolLine } from './grammar.ts'

/** A symbol of a formula in its working. */
export interface WorkingSymbol {
  readonly name: string
  readonly tex: string
  readonly unit: string
  readonly meaning: string
  /** Path of the input; absent for a constant. */
  readonly input?: string
  /** Name of a core export: the constant, or the default of the input. */
  readonly constant?: string
}

export interface WorkingStep {
  readonly name: string
  readonly tex: string
  readonly unit: string
  readonly meaning: string
  readonly expression: string
  readonly of?: string
}

/** The working of a closed formula, read from its docstring alone. */
export interface Working {
  readonly symbols: readonly WorkingSymbol[]
  readonly steps: readonly WorkingStep[]
  readonly results: readonly WorkingStep[]
}

/** The functions that the working can evaluate. */
const functions = new Set('abs acos asin asinh atan cbrt cos exp expm1 log log10 log1p max min round sin sinh sqrt tan tanh'.split(' '))

/** Value of each unit in coherent SI units; temperatures stay in degrees. */
const coherent: Readonly<Record<string, number>> = {
  ...Object.fromEntries('1 A V W J N K C s s2 m m2 m3 kg Pa Hz S H ohm'.split(' ').map((unit) => [unit, 1])),
  mm: 1e-3,
  mm2: 1e-6,
  mm3: 1e-9,
  MPa: 1e6,
  '%': 1e-2,
}

/** "W/(m2 K)" is 1, "N mm2" is 1e-6; undefined for a unit that is not listed. */
export function coherentFactor(unit: string): number | undefined {
  const [above = '', below = ''] = unit.replace(/[()]/g, '').split('/')
  const product = (text: string): number | undefined =>
    text.split(' ').reduce<number | undefined>((sum, one) => {
      const factor = coherent[one === '' ? '1' : one]
      return sum === undefined || factor === undefined ? undefined : sum * factor
    }, 1)
  const [up, down] = [product(above), product(below)]
  return up === undefined || down === undefined ? undefined : up / down
}

/** A unit of a docstring as pages print it. */
export function printedUnit(unit: string): string {
  return unit
    .replace(/(?<=[a-z])2\b/g, '²')
    .replace(/(?<=[a-z])3\b/g, '³')
    .replace(/\bohm\b/g, 'Ω')
    .replace(/\bC\b/g, '°C')
}

const greek = /^(alpha|beta|gamma|delta|eps|epsilon|eta|theta|kappa|lambda|mu|nu|rho|sigma|tau|phi|omega)/

/** Names set upright: dimensionless numbers and words. */
const word = /^(Re|Pr|Nu|Ra|[a-z]{3,})$/

/** "rho20" becomes a rho with subscript 20, "T_2" and "Tl" likewise; "pi" and whole words stay. */
export function texOfName(written: string): string {
  const [, bare = written, primes = ''] = /^(.*?)('*)$/.exec(written) ?? []
  if (word.test(bare) && !greek.test(bare)) return `\\mathrm{${bare}}${primes}`
  const letter = greek.exec(bare)?.[0]
  const head = letter === undefined ? bare.slice(0, 1) : letter
  const rest = bare.slice(head.length).replace(/^_/, '').replaceAll('_', '\\,')
  const set = letter === undefined ? head : `\\${letter === 'eps' ? 'varepsilon' : letter}`
  return `${set}${primes}${rest === '' ? '' : `_{${rest}}`}`
}

/** A name valid in mathjs, where a prime would transpose. */
const nameOf = (written: string): string => written.replaceAll("'", '_p')

/** Splits "L = n p, d = 2 r; m = L d" into definitions; undefined if a part is none. */
function definitionsOf(equations: readonly string[]): readonly (readonly [string, string])[] | undefined {
  const parts = equations.flatMap((line) => line.split(/;\s*|,\s*(?=[A-Za-z]\w*'* = )/))
  const found = parts.map((part) => /^([A-Za-z]\w*'*) = ([^=<>]+)$/.exec(part.trim()))
  return found.some((match) => match === null) ? undefined : found.map((match) => [match?.[1] ?? '', match?.[2] ?? ''] as const)
}

const plainNodes = new Set(['ConstantNode', 'SymbolNode', 'OperatorNode', 'ParenthesisNode', 'FunctionNode'])

/** Parses with "ln" renamed for mathjs and products written out; undefined on failure. */
function treeOf(text: string): MathNode | undefined {
  const plain = nameOf(text)
    .replace(/\bln\b/g, 'log')
    .replace(/\b([A-Za-z]\w*)\s*\(/g, (whole, name: string) => (functions.has(name) ? `${name}(` : whole.replace('(', '* (')))
  try {
    const tree = parse(plain)
    return tree.filter((node) => !plainNodes.has(node.type) || ('op' in node && !/^[-+*/^]$/.test(String(node.op)))).length === 0 ? tree : undefined
  } catch {
    return undefined
  }
}

const namesIn = (tree: MathNode): readonly string[] => {
  const found = new Set<string>()
  tree.traverse((node, path) => {
    if (node.type === 'SymbolNode' && path !== 'fn') found.add(String(node))
  })
  found.delete('pi')
  return [...found]
}

/** A scale factor as text: "1000", "10^6". */
const power = (scale: number): string => (scale < 1e4 ? String(Math.round(scale)) : `10^${Math.round(Math.log10(scale))}`)
const scaled = (name: string, factor: number): string => (factor === 1 ? name : factor < 1 ? `(${name}/${power(1 / factor)})` : `(${power(factor)} * ${name})`)

/** The expression with each name in coherent units. */
function inCoherentUnits(tree: MathNode, units: ReadonlyMap<string, number>): MathNode {
  return tree.transform((node, path) =>
    node.type === 'SymbolNode' && path !== 'fn' && units.has(String(node)) ? parse(scaled(String(node), units.get(String(node)) ?? 1)) : node,
  )
}

/** Constant factor between the expression in its symbols' units and in coherent units; undefined if it depends on the values. */
function commonFactor(tree: MathNode, coherentTree: MathNode, factor: number): number | undefined {
  const names = namesIn(tree)
  const ratios = [0.37, 0.53, 0.71].map((start) => {
    const values = Object.fromEntries(names.map((name, at) => [name, start + 0.019 * ((at * 7) % 11)]))
    return Number(coherentTree.evaluate({ ...values })) / factor / Number(tree.evaluate({ ...values }))
  })
  const [first = 1] = ratios
  const scale = 10 ** Math.round(Math.log10(first))
  return ratios.every((ratio) => Math.abs(ratio / scale - 1) < 1e-12) ? scale : undefined
}

/** The docstring's expression, valid in coherent units, converted to the units of its symbols. */
function expressionOf(tree: MathNode, units: ReadonlyMap<string, number>, factor: number): string {
  const coherentTree = inCoherentUnits(tree, units)
  const common = commonFactor(tree, coherentTree, factor)
  const text = (common === undefined ? coherentTree : tree).toString({ implicit: 'show' }).replace(/ ([/^]) /g, '$1')
  const scale = common ?? 1 / factor
  if (Math.abs(scale - 1) < 1e-12) return text
  const isSum = tree.type === 'OperatorNode' && /^[+-]/.test((tree as unknown as { readonly op: string }).op)
  const held = isSum ? `(${text})` : text
  return scale > 1 ? `${power(scale)} * ${held}` : `${held}/${power(1 / scale)}`
}

/** Parses "ductilityExponent else flexLifeDefaults.ductilityExponent": an input and its default constant; either may stand alone. */
function originOf(line: SymbolLine, entry: Entry, constants: ReadonlySet<string>): Pick<WorkingSymbol, 'input' | 'constant'> | undefined {
  const [first = '', other] = line.path.split(' else ')
  if (constants.has(first.split('.')[0] ?? '')) return { constant: first }
  const leaf = writtenPaths(entry).find(({ path, kind }) => kind === 'number' && path === first)
  if (leaf === undefined) return undefined
  if (other !== undefined) return constants.has(other.split('.')[0] ?? '') ? { input: first, constant: other } : undefined
  return leaf.optional ? undefined : { input: first }
}

/** The working of a docstring: its equation in coherent units, each symbol an input, a default or a constant of core. Undefined if the docstring is not enough: a list, a case, a table's value, a solved equation. */
export function workingOf(entry: Entry, constants: ReadonlySet<string>): Working | undefined {
  const definitions = definitionsOf(entry.doc.equations)
  if (entry.kind !== 'function' || definitions === undefined || definitions.length === 0) return undefined
  const lines = new Map(entry.doc.symbols.map((line) => [nameOf(line.symbol), line]))
  const units = new Map<string, number>()
  const symbols: WorkingSymbol[] = []
  const made = new Set(definitions.map(([name]) => nameOf(name)))
  const trees = definitions.map(([name, text]) => ({ name: nameOf(name), written: name, tree: treeOf(text) }))
  for (const { tree } of trees) {
    if (tree === undefined) return undefined
    for (const name of namesIn(tree)) {
      if (made.has(name) || units.has(name)) continue
      const line = lines.get(name)
      const factor = line === undefined ? undefined : coherentFactor(line.unit)
      const origin = line === undefined ? undefined : originOf(line, entry, constants)
      if (line === undefined || factor === undefined || origin === undefined) return undefined
      units.set(name, factor)
      symbols.push({ name, tex: texOfName(line.symbol), unit: printedUnit(line.unit), meaning: line.meaning, ...origin })
    }
  }
  const steps: WorkingStep[] = []
  const results: WorkingStep[] = []
  // Definitions after "where" are computed first.
  for (const { name, written, tree } of [...trees].reverse()) {
    const line = lines.get(name)
    const factor = line === undefined ? undefined : coherentFactor(line.unit)
    if (tree === undefined || line === undefined || factor === undefined) return undefined
    const known = namesIn(tree).every((one) => !made.has(one) || steps.some((step) => step.name === one) || results.some((step) => step.name === one))
    if (!known) return undefined
    const isResult = /^result\b/.test(line.path)
    const field = isResult ? line.path.slice('result.'.length) : ''
    const step = {
      name,
      tex: texOfName(written),
      unit: printedUnit(line.unit),
      meaning: line.meaning,
      expression: expressionOf(tree, units, factor),
    }
    units.set(name, factor)
    if (isResult && !entry.results.some((leaf) => leaf.path === field && leaf.kind === 'number')) return undefined
    if (isResult) results.unshift(field === '' ? step : { ...step, of: field })
    else steps.push(step)
  }
  const order = entry.doc.symbols.map(({ symbol }) => nameOf(symbol))
  symbols.sort((a, b) => order.indexOf(a.name) - order.indexOf(b.name))
  return results.length === 0 ? undefined : { symbols, steps, results }
}

/** A line of an equation as TeX, part by part; parts that are no formula stay text. */
export function equationTex(line: string): readonly { readonly tex?: string; readonly text: string }[] {
  return line.split(/;\s*|,\s*(?=[A-Za-z]\w*'* = )/).map((text) => {
    const [, name = '', right = ''] = /^([A-Za-z]\w*'*) = ([^=<>]+)$/.exec(text.trim()) ?? []
    const tree = name === '' ? undefined : treeOf(right)
    if (tree === undefined) return { text: text.trim() }
    const names = new Map((right.match(/[A-Za-z]\w*'*/g) ?? []).map((written) => [nameOf(written), written]))
    const handler = (node: MathNode): string | undefined =>
      node.type === 'SymbolNode' && String(node) !== 'pi' ? ` ${texOfName(names.get(String(node)) ?? String(node))}` : undefined
    const tex = tree
      .toTex({ parenthesis: 'auto', handler })
      .replace(/(?<=[{(]) /g, '')
      .trim()
    return { tex: `${texOfName(name)} = ${tex}`, text: text.trim() }
  })
}
