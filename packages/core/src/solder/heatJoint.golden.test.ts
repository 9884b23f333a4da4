import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { heatJoint } from './heatJoint.ts'
import type { HeatJointInput, HeatJointResult } from './heatJointTypes.ts'

interface Golden {
  readonly id: string
  readonly inputs: HeatJointInput
  readonly expected: Partial<HeatJointResult>
}

const cases = JSON.parse(readFileSync(new URL('../../../../references/data/thermalHeatJoint.json', import.meta.url), 'utf8')) as readonly Golden[]

test.each(cases.map((golden) => [golden.id, golden] as const))(
  'golden case %s: what is reached and what never, and the heat adds up',
  (_id, { inputs, expected }) => {
    const result = heatJoint(inputs)
    expect(result.reachesLiquidus).toBe(expected.reachesLiquidus)
    expect(result.everReachesLiquidus).toBe(expected.everReachesLiquidus)
    for (const key of ['solidusAtS', 'liquidusAtS', 'wettedAtS', 'resolidifiedAtS'] as const) expect(result[key] === null, key).toBe(expected[key] === null)
    expect(result.jointC).toHaveLength(inputs.sampleTimesS?.length ?? 0)
    expect(result.edgeC).toHaveLength(inputs.conductors.length)
    expect(result.energyResidual).toBeGreaterThan(0)
    expect(result.energyResidual).toBeLessThan(1e-4)
    expect(heatJoint({ ...inputs, accuracy: 0.01 }).energyResidual).toBeLessThan(1e-6)
  },
)
