import * as mathjs from 'mathjs/number'

/** Functions that the expressions need; the number-only entry's types list fewer than it exports. */
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

/** The smallest mathjs instance for the formulas: plain numbers, and only the functions they use. */
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
