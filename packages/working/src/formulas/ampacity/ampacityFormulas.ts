import { adiabaticFaultCurrentAFormula } from './adiabaticFaultCurrentA.ts'
import { altitudeFactorFormula } from './altitudeFactor.ts'
import { ambientFactorFormula } from './ambientFactor.ts'
import { conductorTemperatureCFormula } from './conductorTemperatureC.ts'
import { deratedCurrentAFormula } from './deratedCurrentA.ts'
import { dutyCurrentAFormula } from './dutyCurrentA.ts'
import { fusingCurrentPreeceAFormula } from './fusingCurrentPreeceA.ts'
import { fusingTimeOnderdonkSFormula } from './fusingTimeOnderdonkS.ts'
import { nonAdiabaticFactorFormula } from './nonAdiabaticFactor.ts'
import { steadyCurrentAFormula } from './steadyCurrentA.ts'
import { thermalTimeConstantSFormula } from './thermalTimeConstantS.ts'

/** Every formula of the room ampacity. */
export const ampacityFormulas = [
  adiabaticFaultCurrentAFormula,
  altitudeFactorFormula,
  ambientFactorFormula,
  conductorTemperatureCFormula,
  deratedCurrentAFormula,
  dutyCurrentAFormula,
  fusingCurrentPreeceAFormula,
  fusingTimeOnderdonkSFormula,
  nonAdiabaticFactorFormula,
  steadyCurrentAFormula,
  thermalTimeConstantSFormula,
] as const
