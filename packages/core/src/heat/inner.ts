export { requireAirPressure } from './requireAirPressure.ts'
export { naturalFlowWPerM, radiationFlowWPerM, surfaceFlowWPerM, surfaceRayleigh } from './surfaceFlow.ts'
