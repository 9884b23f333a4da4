import { DomainError, requireChoice, requireNotNegative, requirePositive, requireTemperature } from '../errors/index.ts'
import { entryAt } from '../errors/inner.ts'
import { insulation, metal } from '../materials/index.ts'
import type { CircuitKind, MethodContext } from '../rules/index.ts'

const circuits: readonly CircuitKind[] = [
  'power',
  'motor',
  'lighting',
  'signal',
  'data-pair',
  'thermocouple',
  'safety',
  'airbag',
  'high-voltage',
  'mains',
  'fuel-or-explosive',
]
const yesOrNo = [true, false]
const toolKinds = ['iron', 'hot-air', 'crimp-tool', 'terminal-die'] as const
const ruleSets = ['small-craft', 'aircraft', 'road-vehicle', 'space', 'none'] as const

function requireList<T extends string>(parameter: string, value: readonly T[], choices: readonly T[]): void {
  if (!Array.isArray(value)) throw new DomainError(parameter, value, 'a list', undefined, value === undefined ? 'missing' : 'wrong-choice')
  value.forEach((item, index) => {
    requireChoice(`${parameter}.${index}`, item, choices)
  })
}

/** Refuses a context with impossible values; names the field. */
export function requireMethodContext(context: MethodContext): void {
  requireChoice('circuit', context.circuit, circuits)
  requireChoice('location', context.location, ['dry', 'damp', 'splash', 'submerged'])
  requireChoice('vibration', context.vibration, ['none', 'some', 'strong'])
  requireChoice('flexes', context.flexes, yesOrNo)
  requireChoice('flammableVapour', context.flammableVapour, yesOrNo)
  requireTemperature('hottestC', context.hottestC)
  requireTemperature('coldestC', context.coldestC)
  if (context.coldestC > context.hottestC)
    throw new DomainError('coldestC', context.coldestC, `at most hottestC, ${context.hottestC}`, undefined, 'contradiction')
  requireNotNegative('currentA', context.currentA)
  requirePositive('areaMm2', context.areaMm2)
  if (!Array.isArray(context.metals) || context.metals.length !== 2)
    throw new DomainError('metals', context.metals, 'the two metals that are joined', undefined, context.metals === undefined ? 'missing' : 'wrong-choice')
  for (const [k, name] of context.metals.entries()) entryAt(`metals.${k}`, () => metal(name))
  insulation(context.insulation)
  requireList('tools', context.tools, toolKinds)
  if (context.accessMm !== undefined) requireNotNegative('accessMm', context.accessMm)
  if (context.distanceToTerminationMm !== undefined) requireNotNegative('distanceToTerminationMm', context.distanceToTerminationMm)
  if (context.reversible !== undefined) requireChoice('reversible', context.reversible, yesOrNo)
  if (context.rules !== undefined) requireList('rules', context.rules, ruleSets)
}
