import ts from 'typescript'
import { isPackageSource, isTest } from '../../repository/source.ts'
import { readTree, type TreeFile } from '../../repository/tree.ts'

/** A number literal of the sources, with its place in the file. */
export interface SourceNumber {
  readonly key: string
  readonly start: number
  readonly end: number
  readonly value: number
}

/** A value from memory: one number, one record of low, nominal and high, or one column of rows. */
export interface RecalledNumber {
  readonly file: string
  /** Path of property names from the export. */
  readonly name: string
  readonly source: string
  readonly numbers: readonly SourceNumber[]
}

/** Fields by which a row is found; another value of them is another row. */
const foundBy = new Set([
  ...['areaMm2', 'gauge', 'contactSize', 'altitudeFt', 'wires', 'loadingPercent', 'differenceK', 'nominalV', 'multiple', 'initialC', 'finalC'],
  ...['limitC', 'insulationC', 'suppliedInsideMm', 'referenceC'],
])
const recordKeys = ['low', 'nominal', 'value', 'high']

const unwrapped = (node: ts.Expression): ts.Expression =>
  ts.isAsExpression(node) || ts.isSatisfiesExpression(node) || ts.isParenthesizedExpression(node) ? unwrapped(node.expression) : node

function objectOf(node: ts.Expression | undefined): ts.ObjectLiteralExpression | null {
  const inner = node === undefined ? undefined : unwrapped(node)
  return inner !== undefined && ts.isObjectLiteralExpression(inner) ? inner : null
}

