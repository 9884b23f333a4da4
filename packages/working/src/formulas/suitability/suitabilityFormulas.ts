import { galvanicDifferenceVFormula } from './galvanicDifferenceV.ts'

/** Every formula of the room suitability. */
export const suitabilityFormulas = [galvanicDifferenceVFormula] as const
