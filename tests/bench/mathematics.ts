import * as mathjs from 'mathjs/number'

/** What the expressions need; the types of the number-only entry promise less than it has. */
const needed = [
  mathjs.evaluateDependencies,
  mathjs.compileDependencies,
  mathjs.addDependencies,
  mathjs.subtractDependencies,
  mathjs.multiplyDependencies,
  mathjs.divideDependencies,
  mathjs.powDependencies,
  mathjs.sqrtDependencies,
  mathjs.expDependencies,
  mathjs.unaryMinusDependencies,
  mathjs.piDependencies,
]

/** The leanest instance that reads formulas: plain numbers, and only the functions that the expressions name. */
const math = mathjs.create(Object.assign({}, ...needed) as mathjs.FactoryFunctionMap)

type Scope = Record<string, number>

export function compiled(expression: string): (scope: Scope) => number {
  const code = math.compile?.(expression)
  if (code === undefined) throw new Error('mathjs came without compile')
  return (scope) => code.evaluate(scope) as number
}

export function fromText(expression: string): (scope: Scope) => number {
  const { evaluate } = math
  if (evaluate === undefined) throw new Error('mathjs came without evaluate')
  return (scope) => evaluate(expression, scope) as number
}
