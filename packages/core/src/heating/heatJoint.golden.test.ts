import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { heatJoint } from './heatJoint.ts'
import type { HeatJointInput, HeatJointResult } from './heatJointTypes.ts'

interface Golden {
  readonly id: string
  readonly inputs: HeatJointInput
  readonly expected: Readonly<Record<string, unknown>>
  readonly numericalError: Readonly<Record<string, number>>
}

const cases = JSON.parse(readFileSync(new URL('../../../../references/data/thermalHeatJoint.json', import.meta.url), 'utf8')) as readonly Golden[]

/** Every number of a result with its key and path. */
function leaves(value: unknown, key: string, path: string): { readonly key: string; readonly path: string; readonly value: unknown }[] {
  if (!Array.isArray(value)) return [{ key, path, value }]
  return value.flatMap((part, k) => leaves(part, key, `${path}.${k}`))
}

/** Tighter than the promised accuracy: errors actually reached on these cases, so that a regression shows early. */
const reached = { 1: { kelvin: 0.1, share: 1e-3 }, 0.01: { kelvin: 2e-3, share: 2e-5 } } as const

function misses(result: HeatJointResult, golden: Golden, accuracy: 1 | 0.01): string[] {
  const { kelvin, share } = reached[accuracy]
  const got = result as unknown as Readonly<Record<string, unknown>>
  return Object.entries(golden.expected).flatMap(([key, wanted]) => {
    const have = leaves(got[key], key, key)
    return leaves(wanted, key, key).flatMap(({ path, value }, k) => {
      const one = have[k]?.value
      if (typeof value !== 'number' || typeof one !== 'number') return one === value ? [] : [`${path}: got ${String(one)}, wanted ${String(value)}`]
      const error = golden.numericalError[key] ?? 0
      const allowed = key.startsWith('steady') ? 1e-9 * value : key.endsWith('S') ? share * value + error : kelvin
      return Math.abs(one - value) <= allowed ? [] : [`${path}: got ${one}, wanted ${value}, allowed ${allowed}`]
    })
  })
}

describe.each([
  [1, 1e-4],
  [0.01, 1e-6],
] as const)('golden cases at accuracy %s', (accuracy, residual) => {
  test.each(cases.map((golden) => [golden.id, golden] as const))('%s: every figure, every null, and the heat adds up', (_id, golden) => {
    const result = heatJoint({ ...golden.inputs, accuracy })
    expect(misses(result, golden, accuracy)).toEqual([])
    expect(result.energyResidual).toBeGreaterThan(0)
    expect(result.energyResidual).toBeLessThan(residual)
  })
})

test('labels beside the fields are ignored, and the input is left as it was', () => {
  const golden = cases[0] as Golden
  const frozen = JSON.stringify(golden.inputs)
  const labelled = { ...golden.inputs, id: 'a', note: 'b' }
  expect(heatJoint(labelled)).toEqual(heatJoint(golden.inputs))
  expect(JSON.stringify(golden.inputs)).toBe(frozen)
})
