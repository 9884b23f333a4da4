import { readdirSync } from 'node:fs'
import ts from 'typescript'
import { root } from '../repository/tree.ts'
import { type Docstring, parseDocstring } from './grammar.ts'
import { type Leaf, leavesOf } from './leaves.ts'

export interface Parameter {
  readonly name: string
  readonly optional: boolean
  readonly leaves: readonly Leaf[]
}

/** A root export of a package. */
export interface Entry {
  readonly package: 'core' | 'working' | 'planner'
  readonly room: string
  readonly name: string
  readonly kind: 'function' | 'class' | 'type' | 'value'
  /** Path from the root, and line. */
  readonly place: string
  readonly doc: Docstring
  readonly parameters: readonly Parameter[]
  /** The numbers and words in its result. */
  readonly results: readonly Leaf[]
}

export const packages = ['core', 'working', 'planner'] as const

/** A TypeScript program of the sources: package names resolve to src folders, so nothing needs to be built. */
export function sourceProgram(): ts.Program {
  const paths = Object.fromEntries(
    packages.flatMap((name) => [
      [`@strandwise/${name}`, [`${root}packages/${name}/src/index.ts`]],
      [`@strandwise/${name}/*`, [`${root}packages/${name}/src/*/index.ts`]],
    ]),
  )
  return ts.createProgram({
    rootNames: packages.map((name) => `${root}packages/${name}/src/index.ts`),
    options: {
      target: ts.ScriptTarget.ES2023,
      module: ts.ModuleKind.NodeNext,
      strict: true,
      exactOptionalPropertyTypes: true,
      noUncheckedIndexedAccess: true,
      allowImportingTsExtensions: true,
      noEmit: true,
      skipLibCheck: true,
      types: ['node'],
      typeRoots: [`${root}node_modules/@types`],
      paths,
    },
  })
}

function commentOf(node: ts.Node): string {
  const holder = ts.isVariableDeclaration(node) ? node.parent.parent : node
  return ts.getJSDocCommentsAndTags(holder).filter(ts.isJSDoc).at(-1)?.getText() ?? ''
}

function kindOf(symbol: ts.Symbol, signatures: readonly ts.Signature[]): Entry['kind'] {
  if (symbol.flags & ts.SymbolFlags.Class) return 'class'
  if (signatures.length > 0) return 'function'
  return symbol.flags & ts.SymbolFlags.Value ? 'value' : 'type'
}

/** Every root export of the packages, sorted by package, room and name. */
export function entriesOf(program: ts.Program): readonly Entry[] {
  const checker = program.getTypeChecker()
  const found = packages.flatMap((name) => {
    const source = program.getSourceFile(`${root}packages/${name}/src/index.ts`)
    const module = source && checker.getSymbolAtLocation(source)
    return (module === undefined ? [] : checker.getExportsOfModule(module)).flatMap((exported): Entry[] => {
      const symbol = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported
      const node = symbol.declarations?.[0]
      if (node === undefined) return []
      const file = node.getSourceFile()
      const path = file.fileName.slice(root.length)
      const signatures = symbol.flags & ts.SymbolFlags.Value ? checker.getTypeOfSymbol(symbol).getCallSignatures() : []
      return [
        {
          package: name,
          room: /src\/([^/]+)\//.exec(path)?.[1] ?? '',
          name: exported.name,
          kind: kindOf(symbol, signatures),
          place: `${path}:${file.getLineAndCharacterOfPosition(node.getStart()).line + 1}`,
          doc: parseDocstring(commentOf(node)),
          parameters: (signatures[0]?.parameters ?? []).map((parameter) => ({
            name: parameter.name,
            optional: isOptional(parameter),
            leaves: leavesOf(checker, checker.getTypeOfSymbol(parameter)),
          })),
          results: signatures[0] === undefined ? [] : leavesOf(checker, signatures[0].getReturnType()),
        },
      ]
    })
  })
  return found.sort((a, b) => packages.indexOf(a.package) - packages.indexOf(b.package) || compareText(a.room, b.room) || compareText(a.name, b.name))
}

function isOptional(parameter: ts.Symbol): boolean {
  const node = parameter.valueDeclaration
  return node !== undefined && ts.isParameter(node) && (node.questionToken !== undefined || node.initializer !== undefined)
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}

/** The rooms on disk, for tests that must not miss any. */
export function roomsOnDisk(name: (typeof packages)[number]): readonly string[] {
  return readdirSync(`${root}packages/${name}/src`, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
}
