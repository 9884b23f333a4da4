export type { PlacedReading } from './takenReading.ts'
