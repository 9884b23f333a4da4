import { naturalFlowWPerM, radiationFlowWPerM } from '../heat/inner.ts'
import { heatJointDefaults } from './heatJointDefaults.ts'

/** In K above the air, which matters for odd alloys alone. */
const leastRiseK = 50

/** The one temperature at which every film that is not given is taken: half way between the air and the temperature that the joint is meant to reach. */
export function filmReferenceC(ambientC: number, wettedC: number): number {
  return ambientC + Math.max(heatJointDefaults.filmReferenceShare.value * (wettedC - ambientC), leastRiseK)
}

/** Film coefficient of still air, by Churchill and Chu, and of radiation round a cylinder at that temperature, made linear. */
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
