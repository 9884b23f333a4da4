import { expect, test } from 'vitest'
import type { MethodContext } from '../rules/index.ts'
import { assessMethods } from './assessMethods.ts'

const good: MethodContext = Object.freeze({
  circuit: 'power',
  location: 'dry',
  vibration: 'none',
  flexes: false,
  hottestC: 40,
  coldestC: 10,
  currentA: 0,
  areaMm2: 1,
  metals: ['annealed-copper', 'tin'] as const,
  insulation: 'PVC',
  accessMm: 0,
  distanceToTerminationMm: 0,
  flammableVapour: false,
  tools: [],
  reversible: false,
  rules: ['none'] as const,
})

test('a context at the edges of its domain is taken', () => {
  expect(assessMethods({ ...good, hottestC: 10, coldestC: 10 }).length).toBe(7)
})

test.each([
  ['circuit', 'lamp', 'circuit'],
  ['location', 'wet', 'location'],
  ['vibration', 'much', 'vibration'],
  ['flexes', 'no', 'flexes'],
  ['flammableVapour', undefined, 'flammableVapour'],
  ['hottestC', Number.NaN, 'hottestC'],
  ['hottestC', -273.15, 'hottestC'],
  ['hottestC', Number.POSITIVE_INFINITY, 'hottestC'],
  ['coldestC', Number.NEGATIVE_INFINITY, 'coldestC'],
  ['coldestC', 40.1, 'coldestC'],
  ['currentA', -1, 'currentA'],
  ['areaMm2', 0, 'areaMm2'],
  ['metals', undefined, 'metals'],
  ['metals', ['tin'], 'metals'],
  ['tools', undefined, 'tools'],
  ['tools', ['iron', 'torch'], 'tools.1'],
  ['accessMm', -1, 'accessMm'],
  ['distanceToTerminationMm', Number.NaN, 'distanceToTerminationMm'],
  ['reversible', 'perhaps', 'reversible'],
  ['rules', ['railway'], 'rules.0'],
] as const)('%s %s is refused by name', (field, value, parameter) => {
  expect(() => assessMethods({ ...good, [field]: value } as unknown as MethodContext)).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
})

test('an unknown metal or insulation is refused; the error lists the known ones', () => {
  expect(() => assessMethods({ ...good, metals: ['tin', 'gold'] } as unknown as MethodContext)).toThrow(expect.objectContaining({ name: 'UnknownEntryError' }))
  expect(() => assessMethods({ ...good, insulation: 'rubber' } as unknown as MethodContext)).toThrow(expect.objectContaining({ name: 'UnknownEntryError' }))
})
