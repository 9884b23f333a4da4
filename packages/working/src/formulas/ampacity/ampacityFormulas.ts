import { adiabaticFaultCurrentAFormula } from './adiabaticFaultCurrentA.ts'
import { altitudeFactorFormula } from './altitudeFactor.ts'
import { ambientFactorFormula } from './ambientFactor.ts'
import { deratedCurrentAFormula } from './deratedCurrentA.ts'
import { dutyCurrentAFormula } from './dutyCurrentA.ts'
import { fusingCurrentPreeceAFormula } from './fusingCurrentPreeceA.ts'
import { fusingTimeOnderdonkSFormula } from './fusingTimeOnderdonkS.ts'
import { nonAdiabaticFactorFormula } from './nonAdiabaticFactor.ts'

/** Every formula of the room ampacity. */
export const ampacityFormulas = [
  adiabaticFaultCurrentAFormula,
  altitudeFactorFormula,
  ambientFactorFormula,
  deratedCurrentAFormula,
  dutyCurrentAFormula,
  fusingCurrentPreeceAFormula,
  fusingTimeOnderdonkSFormula,
  nonAdiabaticFactorFormula,
] as const
