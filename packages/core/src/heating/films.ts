import { naturalFlowWPerM, radiationFlowWPerM } from '../heat/inner.ts'
import { heatJointDefaults } from './heatJointDefaults.ts'

/** Least rise of the reference temperature above the air, in K; matters only for alloys that melt near room temperature. */
const leastRiseK = 50

/** Reference temperature of all still-air films not given: midway between the air and the wetting temperature. */
export function filmReferenceC(ambientC: number, wettedC: number): number {
  return ambientC + Math.max(heatJointDefaults.filmReferenceShare.value * (wettedC - ambientC), leastRiseK)
}

/** Linearised film coefficient round a cylinder at the reference temperature: still air by Churchill and Chu, plus radiation. */
export function stillFilmWPerM2K(i: {
  readonly surfaceC: number
  readonly ambientC: number
  readonly diameterM: number
  readonly emissivity: number
  readonly pressurePa: number
}): number {
  const { surfaceC, ambientC, diameterM, emissivity, pressurePa } = i
  const flow = naturalFlowWPerM(surfaceC, ambientC, diameterM, pressurePa, false) + radiationFlowWPerM(surfaceC, ambientC, diameterM, emissivity)
  return flow / (Math.PI * diameterM * (surfaceC - ambientC))
}
