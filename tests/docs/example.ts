import ts from 'typescript'

/** An example call with its printed result. */
export interface Example {
  readonly code: string
  readonly callee: string
  /** The text of the arguments, "{ areaMm2: 1 }" or "18". */
  readonly argumentsText: string
  /** The printed result; absent if none is printed. */
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

/** Evaluates an expression list, with every export of the packages in scope. */
export function evaluate(argumentsText: string, scope: Readonly<Record<string, unknown>>): unknown[] {
  const names = Object.keys(scope)
  return new Function(...names, `'use strict'; return [${argumentsText}]`)(...names.map((name) => scope[name])) as unknown[]
}

/** Freezes deeply, so that a call that writes to its input throws. */
export function deepFreeze<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value)
    for (const inner of Object.values(value)) deepFreeze(inner)
  }
  return value
}
