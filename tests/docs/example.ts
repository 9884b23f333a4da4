import ts from 'typescript'
import { halfLastDigit } from '../../references/compare.ts'

/** One call with the result that is printed behind it. */
export interface Example {
  readonly code: string
  readonly callee: string
  /** The text of the arguments, "{ areaMm2: 1 }" or "18". */
  readonly argumentsText: string
  /** The printed result; absent where the example prints none. */
  readonly printed?: string
}

/** Reads `call(...) // result`; the result may run over several comment lines. */
export function parseExample(code: string): Example {
  const source = ts.createSourceFile('example.ts', code, ts.ScriptTarget.Latest, true)
  const [statement, ...more] = source.statements
  if (statement === undefined || !ts.isExpressionStatement(statement) || !ts.isCallExpression(statement.expression) || more.length > 0)
    throw new Error(`an example is one call and its result, not:\n${code}`)
  const call = statement.expression
  if (!ts.isIdentifier(call.expression)) throw new Error(`an example calls the function by its name, not "${call.expression.getText()}"`)
  const trailing = code.slice(statement.end).trim()
  const lines = trailing.split('\n').map((line) => line.trim())
  if (trailing !== '' && lines.some((line) => !line.startsWith('//'))) throw new Error(`behind the call stands "// result", not:\n${trailing}`)
  const printed = lines.map((line) => line.replace(/^\/\/\s?/, '')).join('\n')
  return {
    code,
    callee: call.expression.text,
    argumentsText: call.arguments.map((argument) => argument.getText()).join(', '),
    ...(trailing === '' ? {} : { printed }),
  }
}

/** The values of an expression list, with every export of the packages in scope. */
export function evaluate(argumentsText: string, scope: Readonly<Record<string, unknown>>): unknown[] {
  const names = Object.keys(scope)
  return new Function(...names, `'use strict'; return [${argumentsText}]`)(...names.map((name) => scope[name])) as unknown[]
}

/** What differs between a value and a printed result; empty where they agree. Listed fields are compared, a number within half its last printed digit. */
export function differences(got: unknown, printed: string): readonly string[] {
  const source = ts.createSourceFile('printed.ts', `(${printed})`, ts.ScriptTarget.Latest, true)
  const [statement] = source.statements
  const broken = (source as unknown as { readonly parseDiagnostics?: readonly unknown[] }).parseDiagnostics?.length
  if (broken || statement === undefined || source.statements.length !== 1 || !ts.isExpressionStatement(statement)) return [`"${printed}" is no printed result`]
  return compare(got, strip(statement.expression), '')
}

function strip(node: ts.Expression): ts.Expression {
  return ts.isParenthesizedExpression(node) ? strip(node.expression) : node
}

function compare(got: unknown, wanted: ts.Expression, path: string): readonly string[] {
  const differ = (): readonly string[] => [`${path === '' ? 'the result' : path} is ${JSON.stringify(got) ?? String(got)}, printed ${wanted.getText()}`]
  const number = printedNumber(wanted)
  if (number !== undefined) return typeof got === 'number' && isNear(got, number) ? [] : differ()
  if (ts.isStringLiteralLike(wanted)) return got === wanted.text ? [] : differ()
  if (wanted.kind === ts.SyntaxKind.NullKeyword) return got === null ? [] : differ()
  if (wanted.kind === ts.SyntaxKind.TrueKeyword) return got === true ? [] : differ()
  if (wanted.kind === ts.SyntaxKind.FalseKeyword) return got === false ? [] : differ()
  if (ts.isIdentifier(wanted) && wanted.text === 'undefined') return got === undefined ? [] : differ()
  if (ts.isArrayLiteralExpression(wanted)) {
    if (!Array.isArray(got) || got.length < wanted.elements.length || (wanted.elements.length === 0 && got.length > 0)) return differ()
    return wanted.elements.flatMap((element, index) => compare(got[index], strip(element), `${path}[${index}]`))
  }
  if (ts.isObjectLiteralExpression(wanted)) {
    if (typeof got !== 'object' || got === null) return differ()
    return wanted.properties.flatMap((property) => {
      if (!ts.isPropertyAssignment(property) || !(ts.isIdentifier(property.name) || ts.isStringLiteral(property.name)))
        return [`${property.getText()} is no printed field`]
      const name = property.name.text
      return compare((got as Record<string, unknown>)[name], strip(property.initializer), path === '' ? name : `${path}.${name}`)
    })
  }
  return [`${wanted.getText()} is no printed result`]
}

function printedNumber(node: ts.Expression): string | undefined {
  if (ts.isNumericLiteral(node)) return node.getText()
  return ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.MinusToken && ts.isNumericLiteral(node.operand)
    ? `-${node.operand.getText()}`
    : undefined
}

/** A number without a point or exponent that stands for a whole number is that number; else half its last digit is allowed. */
function isNear(got: number, printed: string): boolean {
  const wanted = Number(printed)
  if (Number.isInteger(got) && /^-?\d+$/.test(printed)) return got === wanted
  return Math.abs(got - wanted) <= halfLastDigit(printed) * (1 + 1e-12) + 1e-12 * Math.abs(wanted)
}

/** Frozen to the last field: a call that writes to its input throws. */
export function deepFreeze<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value)
    for (const inner of Object.values(value)) deepFreeze(inner)
  }
  return value
}