const lastOf = (key: string): string => key.split('.').at(-1) ?? key
const keyOf = (property: ts.ObjectLiteralElementLike): string => (property.name === undefined ? '' : property.name.getText().replaceAll(/^['"]|['"]$/g, ''))

function textOf(node: ts.ObjectLiteralExpression, key: string): string | null {
  for (const property of node.properties)
    if (ts.isPropertyAssignment(property) && keyOf(property) === key) {
      const value = unwrapped(property.initializer)
      if (ts.isStringLiteralLike(value)) return value.text
    }
  return null
}

const saysMemory = (node: ts.ObjectLiteralExpression): boolean =>
  textOf(node, 'status') === 'from memory' || (textOf(node, 'source') !== null && /from memory/.test(textOf(node, 'source') ?? ''))

/** Number of a literal, or null. */
function literal(node: ts.Expression): number | null {
  const value = unwrapped(node)
  if (ts.isNumericLiteral(value)) return Number(value.text)
  if (ts.isPrefixUnaryExpression(value) && value.operator === ts.SyntaxKind.MinusToken && ts.isNumericLiteral(value.operand)) return -Number(value.operand.text)
  return null
}

/** Numbers below a value, without those that have a provenance of their own; zero has no factor, and a plain list names what exists. */
function numbersBelow(node: ts.Expression, key: string): readonly SourceNumber[] {
  const number = literal(node)
  const value = unwrapped(node)
  if (number !== null) return number === 0 || foundBy.has(lastOf(key)) ? [] : [{ key, start: value.getStart(), end: value.getEnd(), value: number }]
  if (ts.isArrayLiteralExpression(value))
    return value.elements.every((one) => literal(one) !== null) ? [] : value.elements.flatMap((one) => numbersBelow(one, key))
  if (!ts.isObjectLiteralExpression(value)) return []
  if (value.properties.some((property) => ['provenance', 'status'].includes(keyOf(property)))) return []
  return value.properties.flatMap((property) => (ts.isPropertyAssignment(property) ? numbersBelow(property.initializer, `${key}.${keyOf(property)}`) : []))
}

/** Groups of numbers of one object: a record is one value, rows of one column are one value, all else stands alone. */
function valuesOf(node: ts.ObjectLiteralExpression, only?: (key: string) => boolean): readonly (readonly [string, readonly SourceNumber[]])[] {
  const groups = new Map<string, SourceNumber[]>()
  const isRecord = node.properties.some((property) => recordKeys.includes(keyOf(property)))
  for (const property of node.properties) {
    const key = keyOf(property)
    if (!ts.isPropertyAssignment(property) || only?.(key) === false) continue
    for (const one of numbersBelow(property.initializer, key)) {
      const path = one.key.split('.')
      const name = isRecord && recordKeys.includes(lastOf(one.key)) ? '' : recordKeys.includes(path.at(-1) ?? '') ? path.slice(0, -1).join('.') : one.key
      groups.set(name, [...(groups.get(name) ?? []), { ...one, key: lastOf(one.key) }])
    }
  }
  return [...groups]
}

/** Values from memory in one file. */
function inFile(file: string, text: string): readonly RecalledNumber[] {
  const tree = ts.createSourceFile(file, text, ts.ScriptTarget.ES2023, true)
  const found = new Map<string, RecalledNumber>()
  const named = new Map<string, ts.ObjectLiteralExpression>()
  const keep = (path: string, source: string, numbers: readonly SourceNumber[]): void => {
    const old = found.get(path)
    const fresh = numbers.filter(({ start }) => ![...found.values()].some((one) => one.numbers.some((two) => two.start === start)))
    if (fresh.length > 0) found.set(path, { file, name: path, source, numbers: [...(old?.numbers ?? []), ...fresh] })
  }
  const keepAll = (path: string, source: string, node: ts.ObjectLiteralExpression, only?: (key: string) => boolean): void => {
    for (const [name, numbers] of valuesOf(node, only)) keep([path, name].filter((part) => part !== '').join('.'), source, numbers)
  }
  const walk = (node: ts.Node, outer: string): void => {
    const id = ts.isObjectLiteralExpression(node) ? textOf(node, 'id') : null
    const path = id === null ? outer : `${outer}.${id}`
    if (ts.isVariableDeclaration(node) && node.initializer !== undefined) {
      const name = node.name.getText()
      const object = objectOf(node.initializer)
      if (object !== null) named.set(name, object)
      walk(node.initializer, path === '' ? name : path)
      return
    }
    if (ts.isObjectLiteralExpression(node)) {
      const source = textOf(node, 'source')
      if (textOf(node, 'status') === 'from memory' && source === null) keepAll(path, 'row of its table', node)
      for (const property of node.properties) {
        const key = keyOf(property)
        const value = ts.isShorthandPropertyAssignment(property)
          ? named.get(key)
          : ts.isPropertyAssignment(property)
            ? (objectOf(property.initializer) ?? named.get(property.initializer.getText()))
            : undefined
        const status = key.endsWith('Status') && ts.isPropertyAssignment(property) && property.initializer.getText() === "'from memory'"
        if (status) {
          const start = key.slice(0, -'Status'.length)
          keepAll(path, 'row of its table', node, (name) => name.startsWith(start))
        }
        if (value !== undefined && value !== null) {
          const said = textOf(value, 'source') ?? ''
          const of = /^(.+)Provenance$/.exec(key)?.[1]
          if (of !== undefined && saysMemory(value)) keepAll(path, said, node, (name) => name === of)
          else if ((key === 'provenance' || key === 'source') && saysMemory(value)) keepAll(path, said, node)
          else if (key === 'provenance')
            for (const field of value.properties) {
              const part = ts.isPropertyAssignment(field) ? objectOf(field.initializer) : null
              if (part !== null && saysMemory(part)) keepAll(path, textOf(part, 'source') ?? '', node, (name) => name === keyOf(field))
            }
        }
      }
      for (const property of node.properties)
        if (ts.isPropertyAssignment(property)) walk(property.initializer, [path, keyOf(property)].filter((part) => part !== '').join('.'))
      return
    }
    ts.forEachChild(node, (child) => walk(child, path))
  }
  ts.forEachChild(tree, (child) => walk(child, ''))
  return [...found.values()]
}

/** Every number from memory that the packages ship, read from their sources. */
export function recalledNumbers(tree: readonly TreeFile[] = readTree()): readonly RecalledNumber[] {
  return tree.filter(({ path }) => isPackageSource(path) && !isTest(path)).flatMap(({ path, text }) => inFile(path, text))
}
