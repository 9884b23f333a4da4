// Heating has moved to a room of its own; re-exported here for existing imports.
export * from '../heating/index.ts'
export { capillaryDefaults, capillaryRiseMm } from './capillaryRise.ts'
export { lapLengthForStrengthMm, lapOverlapDiameters } from './lapLength.ts'
export { lapStrengthN, sustainedStrengthShares } from './lapStrength.ts'
export { bismuthLead, rosinFluxWindow, type StrandSurface, solderOverCoating, strandSurfaces, strandsMayWet, type WireCoating } from './onTheWire.ts'
export { solderPartsMm3, solderVolumeDefaults, solderVolumeMm3 } from './solderVolume.ts'
export { solderWireDefaults, solderWireLengthMm } from './solderWireLength.ts'
export { strandVoidMm2 } from './strandVoid.ts'
