// Internal exports for later rooms of the planner.
export { type Chain, type CircuitInput, chainOf, type LoadGiven, type WirePiece } from './chain.ts'
export { circuitInput } from './circuitInput.ts'
export { deadWarmth, healthyOhm, restingSupplyV, supplyOhm, type Warmth, warmthAt } from './healthy.ts'
export { sound } from './sound.ts'
export { meterInputs, type PlacedReading, placedReading, type TakenReading, takenReadings } from './takenReading.ts'
