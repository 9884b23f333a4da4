import { acceptanceResistanceOhmFormula } from './acceptanceResistanceOhm.ts'
import { breakEvenOverlapMmFormula } from './breakEvenOverlapMm.ts'
import { constrictionResistanceOhmFormula } from './constrictionResistanceOhm.ts'
import { contactPeakCFormula } from './contactPeakC.ts'
import { contactSpotRadiusMmFormula } from './contactSpotRadiusMm.ts'
import { contactVoltageVFormula } from './contactVoltageV.ts'
import { crimpInterfaceResistanceOhmFormula } from './crimpInterfaceResistanceOhm.ts'
import { filmResistanceOhmFormula } from './filmResistanceOhm.ts'
import { interfaceConductanceSPerMFormula } from './interfaceConductanceSPerM.ts'
import { jointTemperatureCFormula } from './jointTemperatureC.ts'
import { lapJointResistanceOhmFormula } from './lapJointResistanceOhm.ts'
import { shearLagPeakRatioFormula } from './shearLagPeakRatio.ts'
import { shearLagPerMmFormula } from './shearLagPerMm.ts'
import { transferLengthMmFormula } from './transferLengthMm.ts'
import { twistedJointOverlapFormula } from './twistedJointOverlap.ts'
import { wrappedJointBondWidthMmFormula } from './wrappedJointBondWidthMm.ts'
import { wrappedJointOverlapFormula } from './wrappedJointOverlap.ts'

/** Every formula of the room joint. */
export const jointFormulas = [
  acceptanceResistanceOhmFormula,
  breakEvenOverlapMmFormula,
  constrictionResistanceOhmFormula,
  contactPeakCFormula,
  contactSpotRadiusMmFormula,
  contactVoltageVFormula,
  crimpInterfaceResistanceOhmFormula,
  filmResistanceOhmFormula,
  interfaceConductanceSPerMFormula,
  jointTemperatureCFormula,
  lapJointResistanceOhmFormula,
  shearLagPeakRatioFormula,
  shearLagPerMmFormula,
  transferLengthMmFormula,
  twistedJointOverlapFormula,
  wrappedJointBondWidthMmFormula,
  wrappedJointOverlapFormula,
] as const
