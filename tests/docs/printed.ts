import ts from 'typescript'
import { halfLastDigit } from '../../references/compare.ts'

/** Differences between a value and a printed result; empty if they agree. Compares the fields listed, numbers within half their last printed digit. */
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
  // A long text may be printed as its beginning and an ellipsis.
  if (ts.isStringLiteralLike(wanted) && wanted.text.endsWith('…')) return typeof got === 'string' && got.startsWith(wanted.text.slice(0, -1)) ? [] : differ()
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

/** A number printed without point or exponent, if whole, must be equal; others may differ by half the last digit. */
function isNear(got: number, printed: string): boolean {
  const wanted = Number(printed)
  if (Number.isInteger(got) && /^-?\d+$/.test(printed)) return got === wanted
  return Math.abs(got - wanted) <= halfLastDigit(printed) * (1 + 1e-12) + 1e-12 * Math.abs(wanted)
}
