import { expect, test } from 'vitest'
import type { HeatJointResult } from '../heatJointTypes.ts'
import { type Goal, reaches } from './adviceGoals.ts'

/** Only the fields of a result that the goals read. */
const run = (wettedAtS: number | null, insulationExposureS: readonly number[]) => ({ wettedAtS, insulationExposureS }) as unknown as HeatJointResult

test.each<[string, HeatJointResult, readonly [boolean, boolean, boolean]]>([
  ['flows and spares', run(1, [0, 0]), [true, true, true]],
  ['flows and spoils', run(1, [0, 2]), [true, false, false]],
  ['spares and stays cold', run(null, [0, 0]), [false, true, false]],
  ['neither', run(null, [2, 0]), [false, false, false]],
  ['flows, as long above its limit as is allowed', run(1, [1, 0.5]), [true, true, true]],
  ['wetted from the start', run(0, [0]), [true, true, true]],
])('a joint that %s', (_name, result, wanted) => {
  expect((['flow', 'spare', 'both'] as const satisfies readonly Goal[]).map((goal) => reaches(result, goal, 1))).toEqual(wanted)
})
