import {
  absDependencies,
  acosDependencies,
  addDependencies,
  asinDependencies,
  asinhDependencies,
  atanDependencies,
  cbrtDependencies,
  cosDependencies,
  create,
  divideDependencies,
  expDependencies,
  expm1Dependencies,
  type FactoryFunctionMap,
  log1pDependencies,
  log10Dependencies,
  logDependencies,
  type MathNode,
  maxDependencies,
  minDependencies,
  multiplyDependencies,
  parseDependencies,
  piDependencies,
  powDependencies,
  roundDependencies,
  sinDependencies,
  sinhDependencies,
  sqrtDependencies,
  subtractDependencies,
  sumDependencies,
  tanDependencies,
  tanhDependencies,
  unaryMinusDependencies,
} from 'mathjs/number'

export type { MathNode, SymbolNode } from 'mathjs/number'

/** The only instance of mathjs: a parser and the functions that formulas use, on plain numbers. */
const mathematics = create({
  absDependencies,
  acosDependencies,
  addDependencies,
  asinDependencies,
  asinhDependencies,
  atanDependencies,
  cbrtDependencies,
  cosDependencies,
  divideDependencies,
  expDependencies,
  expm1Dependencies,
  log1pDependencies,
  log10Dependencies,
  logDependencies,
  maxDependencies,
  minDependencies,
  multiplyDependencies,
  parseDependencies,
  piDependencies,
  powDependencies,
  roundDependencies,
  sinDependencies,
  sinhDependencies,
  sqrtDependencies,
  subtractDependencies,
  sumDependencies,
  tanDependencies,
  tanhDependencies,
  unaryMinusDependencies,
} as Readonly<Record<string, FactoryFunctionMap>>)

/** Parses an expression. Only the project's own formulas come here, never a user's text. */
export function parseExpression(expression: string): MathNode {
  return mathematics.parse(expression)
}

/** Evaluates an expression for values of its names. */
export function evaluateExpression(expression: string, values: Readonly<Record<string, number>>): number {
  return Number(parseExpression(expression).evaluate({ ...values }))
}
