import { expect, test } from 'vitest'
import { heatJoint, heatSolderSleeve } from './index.ts'

const side = { areaMm2: 0.5, insulation: 'PVC', insulationOutsideMm: 2 } as const
const joint = {
  ambientC: 20,
  tool: { kind: 'iron', setC: 350, maximumW: 40, tipResistanceKPerW: 1.5, contactResistanceKPerW: 3 },
  joint: { lapMm: 6, diameterMm: 2, solderMm3: 3 },
  alloy: 'Sn60Pb40',
  toolOffS: 3,
} as const
const withStub = (stubMm: number) =>
  heatJoint({
    ...joint,
    conductors: [
      { ...side, stubMm },
      { ...side, stubMm },
    ],
  })

test.each([1e-7, 1e-232])('a bare length of %s mm is none, and is solved as quickly', (stubMm) => {
  expect(withStub(stubMm)).toEqual(withStub(0))
})

test('a stream that ends where the tube ends, but for the last digit, is solved as one that ends there', () => {
  const wire = { areaMm2: 1.5, diameterMm: 1.6, stubMm: 3, insulation: 'PVC', insulationOutsideMm: 3 } as const
  const tubeEndMm = (20 - 6.4) / 2
  const sleeve = (sweptMm: number) =>
    heatSolderSleeve({
      ambientC: 18,
      tool: { kind: 'hot-air', airC: 300, airSpeedMPerS: 6, sweptMm, sweptDiameterMm: 3 },
      joint: { lapMm: 6.4, diameterMm: 3.2, solderMm3: 10 },
      conductors: [wire, wire],
      alloy: 'Sn42Bi58',
      tube: { insideMm: 6.4, recoveredInsideMm: 2.1, wallMm: 0.45, lengthMm: 20, recoveryC: 122.5 },
      toolOffS: 60,
      observeS: 90,
    })
  expect(sleeve(tubeEndMm + 1e-15).tubeRecoversAtS).toBe(sleeve(tubeEndMm).tubeRecoversAtS)
})
