import { requireFinite } from '../errors/index.ts'
import type { RuleFacts } from './conditionHolds.ts'
import type { MethodContext } from './methodContext.ts'

const numbers = ['hottestC', 'coldestC', 'currentA', 'areaMm2', 'accessMm', 'distanceToTerminationMm'] as const

/** The facts of a context; path prefixes the parameter names in errors. */
export function factsOf(context: Readonly<Partial<MethodContext>>, path: string): RuleFacts {
  for (const name of numbers) {
    const value = context[name]
    if (value !== undefined) requireFinite(`${path}${name}`, value)
  }
  return {
    circuit: context.circuit,
    rules: context.rules,
    location: context.location,
    vibration: context.vibration,
    flexes: context.flexes,
    flammableVapour: context.flammableVapour,
    currentA: context.currentA,
    areaMm2: context.areaMm2,
    hottestC: context.hottestC,
    coldestC: context.coldestC,
    fromTerminationMm: context.distanceToTerminationMm,
    metal: context.metals,
    insulation: context.insulation,
    tool: context.tools,
  }
}

/**
 * The facts of a method context, by the field names of the rules.
 *
 * @equation row of the context, each under the name that the rules use
 * @symbol fromTerminationMm - distanceToTerminationMm - mm - distance of the break from plug or terminal
 * @symbol metal - metals - 1 - either of the two
 * @symbol tool - tools - 1 - any of those at hand
 * @domain optional hottestC: finite
 * @domain optional coldestC: finite
 * @domain optional currentA: finite
 * @domain optional areaMm2: finite
 * @domain optional accessMm: finite
 * @domain optional distanceToTerminationMm: finite
 * @throws DomainError for a number that is NaN or infinite
 * @example
 * ruleFacts({ flexes: true, distanceToTerminationMm: 25 }) // { flexes: true, fromTerminationMm: 25 }
 * @source the field names of the rules
 */
export function ruleFacts(context: Readonly<Partial<MethodContext>>): RuleFacts {
  return factsOf(context, '')
}
