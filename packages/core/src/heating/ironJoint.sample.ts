import type { HeatJointInput, HeatSide } from './heatJointTypes.ts'

/** A bench iron with a wetted tip. */
export const iron = { kind: 'iron', setC: 360, maximumW: 60, tipResistanceKPerW: 1.5, contactResistanceKPerW: 3 } as const

/** A 9 mm lap of these conductors, under that iron for 4 s. */
export const ironJoint = (...conductors: readonly HeatSide[]): HeatJointInput => ({
  ambientC: 23,
  tool: iron,
  joint: { lapMm: 9, diameterMm: 2.6, solderMm3: 7 },
  conductors,
  alloy: 'SAC305',
  toolOffS: 4,
})
