export { naturalFlowWPerM, radiationFlowWPerM, surfaceFlowWPerM, surfaceRayleigh } from './surfaceFlow.ts'
