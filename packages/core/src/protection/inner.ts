// Internal exports for core's other rooms.
export { fuseGaps } from './fuseProtectsWire.ts'
