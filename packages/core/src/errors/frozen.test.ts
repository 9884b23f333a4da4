import { expect, test } from 'vitest'
import * as core from '../index.ts'

/** Paths of the mutable parts of a value. */
function loose(value: unknown, path: string): readonly string[] {
  if (typeof value !== 'object' || value === null) return []
  const inner = Object.entries(value).flatMap(([key, one]) => loose(one, `${path}.${key}`))
  return Object.isFrozen(value) ? inner : [path, ...inner]
}

const records = Object.entries(core).filter(([, value]) => typeof value === 'object')

test('no shipped record can be changed, so that no caller changes the results of another', () => {
  expect(records.length).toBeGreaterThan(50)
  expect(records.flatMap(([name, value]) => loose(value, name))).toEqual([])
  expect(() => {
    ;(core.wireDefaults as { emissivity: number }).emissivity = 0.1
  }).toThrow(TypeError)
  expect(core.metal('tin')).toBe(core.metals.tin)
})
