import { posix } from 'node:path'
import ts from 'typescript'
import type { TreeFile } from './tree.ts'

export interface ImportOf {
  /** As written: './x.ts', '@strandwise/core/heat', 'node:fs'. */
  readonly specifier: string
  /** Imported names; '*' for the whole module, '' for side effects only. */
  readonly names: readonly string[]
  /** True for `export … from`. */
  readonly handsOn: boolean
  readonly line: number
}

export interface ExportOf {
  readonly name: string
  readonly line: number
}

const parsed = new WeakMap<TreeFile, ts.SourceFile>()

/** Parses each file once, for all checks. */
export function parse(file: TreeFile): ts.SourceFile {
  const known = parsed.get(file)
  if (known !== undefined) return known
  const source = ts.createSourceFile(file.path, file.text, ts.ScriptTarget.Latest, true)
  parsed.set(file, source)
  return source
}

export function lineOf(source: ts.SourceFile, node: ts.Node): number {
  return source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1
}

/** All descendant nodes, in source order. */
export function walk(node: ts.Node): readonly ts.Node[] {
  const found: ts.Node[] = []
  const visit = (one: ts.Node): void => {
    found.push(one)
    ts.forEachChild(one, visit)
  }
  visit(node)
  return found
}

function namesOf(clause: ts.ImportClause | undefined): string[] {
  if (clause === undefined) return ['']
  const bindings = clause.namedBindings
  const named =
    bindings === undefined ? [] : ts.isNamespaceImport(bindings) ? ['*'] : bindings.elements.map((element) => (element.propertyName ?? element.name).text)
  return clause.name === undefined ? named : ['default', ...named]
}

const imported = new WeakMap<TreeFile, readonly ImportOf[]>()

/** Imports of a file: import, export … from, import() and import types. */
export function importsOf(file: TreeFile): readonly ImportOf[] {
  const known = imported.get(file)
  if (known !== undefined) return known
  const found = readImports(file)
  imported.set(file, found)
  return found
}

function readImports(file: TreeFile): readonly ImportOf[] {
  const source = parse(file)
  const found: ImportOf[] = []
  for (const node of walk(source)) {
    const line = () => lineOf(source, node)
    if (ts.isImportDeclaration(node) && ts.isStringLiteral(node.moduleSpecifier)) {
      found.push({ specifier: node.moduleSpecifier.text, names: namesOf(node.importClause), handsOn: false, line: line() })
    } else if (ts.isExportDeclaration(node) && node.moduleSpecifier !== undefined && ts.isStringLiteral(node.moduleSpecifier)) {
      const named = node.exportClause !== undefined && ts.isNamedExports(node.exportClause)
      const names = named ? (node.exportClause as ts.NamedExports).elements.map((element) => (element.propertyName ?? element.name).text) : ['*']
      found.push({ specifier: node.moduleSpecifier.text, names, handsOn: true, line: line() })
    } else if (
      ts.isCallExpression(node) &&
      node.expression.kind === ts.SyntaxKind.ImportKeyword &&
      node.arguments[0] !== undefined &&
      ts.isStringLiteralLike(node.arguments[0])
    ) {
      found.push({ specifier: node.arguments[0].text, names: ['*'], handsOn: false, line: line() })
    } else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument) && ts.isStringLiteral(node.argument.literal)) {
      found.push({ specifier: node.argument.literal.text, names: ['*'], handsOn: false, line: line() })
    }
  }
  return found
}

const hasModifier = (node: ts.Node, kind: ts.SyntaxKind): boolean =>
  ts.canHaveModifiers(node) && (ts.getModifiers(node) ?? []).some((modifier) => modifier.kind === kind)

/** Exports declared in a file; a default export is named "default". */
export function exportsOf(file: TreeFile): readonly ExportOf[] {
  const source = parse(file)
  return source.statements.flatMap((statement): ExportOf[] => {
    const line = lineOf(source, statement)
    if (ts.isExportAssignment(statement)) return [{ name: 'default', line }]
    if (ts.isExportDeclaration(statement)) {
      if (statement.exportClause === undefined || !ts.isNamedExports(statement.exportClause)) return []
      const own = statement.moduleSpecifier === undefined
      return statement.exportClause.elements.filter((element) => own || element.name.text === 'default').map((element) => ({ name: element.name.text, line }))
    }
    if (!hasModifier(statement, ts.SyntaxKind.ExportKeyword)) return []
    if (hasModifier(statement, ts.SyntaxKind.DefaultKeyword)) return [{ name: 'default', line }]
    if (ts.isVariableStatement(statement)) {
      return statement.declarationList.declarations.flatMap((declaration) => (ts.isIdentifier(declaration.name) ? [{ name: declaration.name.text, line }] : []))
    }
    const name = (statement as { readonly name?: ts.Node }).name
    return name !== undefined && ts.isIdentifier(name) ? [{ name: name.text, line }] : []
  })
}

/** The path in the tree of a relative specifier or package name; undefined for anything outside. */
export function targetOf(from: string, specifier: string): string | undefined {
  if (specifier.startsWith('.')) return posix.join(posix.dirname(from), specifier)
  const match = /^@strandwise\/(core|working|planner)(?:\/(.+))?$/.exec(specifier)
  if (match === null) return undefined
  return match[2] === undefined ? `packages/${match[1]}/src/index.ts` : `packages/${match[1]}/src/${match[2]}/index.ts`
}

/** Samples are shared fixtures of tests. */
export const isTest = (path: string): boolean => /\.(test|bench|sample)\.ts$/.test(path)
export const isPackageSource = (path: string): boolean => /^packages\/[^/]+\/src\/.*\.ts$/.test(path)
