import { adiabaticFaultCurrentAFormula } from './adiabaticFaultCurrentA.ts'
import { altitudeFactorFormula } from './altitudeFactor.ts'
import { ambientFactorFormula } from './ambientFactor.ts'
import { bundleTemperatureCFormula } from './bundleTemperatureC.ts'
import { conductorTemperatureCFormula } from './conductorTemperatureC.ts'
import { deratedCurrentAFormula } from './deratedCurrentA.ts'
import { dutyCurrentAFormula } from './dutyCurrentA.ts'
import { fusingCurrentPreeceAFormula } from './fusingCurrentPreeceA.ts'
import { fusingTimeOnderdonkSFormula } from './fusingTimeOnderdonkS.ts'
import { nonAdiabaticFactorFormula } from './nonAdiabaticFactor.ts'
import { steadyCurrentAFormula } from './steadyCurrentA.ts'
import { temperatureAfterCFormula } from './temperatureAfterC.ts'
import { thermalTimeConstantSFormula } from './thermalTimeConstantS.ts'
import { timeToTemperatureSFormula } from './timeToTemperatureS.ts'

/** Every formula of the room ampacity. */
export const ampacityFormulas = [
  adiabaticFaultCurrentAFormula,
  altitudeFactorFormula,
  ambientFactorFormula,
  bundleTemperatureCFormula,
  conductorTemperatureCFormula,
  deratedCurrentAFormula,
  dutyCurrentAFormula,
  fusingCurrentPreeceAFormula,
  fusingTimeOnderdonkSFormula,
  nonAdiabaticFactorFormula,
  steadyCurrentAFormula,
  temperatureAfterCFormula,
  thermalTimeConstantSFormula,
  timeToTemperatureSFormula,
] as const
