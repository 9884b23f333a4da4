import { expect, test } from 'vitest'
import { airProperties } from '../heat/index.ts'
import type { HeatJointInput } from './heatJointTypes.ts'
import { readHeatJoint } from './readHeatJoint.ts'
import { readTube } from './readTube.ts'
import { filmAt } from './streamFilm.ts'

const side = { areaMm2: 0.5, stubMm: 4, insulation: 'PTFE', insulationOutsideMm: 1.6 } as const
const joint: HeatJointInput = {
  ambientC: 20,
  tool: { kind: 'hot-air', airC: 350, filmWPerM2K: 140 },
  joint: { lapMm: 8, diameterMm: 2.4, solderMm3: 6, filmWPerM2K: 15, emissivity: 0.3 },
  conductors: [side],
  alloy: 'Sn42Bi58',
  toolOffS: 40,
}
const tube = { insideMm: 4, wallMm: 0.4, lengthMm: 26, recoveryC: 110 }
const read = (change: Partial<HeatJointInput>) => {
  const input = { ...joint, ...change, tube }
  return readTube(input, readHeatJoint(input, { stubsInOpen: false }))
}
const clip = (temperatureC: number) => ({ ...side, clip: { distanceMm: 3, resistanceKPerW: 1, temperatureC } })

test.each([
  ['from the surroundings to the stream', {}, 20, 350],
  ['from a stream colder than they are', { tool: { kind: 'hot-air', airC: -30, filmWPerM2K: 140 } }, -30, 20],
  ['from the coldest clip on', { conductors: [side, clip(-55)] }, -55, 350],
] as const)('air in the gap is known %s, and a kelvin beyond', (_name, change, low, high) => {
  const { gapAir } = read(change)
  expect([gapAir.lowRiseK, gapAir.highRiseK]).toEqual([low - 1 - 20, high + 1 - 20])
  for (const C of [low, (low + high) / 2, high]) expect(Math.abs(filmAt(gapAir, C - 20) / airProperties(C).conductivityWPerMK - 1)).toBeLessThan(1e-9)
})

test('what the tube stores, shows and lets through, by its measures', () => {
  const { capacityJPerK, outsideM2, tightWPerK, gapM, gapM2 } = read({})
  expect(capacityJPerK / (1000 * 1900 * 26e-3 * (Math.PI / 4) * (4.8e-3 ** 2 - 4e-3 ** 2))).toBeCloseTo(1, 12)
  expect(outsideM2 / (Math.PI * 4.8e-3 * 26e-3)).toBeCloseTo(1, 12)
  expect(gapM2 / (Math.PI * 2.4e-3 * 8e-3)).toBeCloseTo(1, 12)
  expect(gapM / ((2 * Math.PI * 8e-3) / Math.log(4 / 2.4))).toBeCloseTo(1, 12)
  expect(tightWPerK * (1 / (500 * gapM2) + Math.log(3.2 / 2.4) / (2 * Math.PI * 0.25 * 8e-3))).toBeCloseTo(1, 12)
})
