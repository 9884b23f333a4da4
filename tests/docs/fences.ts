import ts from 'typescript'

/** A fenced block of a document: "```ts", "```json job.json". */
export interface Fence {
  readonly language: string
  /** File name of a data block, if its fence gives one. */
  readonly file: string | undefined
  readonly text: string
  readonly line: number
}

export function fencesIn(markdown: string): readonly Fence[] {
  const found: Fence[] = []
  let open: { language: string; file: string | undefined; line: number; lines: string[] } | undefined
  for (const [index, line] of markdown.split('\n').entries()) {
    const match = /^\s*```(\S*)\s*(\S*)\s*$/.exec(line)
    if (match === null) open?.lines.push(line)
    else if (open === undefined) open = { language: match[1] as string, file: match[2] === '' ? undefined : match[2], line: index + 1, lines: [] }
    else {
      found.push({ language: open.language, file: open.file, line: open.line, text: open.lines.join('\n') })
      open = undefined
    }
  }
  if (open !== undefined) throw new Error(`the block that begins in line ${open.line} has no end`)
  return found
}

/** A block of code made runnable inside a function: imports come from `load`, and `expression // printed` goes to `check`. */
export function runnable(code: string): string {
  const source = ts.createSourceFile('block.ts', code, ts.ScriptTarget.Latest, true)
  const parts = source.statements.map((statement, index) => {
    if (ts.isImportDeclaration(statement)) return loaded(statement)
    const end = source.statements[index + 1]?.getFullStart() ?? code.length
    const printed = printedBehind(code.slice(statement.end, Math.max(end, nextStart(source, index, code))))
    if (printed === undefined || !ts.isExpressionStatement(statement)) return statement.getText(source)
    return `check(${shown(statement.expression, source)}, ${JSON.stringify(printed)})`
  })
  return ts.transpileModule(parts.join('\n'), { compilerOptions: { target: ts.ScriptTarget.ES2023, module: ts.ModuleKind.ESNext } }).outputText
}

/** Comments before the next statement belong to it in the tree; those on this statement's line are ours. */
function nextStart(source: ts.SourceFile, index: number, code: string): number {
  return source.statements[index + 1]?.getStart(source) ?? code.length
}

function printedBehind(trivia: string): string | undefined {
  const match = /^[ \t;]*\/\/ ?(.*)((?:\n\/\/ {2,}.*)*)/.exec(trivia)
  if (match === null) return undefined
  return [match[1], ...(match[2] ?? '').split('\n').map((line) => line.replace(/^\/\/ ?/, ''))].join('\n').trim()
}

/** The expression that a printed result belongs to: in `console.log(x) // 3`, x. */
function shown(expression: ts.Expression, source: ts.SourceFile): string {
  const isLog = ts.isCallExpression(expression) && expression.expression.getText(source) === 'console.log' && expression.arguments.length === 1
  return (isLog ? (expression.arguments[0] as ts.Expression) : expression).getText(source)
}

function loaded(statement: ts.ImportDeclaration): string {
  const from = `await load(${statement.moduleSpecifier.getText()})`
  const bindings = statement.importClause?.namedBindings
  if (statement.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword || bindings === undefined) return ''
  if (ts.isNamespaceImport(bindings)) return `const ${bindings.name.text} = ${from}`
  const names = bindings.elements
    .filter((element) => !element.isTypeOnly)
    .map((element) => (element.propertyName === undefined ? element.name.text : `${element.propertyName.text}: ${element.name.text}`))
  return `const { ${names.join(', ')} } = ${from}`
}
