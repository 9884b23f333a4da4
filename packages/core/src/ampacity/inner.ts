// Internal exports for core's other rooms.
export { reachesTemperature } from './timeToTemperature.ts'
