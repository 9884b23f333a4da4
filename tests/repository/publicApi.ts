import ts from 'typescript'
import { packages } from '../docs/extract.ts'
import { root } from './tree.ts'

/** A longer type of a value is shown by its keys. */
const longest = 400
const flags = ts.TypeFormatFlags.NoTruncation | ts.TypeFormatFlags.UseAliasDefinedOutsideCurrentScope | ts.TypeFormatFlags.WriteArrayAsGenericType

/** Source text without comments, on one line. */
function plain(node: ts.Node): string {
  const printer = ts.createPrinter({ removeComments: true })
  return printer
    .printNode(ts.EmitHint.Unspecified, node, node.getSourceFile())
    .replace(/^export (declare )?/, '')
    .replace(/\s+/g, ' ')
    .trim()
}

function valueText(checker: ts.TypeChecker, name: string, type: ts.Type, node: ts.Node): string {
  const text = checker.typeToString(type, node, flags)
  if (text.length <= longest) return `const ${name}: ${text}`
  if (checker.isArrayLikeType(type)) return `const ${name}: a list of ${checker.typeToString(elementOf(checker, type), node, flags).slice(0, longest)}`
  return `const ${name}: { ${checker
    .getPropertiesOfType(type)
    .map((property) => property.name)
    .join(', ')} }`
}

function elementOf(checker: ts.TypeChecker, type: ts.Type): ts.Type {
  const element = type.getNumberIndexType()
  return element === undefined ? type : checker.getBaseTypeOfLiteralType(element)
}

function classText(checker: ts.TypeChecker, name: string, symbol: ts.Symbol, node: ts.Node): string {
  const fields = checker
    .getPropertiesOfType(checker.getDeclaredTypeOfSymbol(symbol))
    .filter((property) => property.declarations?.some((one) => one.getSourceFile() === node.getSourceFile()))
  return `class ${name} { ${fields.map((field) => `${field.name}: ${checker.typeToString(checker.getTypeOfSymbol(field), node, flags)}`).join('; ')} }`
}

function textOf(checker: ts.TypeChecker, name: string, symbol: ts.Symbol): string {
  const node = symbol.declarations?.[0]
  if (node === undefined) return name
  if (symbol.flags & ts.SymbolFlags.Class) return classText(checker, name, symbol, node)
  if (!(symbol.flags & ts.SymbolFlags.Value)) return plain(node)
  const type = checker.getTypeOfSymbol(symbol)
  const [signature] = type.getCallSignatures()
  return signature === undefined ? valueText(checker, name, type, node) : `function ${name}${checker.signatureToString(signature, node, flags)}`
}

/** Every export with its signature, by package and room, for review when the API changes. */
export function publicApi(program: ts.Program): string {
  const checker = program.getTypeChecker()
  const lines = ['# Public API', '', 'Every exported name and its signature. `npm test -- --update-api` rewrites this file; review the difference.']
  for (const name of packages) {
    const source = program.getSourceFile(`${root}packages/${name}/src/index.ts`)
    const module = source && checker.getSymbolAtLocation(source)
    const rooms = new Map<string, string[]>()
    for (const exported of module === undefined ? [] : checker.getExportsOfModule(module)) {
      const symbol = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported
      const room = /\/src\/([^/]+)\//.exec(symbol.declarations?.[0]?.getSourceFile().fileName ?? '')?.[1] ?? ''
      rooms.set(room, [...(rooms.get(room) ?? []), textOf(checker, exported.name, symbol)])
    }
    for (const room of [...rooms.keys()].sort()) lines.push('', `## ${name}/${room}`, '', '```text', ...(rooms.get(room) ?? []).sort(), '```')
  }
  return `${lines.join('\n')}\n`
}
